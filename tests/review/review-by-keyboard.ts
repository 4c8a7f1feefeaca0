/**
 * A scripted inspector who has only a keyboard and knows what is right (the gold). Begins the runs that were missed,
 * goes through the queue, then adds what is missing, and at last seeks out through the search what is wrong without a
 * flag. Every key counts, also those of typed numbers and of the search.
 */
import type { Page } from 'playwright-core';
import type { FindingHint, TalkHint } from '../../shared/schemas/hint.ts';
import type { Reviewed, ReviewedObservation } from '../../shared/schemas/reviewed.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { markTranscript } from '../../src/5-review/mark-transcript.ts';
import { choicesOf } from '../../src/5-review/offer-choices.ts';
import { itemsByKey, type QueueItem } from '../../src/5-review/queue.ts';
import { subjectKey } from '../../src/5-review/subject.ts';
import type { Gold, GoldObservation } from '../../src/score/gold.ts';
import { fill, fillNew, isSameText } from './fill-form.ts';
import { goBackTo, goToFinding, goToTalk, shownKey, stretchAt } from './find-by-keyboard.ts';
import { differences, type Field, fields, pairUp, wanted } from './gold-pairs.ts';
import { makeHands } from './hands.ts';

export interface KeyboardReview {
  readonly presses: number;
  readonly gold: number;
  /** Keys by what they were for. */
  readonly spent: Readonly<Record<string, number>>;
  /** What took more than one key, and how many it took. */
  readonly costly: readonly string[];
}

export interface ReviewSource {
  readonly words: Words;
  readonly hints: readonly TalkHint[];
  /** The state as it is on the disk. */
  readonly reviewed: () => Promise<Reviewed>;
}

