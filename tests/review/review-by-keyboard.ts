/// <reference lib="dom" />
/**
 * A scripted inspector who has only a keyboard and knows what is right (the gold). Goes through the queue, then seeks
 * out through the search what is wrong without a flag and what is missing. Every key counts, also those of typed
 * numbers and of the search.
 */
import type { Page } from 'playwright-core';
import type { Draft } from '../../shared/schemas/draft.ts';
import type { Reviewed, ReviewedObservation } from '../../shared/schemas/reviewed.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { attributeTitles } from '../../shared/vocabulary/attribute-titles.ts';
import { attributeNames } from '../../shared/vocabulary/attributes.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { markTranscript, type Stretch } from '../../src/5-review/mark-transcript.ts';
import { itemsByKey, type QueueItem } from '../../src/5-review/queue.ts';
import type { Gold, GoldObservation } from '../../src/score/gold.ts';

const fields = ['at', 'to', 'status', ...attributeNames.filter((name) => name !== 'to')] as const;
type Field = (typeof fields)[number] | 'kind' | 'run';

export interface KeyboardReview {
  readonly presses: number;
  readonly gold: number;
  /** Keys by what they were for: the queue, silent mistakes, missing findings. */
  readonly spent: Readonly<Record<string, number>>;
}

export interface ReviewSource {
  readonly draft: Draft;
  readonly words: Words;
  /** The state as it is on the disk. */
  readonly reviewed: () => Promise<Reviewed>;
}

