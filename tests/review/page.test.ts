/** The page in a real browser: complete by keyboard, in step between windows, honest about what is kept. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { Decision } from '../../shared/schemas/decision.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { openLine } from '../../src/5-review/decision-line.ts';
import { verifyInspection } from '../../src/5-review/verify-inspection.ts';
import { makeDraft, writeInspection } from './make-inspection.ts';
import { browserForTests, chromiumPath, openPage, shownKey, waitForItem, waitUntilKept } from './open-browser.ts';
import { openReview } from './open-review.ts';

const opened = browserForTests();

async function start(draft = makeDraft(), options: Parameters<typeof openPage>[2] = {}) {
  const written = await writeInspection(draft);
  const review = await openReview(written.folder, { pageFolder: opened.pageFolder, person: 'R. Inspector' });
  const watched = await openPage(opened.browser, review.address, options);
  const subjects = applyDecisions(written.draft, []);
  const subject = (id: string) => subjects.observations.find((o) => o.id === id)!.subject;
  return { ...written, review, ...watched, subject };
}

async function decisionsIn(folder: string): Promise<Decision[]> {
  const text = await readFile(join(folder, 'decisions.jsonl'), 'utf8').catch(() => '');
  return text
    .split('\n')
    .filter(Boolean)
    .map((line) => {
      const opened = openLine(line);
      if ('fault' in opened) throw new Error(opened.fault);
      return opened.sealed.decision;
    });
}

async function press(page: Page, ...keys: string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

describe.skipIf(!chromiumPath)('by keyboard', () => {
  test('the flagged come first in order; numbers take, E edits, X rejects, Enter confirms; then it is signed', async () => {
    const { page, folder, draft, subject, faults, configFolder } = await start();
    await waitForItem(page, subject('o4'));
    await press(page, '2');
    await waitForItem(page, subject('o5'));
    await press(page, 'x');
    await waitForItem(page, subject('o8'));
    await press(page, 'e', '1', '2', '.', '5', 'Enter');
    const unplaced = applyDecisions(draft, []).unplaced[0]!.subject;
    await waitForItem(page, unplaced);
    await press(page, 'Enter');
    for (let listens = 0; listens < 5; listens++) {
      // Before the words were played, Enter does not count as listening.
      const key = await shownKey(page);
      await press(page, 'Enter');
      expect(await shownKey(page)).toBe(key);
      await page.waitForSelector('.deeds .main[aria-disabled="false"]');
      await press(page, 'Enter');
    }
    await page.waitForSelector('text=Everything flagged is settled');
    await waitUntilKept(page);

    const reviewed = applyDecisions(draft, await decisionsIn(folder));
    expect(reviewed.openCount).toBe(0);
    expect(reviewed.observations.find((o) => o.id === 'o4')).toMatchObject({ at: 42, reviewState: 'confirmed' });
    expect(reviewed.observations.find((o) => o.id === 'o5')!.reviewState).toBe('rejected');
    expect(reviewed.observations.find((o) => o.id === 'o8')).toMatchObject({ at: 12.5, reviewState: 'confirmed' });
    expect(reviewed.listening).toMatchObject({ drawn: 3, listened: 3, wrong: 0 });

    await press(page, 'f');
    await page.waitForSelector('dialog input[name=name]');
    await page.fill('dialog input[name=name]', 'R. Inspector');
    await page.fill('dialog input[name=licence]', 'PL-7');
    await press(page, 'Enter');
    await page.waitForSelector('text=Nothing has changed since');
    const verified = await verifyInspection(folder, configFolder);
    expect(verified.isWhole).toBe(true);
    expect(verified.versions[0]!.manifest!.signer).toMatchObject({ name: 'R. Inspector', licence: 'PL-7' });
    expect(faults).toEqual([]);
  });

  test('undo and redo go all the way and show what came back', async () => {
    const { page, folder, draft, subject } = await start();
    await press(page, '2', 'Enter', 'x');
    await waitUntilKept(page);
    for (const id of ['o8', 'o5', 'o4']) {
      await press(page, 'u');
      await waitForItem(page, subject(id));
    }
    await waitUntilKept(page);
    expect(applyDecisions(draft, await decisionsIn(folder)).openCount).toBe(4);
    await press(page, 'y');
    await waitForItem(page, subject('o4'));
    await press(page, 'y');
    await waitForItem(page, subject('o5'));
    await waitUntilKept(page);
    expect(applyDecisions(draft, await decisionsIn(folder)).openCount).toBe(2);
  });

  test('a finding is added from talk that was not placed, and from a moment', async () => {
    const { page, folder, draft } = await start();
    await press(page, '2', 'Enter', 'n');
    await page.waitForSelector('text=Talk that was not placed');
    await press(page, 'a');
    // "Hanging down" is read as an intrusion; its distance was said long before, and is typed over.
    await page.waitForSelector('form[aria-label="The new finding"] >> text=was said before these words');
    await page.waitForSelector('input[name=at]:focus');
    await page.keyboard.type('33');
    await press(page, 'Enter');
    await waitUntilKept(page);
    await press(page, '/');
    await page.keyboard.type('dog hates');
    await press(page, 'Enter');
    await page.waitForSelector('text=Talk set aside');
    await press(page, 'a');
    await page.waitForSelector('select[name=kind]:focus');
    await page.keyboard.type('debris');
    await press(page, 'Enter');
    await waitUntilKept(page);
    const reviewed = applyDecisions(draft, await decisionsIn(folder));
    expect(reviewed.observations.filter((o) => o.source === 'added').map((o) => [o.kind, o.at, o.run])).toEqual([
      ['intrusion', 33, 1],
      ['debris', null, 1],
    ]);
    expect(reviewed.unplaced[0]!.becameId).not.toBeNull();
  });

  test('two are joined, one is split, a run is corrected and distances follow', async () => {
    const { page, folder, draft, subject } = await start();
    await press(page, 'm');
    await page.waitForSelector('fieldset[aria-label="Join with another"] button:focus');
    await press(page, '1');
    // The nearest other one of the run, the crack at 45, has become part of it.
    await waitForItem(page, subject('o8'));
    await press(page, 's');
    await page.waitForSelector('form[aria-label="The second thing"] input[name=at]:focus');
    await page.keyboard.type('46');
    await press(page, 'Enter');
    await page.waitForSelector('text=Talk that was not placed');
    await press(page, 'r');
    await page.waitForSelector('form[aria-label="Run 1"] input[name=access]:focus');
    await page.fill('input[name=counterStart]', '4');
    await press(page, 'Enter');
    await page.waitForSelector('form', { state: 'detached' });
    await waitUntilKept(page);
    const reviewed = applyDecisions(draft, await decisionsIn(folder));
    expect(reviewed.observations.find((o) => o.kind === 'crack')).toBeUndefined();
    expect(reviewed.observations.find((o) => o.kind === 'wye')!.again).toMatchObject([{ start: 24 }]);
    expect(reviewed.observations.find((o) => o.source === 'split')).toMatchObject({ kind: 'belly', at: 46 });
    expect(reviewed.observations.find((o) => o.kind === 'roots')!.at).toBe(19);
    expect(reviewed.observations.find((o) => o.kind === 'bend')!.at).toBe(18);
  });

  test('keys leave the person in peace while they type, and Esc leaves everything as it was', async () => {
    const { page, folder, subject } = await start();
    await press(page, '/');
    await page.keyboard.type('x1u');
    await press(page, 'Escape', 'e');
    await page.waitForSelector('input[name=at]:focus');
    await page.keyboard.type('99');
    await press(page, 'Escape');
    await waitForItem(page, subject('o4'));
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('item');
    expect(await decisionsIn(folder)).toEqual([]);
  });

  test('the sound of the next item begins 1.5 s before its words, loops, slows and goes back', async () => {
    const { page, draft, review } = await start();
    await page.waitForFunction(() => document.querySelector<HTMLButtonElement>('button.play')?.disabled === false);
    expect(review.isJoined).toBe(false);
    const seeks = await page.evaluateHandle(() => {
      const list: number[] = [];
      document.addEventListener('seeking', (event) => list.push((event.target as HTMLMediaElement).currentTime), true);
      // The audio element is not in the document: watch it through its prototype.
      const set = Object.getOwnPropertyDescriptor(HTMLMediaElement.prototype, 'currentTime')!;
      Object.defineProperty(HTMLMediaElement.prototype, 'currentTime', {
        ...set,
        set(value: number) {
          list.push(value);
          set.set!.call(this, value);
        },
      });
      return list;
    });
    await press(page, 'n');
    const o5 = draft.observations.find((o) => o.id === 'o5')!;
    expect((await seeks.jsonValue()).at(-1)).toBeCloseTo(o5.heard.start - 1.5, 5);
    await page.waitForSelector('button.play:has-text("Pause")');
    await press(page, 'l', '-', '-');
    expect(await page.getAttribute('button:has-text("Loop")', 'aria-pressed')).toBe('true');
    expect(await page.textContent('.rate output')).toBe('0.5 ×');
    const before = (await seeks.jsonValue()).length;
    await press(page, 'b');
    expect((await seeks.jsonValue()).length).toBe(before + 1);
    await press(page, ' ');
    await page.waitForSelector('button.play:has-text("Play")');
  });
});

describe.skipIf(!chromiumPath)('what is kept', () => {
  test('two windows are kept in step', async () => {
    const { page, folder, review, subject } = await start();
    const joined = await openReview(folder, { pageFolder: opened.pageFolder });
    const other = await openPage(opened.browser, joined.address);
    await press(page, '2');
    await other.page.waitForSelector('.line .mark[aria-label^="42 ft, Wye, confirmed"]');
    expect(await shownKey(other.page)).toContain('wye');
    await press(other.page, 'u');
    await page.waitForSelector('.line .mark[aria-label="41 ft, Wye, to settle"]');
    await waitForItem(page, subject('o5'));
    expect(review.isJoined).toBe(false);
    expect((await decisionsIn(folder)).map(({ action }) => action)).toEqual(['confirm', 'undo']);
  });

  test('a decision that could not be kept is taken back on the page, and the reason said', async () => {
    const { page, folder, subject } = await start();
    const sentence = 'The disk is full, so this decision is not kept: free some space, then decide again.';
    await page.route('**/api/decisions', (route) => route.fulfill({ status: 409, json: { sentence } }));
    await waitForItem(page, subject('o4'));
    await press(page, '2');
    await page.waitForSelector(`[role=alert]:has-text("${sentence}")`);
    await waitForItem(page, subject('o4'));
    expect(await page.getAttribute('.line .mark.fitting[aria-current]', 'aria-label')).toBe('41 ft, Wye, to settle');
    await page.unroute('**/api/decisions');
    await press(page, '2');
    await waitForItem(page, subject('o5'));
    await waitUntilKept(page);
    expect(await decisionsIn(folder)).toHaveLength(1);
  });

  test('when the review has ended, the page says so and claims nothing', async () => {
    const { page, review, subject, folder } = await start();
    await waitForItem(page, subject('o4'));
    await review.close();
    await press(page, 'Enter');
    await page.waitForSelector('[role=alert]:has-text("not running any more")');
    await waitForItem(page, subject('o4'));
    expect(await decisionsIn(folder)).toEqual([]);
  });

  test('the address works once: a second browser is turned away with the way in', async () => {
    const { review } = await start();
    const page = await (await opened.browser.newContext()).newPage();
    const answer = await page.goto(review.address);
    expect(answer?.status()).toBe(403);
    expect(await page.textContent('main')).toMatch(/run .*again/i);
  });
});

