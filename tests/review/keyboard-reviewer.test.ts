/**
 * Narrations brought to the gold by keyboard alone: fourteen read from their transcripts as the program reads them
 * today, and some read from the words it heard in their recordings. The target for both: 2.2 keys an observation or
 * fewer. LINEWORD_HEARD=folder takes the `d01.words.json` there instead of those kept here; LINEWORD_MEASURE=1 says
 * what the keys went to.
 */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { standingObservations } from '../../shared/schemas/reviewed.ts';
import { type Words, wordsSchema } from '../../shared/schemas/word.ts';
import { hintTalk } from '../../src/4-observations/hint-talk.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { readDecisionLines } from '../../src/5-review/decision-log.ts';
import { draft as draftFrom, transcribed } from '../../src/pipeline.ts';
import { goldSchema } from '../../src/score/gold.ts';
import { leftToCorrect } from './gold-pairs.ts';
import { emptyFolder } from './make-inspection.ts';
import { browserForTests, chromiumPath, openPage } from './open-browser.ts';
import { openReview } from './open-review.ts';
import { type KeyboardReview, reviewByKeyboard } from './review-by-keyboard.ts';

const place = join(import.meta.dirname, 'narrations');
const heardPlace = process.env.LINEWORD_HEARD ?? join(import.meta.dirname, 'narrations-heard');
const opened = browserForTests();

async function namesIn(folder: string, ending: string): Promise<string[]> {
  if (!chromiumPath) return [];
  const files = (await readdir(folder)).filter((name) => name.endsWith(ending)).sort();
  return files.map((name) => name.slice(0, -ending.length));
}

async function heardWords(name: string): Promise<Words> {
  const words = wordsSchema.parse(JSON.parse(await readFile(join(heardPlace, `${name}.words.json`), 'utf8')));
  // Without the recording: what is counted here is keys.
  return { ...words, hearing: { model: 'transcript', sha256: null } };
}

async function keysFor(name: string, words: Words): Promise<KeyboardReview> {
  const gold = goldSchema.parse(JSON.parse(await readFile(join(place, `${name}.gold.json`), 'utf8')));
  const draft = await draftFrom(words);
  const folder = join(await emptyFolder(), 'inspection');
  await mkdir(folder);
  await writeFile(join(folder, 'draft.json'), JSON.stringify(draft));
  await writeFile(join(folder, 'words.json'), JSON.stringify(words));
  const review = await openReview(folder, { pageFolder: opened.pageFolder });
  const { page, faults } = await openPage(opened.browser, review.address);
  const reviewed = async () => {
    const bytes = await readFile(join(folder, 'decisions.jsonl'));
    return applyDecisions(
      draft,
      readDecisionLines(bytes).sealed.map(({ decision }) => decision),
    );
  };
  const result = await reviewByKeyboard(page, { words, hints: hintTalk(words), reviewed }, gold);
  if (process.env.LINEWORD_MEASURE) process.stdout.write(`${name} ${JSON.stringify(result, null, 1)}\n`);
  const after = await reviewed();
  expect(leftToCorrect(gold, standingObservations(after))).toEqual([]);
  expect(after.openCount).toBe(0);
  expect(faults).toEqual([]);
  return result;
}

function keysEach(results: readonly KeyboardReview[]): number {
  const presses = results.reduce((sum, one) => sum + one.presses, 0);
  const gold = results.reduce((sum, one) => sum + one.gold, 0);
  process.stdout.write(`${presses} keys for ${gold} observations: ${(presses / gold).toFixed(2)} each\n`);
  return presses / gold;
}

describe.skipIf(!chromiumPath).each([
  {
    from: 'transcripts',
    names: await namesIn(place, '.vtt'),
    wordsOf: (name: string) => transcribed(join(place, `${name}.vtt`)),
  },
  { from: 'recordings', names: await namesIn(heardPlace, '.words.json'), wordsOf: heardWords },
])('a reviewer with only a keyboard, drafts from $from', ({ names, wordsOf }) => {
  const results: KeyboardReview[] = [];
  test.each(names)('brings %s to the gold', async (name) => {
    results.push(await keysFor(name, await wordsOf(name)));
  });
  test('in 2.2 keys an observation or fewer', () => {
    expect(keysEach(results)).toBeLessThanOrEqual(2.2);
  });
});