/** Brings the review that `page` shows to the gold. Gives the number of keys it took. */
export async function reviewByKeyboard(page: Page, source: ReviewSource, gold: Gold): Promise<KeyboardReview> {
  let presses = 0;
  let doing = 'queue';
  const spent: Record<string, number> = {};
  const press = async (key: string) => {
    presses++;
    spent[doing] = (spent[doing] ?? 0) + 1;
    await page.keyboard.press(key);
  };
  const type = async (text: string) => {
    for (const letter of text) await press(letter === ' ' ? 'Space' : letter);
  };
  const settled = () => page.waitForFunction(() => document.querySelector('.keeping') === null);

  const first = await source.reviewed();
  const pairs = pairUp(gold.observations, first.observations);
  const left = new Set(gold.observations.filter((g) => ![...pairs.values()].includes(g)));
  const added = new Set<GoldObservation>();

  // What the queue asks.
  for (let turns = 0; turns < 1000; turns++) {
    const key = await page.getAttribute('#item', 'data-item');
    if (key === null) break;
    const item = itemsByKey(await source.reviewed()).get(key)!;
    if (item.isSettled) break;
    if (item.what === 'observation') await settleObservation(item.item);
    else await settleTalk(item);
    const isGoneOn = await page
      .waitForFunction((before) => document.querySelector('#item')?.getAttribute('data-item') !== before, key, {
        timeout: 10_000,
      })
      .then(
        () => true,
        () => false,
      );
    if (!isGoneOn)
      throw new Error(`stuck at ${key}: ${await page.textContent('.notices')} ${await page.textContent('#item')}`);
    await settled();
  }
  // What is wrong although nothing flags it.
  doing = 'silent';
  for (const o of (await source.reviewed()).observations.filter((one) => one.source === 'draft')) {
    if (o.reviewState !== 'unflagged') continue;
    const target = pairs.get(o.id);
    if (target && differences(target, o).length === 0) continue;
    await goToFinding(o.id);
    await settleObservation(o);
    await settled();
  }
  // What is missing.
  doing = 'missing';
  for (const g of left) {
    if (added.has(g)) continue;
    const stretches = markTranscript(source.words, await source.reviewed());
    const talk = stretchAt(stretches, g.heard[0], g.heard[1]);
    if (!talk) throw new Error(`no talk at ${g.heard[0]}`);
    await goToTalk(stretches, talk);
    await press('a');
    await fillNew(g);
    await settled();
  }
  return { presses, gold: gold.observations.length, spent };

  async function settleObservation(o: ReviewedObservation): Promise<void> {
    const target = pairs.get(o.id);
    if (!target) return press('x');
    const wrong = differences(target, o);
    if (wrong.length === 0) return press('Enter');
    const offers = o.openFlags.flatMap((flag) => (flag.offers ?? []).map((offer) => ({ flag, ...offer })));
    const [only] = wrong;
    const at = offers.findIndex((offer) => offer.flag.about === only && offer.value === wanted(target, only!));
    const isLastFlag = o.openFlags.every((flag) => flag.about === only);
    if (wrong.length === 1 && at !== -1 && isLastFlag) return press(String(at + 1));
    if (wrong.length === 1 && only === 'status') {
      await press('d');
      // Another doubt keeps it open: that is answered with Enter.
      return o.openFlags.every((flag) => flag.about === 'status') ? undefined : press('Enter');
    }
    await press('e');
    await page.waitForSelector('form.fields');
    for (const field of wrong) await fill(field, wanted(target, field));
    await press('Enter');
  }

  async function settleTalk(item: QueueItem): Promise<void> {
    const { heard } = item;
    const hidden = heard && [...left].find((g) => !added.has(g) && g.heard[0] < heard.end && heard.start < g.heard[1]);
    const isTalk = item.what === 'unplaced' || item.what === 'set-aside' || item.what === 'absent';
    if (!hidden || !isTalk) return press('Enter');
    added.add(hidden);
    await press('a');
    await fillNew(hidden);
  }

  async function fillNew(g: GoldObservation): Promise<void> {
    await page.waitForSelector('form[aria-label="The new finding"]');
    const shownKind = await page.inputValue('form.fields [name=kind]');
    if (shownKind !== g.kind) await fill('kind', g.kind);
    const texts = await page.$$eval('form.fields [name]', (inputs) =>
      inputs.map((input) => [(input as HTMLInputElement).name, (input as HTMLInputElement).value] as const),
    );
    const shown = new Map<string, string>(texts);
    if (shown.has('run') && shown.get('run') !== String(g.run)) await fill('run', g.run);
    for (const field of fields) {
      const value = wanted(g, field);
      if (String(value ?? '') !== (shown.get(field) ?? '')) await fill(field, value);
    }
    await press('Enter');
    await page.waitForSelector('form.fields', { state: 'detached' });
  }

  /** Goes to a field with Tab and enters a value: digits, or enough letters of a choice. */
  async function fill(field: Field, value: string | number | null): Promise<void> {
    const steps = await page.evaluate((name) => {
      const inputs = [...document.querySelectorAll<HTMLElement>('form.fields [name]')];
      return (
        inputs.findIndex((one) => one.getAttribute('name') === name) -
        inputs.indexOf(document.activeElement as HTMLElement)
      );
    }, field);
    for (let i = 0; i < Math.abs(steps); i++) await press(steps > 0 ? 'Tab' : 'Shift+Tab');
    const choices = choicesOf(field);
    if (choices) return type(enoughOf(choices, value));
    if (value === null) return press('Delete');
    await type(String(value));
  }

  /** Types letters of a stretch into the search until it is the first that is found. */
  async function typeUntilFirst(stretches: readonly Stretch[], one: Stretch): Promise<void> {
    const letters = fewestLetters(stretches, one);
    await type(letters);
    const from = one.text.toLowerCase().indexOf(letters) + letters.length;
    for (const letter of one.text.slice(from)) {
      const firstFound = await page.textContent('.talk .stretch .said');
      if (firstFound === one.text) return;
      await type(letter);
    }
  }

  /** Shows the item of a stretch of talk, found by the fewest letters of it. */
  async function goToTalk(stretches: readonly Stretch[], one: Stretch): Promise<void> {
    await press('/');
    await typeUntilFirst(stretches, one);
    await press('Enter');
  }

  /** Shows a finding: from its own talk, or from that of one spoken shortly before or after. */
  async function goToFinding(id: string): Promise<void> {
    const reviewed = await source.reviewed();
    const stretches = markTranscript(source.words, reviewed);
    const spoken = [...reviewed.observations].sort((a, b) => a.heard.start - b.heard.start);
    const at = spoken.findIndex((o) => o.id === id);
    const ways = [0, -1, 1, -2, 2, -3, 3].flatMap((off) => {
      const other = spoken[at + off];
      const talk = other && stretchAt(stretches, other.heard.start, other.heard.end);
      return talk ? [{ off, talk, cost: fewestLetters(stretches, talk).length + Math.abs(off) }] : [];
    });
    ways.sort((a, b) => a.cost - b.cost);
    const { off, talk } = ways[0]!;
    await goToTalk(stretches, talk);
    const items = itemsByKey(reviewed);
    for (let tries = 0; tries < 8; tries++) {
      const shown = items.get((await page.getAttribute('#item', 'data-item')) ?? '');
      if (shown?.what === 'observation' && shown.item.id === id) return;
      await press(off > 0 ? 'k' : 'j');
    }
    throw new Error(`the finding ${id} was not reached from ${talk.text}`);
  }
}