describe.skipIf(!chromiumPath)('for everybody', () => {
  const states: [string, (page: Page) => Promise<unknown>][] = [
    ['an item', async () => {}],
    ['editing', (page) => press(page, 'e')],
    ['adding', (page) => press(page, 'a')],
    ['joining', (page) => press(page, 'm')],
    ['splitting', (page) => press(page, 's')],
    ['a run', (page) => press(page, 'r')],
    ['keys', (page) => press(page, '?')],
    ['finishing', (page) => press(page, 'f')],
    ['searching', (page) => press(page, '/', 'r', 'o')],
    ['talk', (page) => press(page, 't')],
    ['the line', (page) => press(page, 'g')],
    ['a rejected one', (page) => press(page, 'x', 'p')],
  ];
  const main = ['an item', 'editing', 'keys', 'finishing', 'talk'];
  for (const width of [1280, 390]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      // Every state in two of the four; in the others those that bring every colour.
      const isWhole = (width === 1280) === (colorScheme === 'light');
      test(`axe finds nothing, ${width} px, ${colorScheme}`, async () => {
        const { page } = await start(makeDraft(), { viewport: { width, height: 844 }, colorScheme });
        await page.waitForSelector('.wave > div');
        for (const [name, go] of states.filter(([state]) => isWhole || main.includes(state))) {
          await go(page);
          const { violations } = await new AxeBuilder({ page }).analyze();
          const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`);
          expect([name, found]).toEqual([name, []]);
          await press(page, 'Escape', 'Escape');
        }
      });
    }
  }
});