/** Brings the review that `page` shows to the gold. Gives the number of keys it took. */
export async function reviewByKeyboard(page: Page, source: ReviewSource, gold: Gold): Promise<KeyboardReview> {
  const hands = makeHands(page);
  const { press, settled, spentOn } = hands;
  const first = await source.reviewed();
  const pairs = pairUp(gold.observations, first.observations);
  // What is another thing altogether is rejected, and the right one added.
  for (const o of first.observations) {
    const wrong = pairs.has(o.id) ? differences(pairs.get(o.id)!, o) : [];
    if (wrong.includes('kind') && wrong.length > 2) pairs.delete(o.id);
  }
  const paired = new Set(pairs.values());
  const left = new Set(gold.observations.filter((g) => !paired.has(g)));

  for (let run = 2; run <= Math.max(...gold.observations.map((g) => g.run)); run++) await startRun(run);
  for (let turns = 0; turns < 1000; turns++) {
    const key = await shownKey(hands);
    const item = key === null ? undefined : itemsByKey(await source.reviewed()).get(key);
    if (!item || item.isSettled) break;
    spentOn(item.what === 'observation' ? await settleObservation(item.item) : await settleTalk(item), item.key);
    await settled();
    // A value that nothing doubted was changed: what is settled by that is left with Enter.
    const isStillShown = (await shownKey(hands)) === key;
    if (isStillShown && itemsByKey(await source.reviewed()).get(item.key)?.isSettled) await press('Enter');
    await page.waitForFunction(
      (before) => document.querySelector('#item')?.getAttribute('data-item') !== before,
      item.key,
      { timeout: 10_000 },
    );
    await settled();
  }
  for (const g of left) await addMissing(g);
  for (const o of (await source.reviewed()).observations.filter((one) => one.source === 'draft')) {
    const target = pairs.get(o.id);
    if (o.reviewState !== 'unflagged' || (target && differences(target, o).length === 0)) continue;
    await goToFinding(hands, source.words, await source.reviewed(), o.id);
    spentOn('silent: go there', `${o.kind} at ${o.at}`);
    spentOn(`silent: ${await settleObservation(o)}`, `${o.kind} at ${o.at}`);
    await settled();
  }
  return { presses: hands.presses(), gold: gold.observations.length, spent: hands.spent, costly: hands.costly };

  /** Where the counter starts anew and no run does, one begins: at the first thing spoken of that belongs to it. */
  async function startRun(run: number): Promise<void> {
    const reviewed = await source.reviewed();
    if (reviewed.runs.length >= run) return;
    const mine = reviewed.observations.filter((o) => o.run === run - 1 && pairs.has(o.id));
    mine.sort((a, b) => a.heard.start - b.heard.start);
    const isLater = (o: ReviewedObservation) => pairs.get(o.id)!.run >= run;
    // Where the fewest are left on the wrong side; those are corrected one by one.
    const strays = mine.map((_, at) => mine.filter((o, index) => isLater(o) !== index >= at).length);
    const begins = mine[strays.indexOf(Math.min(...strays))];
    if (!begins || !isLater(begins)) return;
    await goToFinding(hands, source.words, reviewed, begins.id);
    await press('c');
    await page.waitForSelector('form[aria-label="The counter starts anew"]');
    await press('Enter');
    await settled();
    spentOn('start a run', begins.heard.text);
  }

  /** Settles what is at hand. Gives what the keys were for. */
  async function settleObservation(o: ReviewedObservation): Promise<string> {
    for (const g of left) {
      if (!isSaidIn(g, o.heard) || !(await isOffered(g))) continue;
      await add(g);
      spentOn('missing: beside another', JSON.stringify(g));
    }
    const target = pairs.get(o.id);
    if (!target) {
      await press('x');
      return 'reject';
    }
    const wrong = differences(target, o);
    if (wrong.length === 0) {
      await press('Enter');
      return 'confirm';
    }
    await correct(o, target);
    // Another doubt keeps it open: that is answered with Enter.
    if ((await current(o)).reviewState === 'open') await press('Enter');
    return `correct ${wrong.join(' ')}`;
  }

  async function correct(o: ReviewedObservation, target: GoldObservation): Promise<void> {
    // First what can be taken without answering a doubt: answering the last one goes on to the next item.
    for (const field of differences(target, o)) {
      const number = await numberOf(o, target, field, false);
      if (number !== null) await press(String(number));
      await settled();
    }
    const wrong = differences(target, await current(o));
    const others = wrong.filter((field) => field !== 'status');
    const answers = await Promise.all(others.map((field) => numberOf(o, target, field, true)));
    if (answers.includes(null)) {
      await press('e');
      await page.waitForSelector('form.fields');
      for (const field of wrong) await fill(hands, field, wanted(target, field));
      await press('Enter');
    } else {
      if (wrong.includes('status')) await press('d');
      await settled();
      for (const field of others) {
        await press(String(await numberOf(o, target, field, true)));
        await settled();
      }
    }
    await settled();
  }

  async function current(o: ReviewedObservation): Promise<ReviewedObservation> {
    return (await source.reviewed()).observations.find(({ id }) => id === o.id)!;
  }

  /** The number key that puts a field right, among those that answer a doubt or those that do not. */
  async function numberOf(o: ReviewedObservation, target: GoldObservation, field: Field, isAnswer: boolean) {
    const reviewed = await source.reviewed();
    const item = itemsByKey(reviewed).get(subjectKey(o.subject))!;
    const now = await current(o);
    const at = choicesOf(item, reviewed, source.hints).findIndex(
      (choice) =>
        choice.what === 'value' &&
        choice.field === field &&
        (choice.flag !== null) === isAnswer &&
        isSameText(String(choice.value ?? ''), wanted(target, field)) &&
        (field !== 'at' || isSameText(String(choice.to ?? now.to ?? ''), wanted(target, 'to'))),
    );
    return at === -1 ? null : at + 1;
  }

  async function settleTalk(item: QueueItem): Promise<string> {
    const { heard } = item;
    const isTalk = item.what === 'unplaced' || item.what === 'set-aside' || item.what === 'absent';
    const hidden = heard && isTalk ? [...left].filter((g) => isSaidIn(g, heard)) : [];
    if (hidden.length === 0) {
      await press('Enter');
      return item.what;
    }
    for (const [index, g] of hidden.entries()) {
      if (index > 0) await goBackTo(hands, item.key);
      await add(g);
      await settled();
    }
    return `missing: from ${item.what}`;
  }

  /** Adds from what the page says was left out; when it is not there, from its talk, found by the search. */
  async function addMissing(g: GoldObservation): Promise<void> {
    if ((await shownKey(hands)) !== null) await press('o');
    await page.waitForSelector('#item:not([data-item])');
    const isListed = await isOffered(g);
    if (!isListed) {
      const stretches = markTranscript(source.words, await source.reviewed());
      const talk = stretchAt(stretches, g.heard[0], g.heard[1]);
      if (!talk) throw new Error(`no talk at ${g.heard[0]}`);
      await goToTalk(hands, stretches, talk);
      spentOn('missing: go there', talk.text);
    }
    await add(g);
    spentOn(isListed ? 'missing: listed' : 'missing: searched for', JSON.stringify(g));
    await settled();
  }

  /** Writes a missing finding down at the item at hand: by the choice that comes nearest, or by A. */
  async function add(g: GoldObservation): Promise<void> {
    left.delete(g);
    const likely = await nearestChoice(g);
    await press(likely ? String(likely.number) : 'a');
    await fillNew(hands, g);
  }

  /** Whether a choice at hand is that finding, or nearly. */
  async function isOffered(g: GoldObservation): Promise<boolean> {
    const likely = await nearestChoice(g);
    return likely !== null && likely.wrong <= 4;
  }

  async function nearestChoice(g: GoldObservation): Promise<{ number: number; wrong: number } | null> {
    const reviewed = await source.reviewed();
    const item = itemsByKey(reviewed).get((await shownKey(hands)) ?? '') ?? null;
    const ranked = choicesOf(item, reviewed, source.hints).flatMap((choice, index) =>
      choice.what === 'finding' && isSaidIn(g, choice.finding.heard)
        ? [{ number: index + 1, wrong: wrongIn(choice.finding, g) }]
        : [],
    );
    ranked.sort((a, b) => a.wrong - b.wrong || a.number - b.number);
    return ranked[0] ?? null;
  }
}

function isSaidIn(g: GoldObservation, heard: { start: number; end: number }): boolean {
  return g.heard[0] < heard.end && heard.start < g.heard[1];
}

/** How many fields of a hint are not what the gold says. */
function wrongIn(hint: FindingHint, g: GoldObservation): number {
  const said: Readonly<Record<string, unknown>> = { ...hint.values, at: hint.at, status: hint.status };
  const wrong = fields.filter((field) => !isSameText(String(said[field] ?? ''), wanted(g, field))).length;
  return wrong + (hint.kind === g.kind ? 0 : hint.kind === null ? 1 : 2);
}
