/// <reference lib="dom" />
/** Correcting in a real browser, by keyboard: choices by number, what was left out, runs, and learning from it. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { Draft } from '../../shared/schemas/draft.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { readDecisionLines } from '../../src/5-review/decision-log.ts';
import { flags, makeDraft, makeObservation, writeInspection } from './make-inspection.ts';
import { browserForTests, chromiumPath, openPage, waitForItem, waitUntilKept } from './open-browser.ts';
import { openReview } from './open-review.ts';

const opened = browserForTests();

async function start(given: Draft) {
  const { folder, draft, configFolder } = await writeInspection(given);
  const review = await openReview(folder, { pageFolder: opened.pageFolder });
  const { page, faults } = await openPage(opened.browser, review.address);
  const subjects = applyDecisions(draft, []).observations;
  const subject = (id: string) => subjects.find((o) => o.id === id)!.subject;
  const reviewed = async () => {
    await waitUntilKept(page);
    const { sealed } = readDecisionLines(await readFile(join(folder, 'decisions.jsonl')));
    return applyDecisions(
      draft,
      sealed.map(({ decision }) => decision),
    );
  };
  return { page, faults, subject, reviewed, configFolder };
}

async function press(page: Page, ...keys: string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

/** Drawn items are put aside, so that the queue holds what is flagged and nothing else. */
const bare = { absent: [], unplaced: [], setAside: [], site: {} };
const heard = (start: number, text: string) => ({ start, end: start + 3, text });

describe.skipIf(!chromiumPath)('by number', () => {
  test('a value said beside is taken and stays to be looked at; one that answers the doubt goes on', async () => {
    const observations = [
      makeObservation({ id: 'o1', kind: 'wye', at: 41, heard: heard(8, 'A wye at 41.'), review: [flags.distance] }),
      makeObservation({ id: 'o2', kind: 'roots', at: 50, heard: heard(20, 'Roots at 50.'), review: [flags.hedged] }),
    ];
    const unplaced = [{ heard: heard(12, 'On the left.'), why: 'names no kind of thing' }];
    const { page, subject, reviewed } = await start(makeDraft({ ...bare, observations, unplaced }));
    await waitForItem(page, subject('o1'));
    expect(await page.textContent('.other')).toContain('left');
    await press(page, '3');
    await page.waitForSelector('.facts .details:has-text("left")');
    await waitForItem(page, subject('o1'));
    await press(page, '2');
    await waitForItem(page, subject('o2'));
    const [wye] = (await reviewed()).observations;
    expect(wye).toMatchObject({ at: 42, position: 'left', reviewState: 'confirmed' });
  });

  test('a second thing in the same words is added with what they say of it, in its own part of them', async () => {
    const text = 'Roots at 23 and a crack at 25 on top.';
    const observations = [makeObservation({ id: 'o1', at: 23, heard: heard(8, text), review: [flags.hedged] })];
    const { page, subject, reviewed } = await start(makeDraft({ ...bare, observations }));
    await waitForItem(page, subject('o1'));
    await press(page, '1');
    await page.waitForSelector('form[aria-label="The new finding"]');
    await press(page, 'Enter');
    await waitForItem(page, subject('o1'));
    await press(page, 'Enter');
    const added = (await reviewed()).observations.find((o) => o.source === 'added')!;
    expect(added).toMatchObject({ kind: 'crack', at: 25, position: 'top', run: 1 });
    expect(added.heard.text).toBe('a crack at 25 on top.');
  });

  test('a split begins with the other thing of the words', async () => {
    const text = 'Roots at 23 and a crack at 25 on top.';
    const observations = [makeObservation({ id: 'o1', at: 23, heard: heard(8, text), review: [flags.hedged] })];
    const { page, subject, reviewed } = await start(makeDraft({ ...bare, observations }));
    await waitForItem(page, subject('o1'));
    await press(page, 's');
    await page.waitForSelector('form[aria-label="The second thing"]');
    await press(page, 'Enter');
    await page.waitForSelector('text=Everything flagged is settled');
    const second = (await reviewed()).observations.find((o) => o.source === 'split')!;
    expect([second.kind, second.at, second.heard.text]).toEqual(['crack', 25, 'a crack at 25 on top.']);
  });

  test('what was left out is listed at the end; its talk counts as taken', async () => {
    const setAside = [{ heard: heard(12, 'A bend at 33, on the right.'), why: 'chat' }];
    const { page, reviewed } = await start(makeDraft({ ...bare, setAside, observations: [] }));
    await press(page, 'o');
    await page.waitForSelector('section[aria-label="What may be missing"] >> text=33 ft Bend right');
    await press(page, '1');
    await page.waitForSelector('form[aria-label="The new finding"]');
    await press(page, 'Enter');
    await page.waitForSelector('section[aria-label="What may be missing"]', { state: 'detached' });
    const after = await reviewed();
    expect(after.observations).toMatchObject([{ kind: 'bend', at: 33, position: 'right' }]);
    expect(after.setAside[0]!.becameId).toBe(after.observations[0]!.id);
  });

  test('in the form a letter goes to its field; what another kind cannot have is left out, and said so', async () => {
    const o = makeObservation({ id: 'o1', kind: 'bend', angleDeg: 45, heard: heard(8, 'It.'), review: [flags.hedged] });
    const { page, subject, reviewed } = await start(makeDraft({ ...bare, observations: [o] }));
    await waitForItem(page, subject('o1'));
    await press(page, 'e', 'w', 'c', 'r', 'Alt+p', 't');
    await page.waitForSelector('[role=status]:has-text("Left out, because this kind has none: Angle 45")');
    await press(page, 'Alt+d', '3', '1', 'Enter');
    const [crack] = (await reviewed()).observations;
    expect(crack).toMatchObject({ kind: 'crack', position: 'top', at: 31, angleDeg: null, reviewState: 'confirmed' });
  });
});