function stretchAt(stretches: readonly Stretch[], start: number, end: number): Stretch | undefined {
  return stretches.find((one) => one.startSeconds < end - 0.05 && start < one.endSeconds - 0.05);
}

/** What still differs from the gold, one line each. */
export function leftToCorrect(gold: Gold, observations: readonly ReviewedObservation[]): string[] {
  const pairs = pairUp(gold.observations, observations);
  const used = new Set(pairs.values());
  return [
    ...observations.flatMap((o) => {
      const target = pairs.get(o.id);
      if (!target) return [`${o.kind} at ${o.at} is too many`];
      return differences(target, o).map((field) => `${o.kind} at ${o.at}: ${field} is wrong`);
    }),
    ...gold.observations.filter((g) => !used.has(g)).map((g) => `${g.kind} at ${g.at} is missing`),
  ];
}

/** Gold by the id of the observation that means it: kind, run and place first, then the same words. */
function pairUp(golds: readonly GoldObservation[], all: readonly ReviewedObservation[]): Map<string, GoldObservation> {
  const candidates = golds.flatMap((g) =>
    all.flatMap((o) => {
      const isSaid = g.heard[0] < o.heard.end && o.heard.start < g.heard[1];
      const isSame = g.kind === o.kind && g.run === o.run && Math.abs((g.at ?? -99) - (o.at ?? -99)) <= 0.25;
      if (!isSaid && !isSame) return [];
      const fitting = fields.filter((field) => wanted(g, field) === (o[field] ?? null)).length;
      return [{ g, o, score: (isSame ? 100 : 0) + (g.kind === o.kind ? 40 : 0) + (isSaid ? 20 : 0) + fitting }];
    }),
  );
  candidates.sort((a, b) => b.score - a.score);
  const pairs = new Map<string, GoldObservation>();
  const used = new Set<GoldObservation>();
  for (const { g, o } of candidates) {
    if (pairs.has(o.id) || used.has(g)) continue;
    pairs.set(o.id, g);
    used.add(g);
  }
  return pairs;
}

function wanted(g: GoldObservation, field: Field): string | number | null {
  if (field === 'status') return g.status ?? 'present';
  return g[field] ?? null;
}

function differences(g: GoldObservation, o: ReviewedObservation): Field[] {
  const all: Field[] = ['kind', 'run', ...fields];
  return all.filter((field) => {
    const want = wanted(g, field);
    const got = o[field] ?? null;
    if (field === 'at' && g.kind === 'pipe' && want === 0 && got === null) return false;
    return typeof want === 'number' && typeof got === 'number' ? Math.abs(want - got) > 0.25 : want !== got;
  });
}

function choicesOf(field: Field): { value: string; title: string }[] | null {
  if (field === 'kind') return kinds.map(({ name, title }) => ({ value: name, title }));
  if (field === 'run') return Array.from({ length: 9 }, (_, n) => ({ value: String(n + 1), title: String(n + 1) }));
  const choices = attributeTitles[field].choices;
  return choices && [{ value: '', title: 'not said' }, ...choices];
}

/** The fewest letters after which a list has only the wanted choice left, or has it first. */
function enoughOf(choices: readonly { value: string; title: string }[], value: string | number | null): string {
  const title = choices.find((choice) => choice.value === String(value ?? ''))!.title.toLowerCase();
  for (let length = 1; length < title.length; length++) {
    const start = title.slice(0, length);
    if (choices.filter((choice) => choice.title.toLowerCase().startsWith(start)).length === 1) return start;
  }
  return title;
}

function fewestLetters(stretches: readonly Stretch[], wantedStretch: Stretch): string {
  const text = wantedStretch.text.toLowerCase();
  for (let length = 2; length < text.length; length++) {
    for (let from = 0; from + length <= text.length; from++) {
      const part = text.slice(from, from + length);
      if (!/^[a-z0-9 ]+$/.test(part) || part.trim() !== part) continue;
      const found = stretches.filter((one) => one.text.toLowerCase().includes(part));
      if (found.length === 1) return part;
    }
  }
  return text;
}