describe.skipIf(!chromiumPath)('runs and learning', () => {
  test('the counter starts anew at the words at hand: distances follow, and it can be taken back', async () => {
    const { page, subject, reviewed, faults } = await start(makeDraft());
    await waitForItem(page, subject('o4'));
    await press(page, 'c');
    await page.waitForSelector('form[aria-label="The counter starts anew"] input:focus');
    await page.keyboard.type('30');
    await press(page, 'Enter');
    await page.waitForSelector('.line >> text=Run 3');
    const after = await reviewed();
    const places = (run: number) => after.observations.filter((o) => o.run === run).map((o) => o.at);
    expect([places(1), places(2), places(3)]).toEqual([
      [0, 23, 30],
      [11, 15, 22],
      [0, null, 18],
    ]);
    await press(page, 'u');
    await page.waitForSelector('.line >> text=Run 3', { state: 'detached' });
    expect((await reviewed()).runs).toHaveLength(2);
    expect(faults).toEqual([]);
  });

  test('a word corrected twice is offered as a word of their own, and kept when they say yes', async () => {
    const observations = [20, 40].map((at, index) =>
      makeObservation({
        id: `o${index + 1}`,
        kind: 'wye',
        at,
        heard: heard(at, `There is a Wi at ${at}.`),
        respelled: [{ heard: 'Wi', taken: 'wye' }],
        review: [{ reason: 'word-unsure', about: 'kind' }],
      }),
    );
    const { page, subject, configFolder, faults } = await start(makeDraft({ ...bare, observations }));
    await waitForItem(page, subject('o1'));
    await press(page, 'Enter');
    await waitForItem(page, subject('o2'));
    await press(page, 'Enter');
    await page.waitForSelector('.own-words:has-text("You took “wi” for wye twice.")');
    for (let tabs = 0; tabs < 30; tabs++) {
      if ((await page.evaluate(() => document.activeElement?.textContent)) === 'Yes') break;
      await press(page, 'Tab');
    }
    await press(page, 'Enter');
    await page.waitForSelector('.own-words', { state: 'detached' });
    const kept = JSON.parse(await readFile(join(configFolder, 'own-words.json'), 'utf8'));
    expect(kept.words).toMatchObject([{ heard: 'wi', said: 'wye', kind: 'wye' }]);
    expect(faults).toEqual([]);
  });
});
