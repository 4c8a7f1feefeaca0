/**
 * LINEWORD_HEARD=folder takes `d01/words.json` and `d01/draft.json` of drafts that were heard instead, to measure those.
 *
 * Fourteen narrations, read from their transcripts as the program reads them today, brought to the gold by keyboard
 * alone. The target: 2.2 keys an observation or fewer.
 */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { type Draft, draftSchema } from '../../shared/schemas/draft.ts';
import { standingObservations } from '../../shared/schemas/reviewed.ts';
import { type Words, wordsSchema } from '../../shared/schemas/word.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { readDecisionLines } from '../../src/5-review/decision-log.ts';
import { draft as draftFrom, transcribed } from '../../src/pipeline.ts';
import { goldSchema } from '../../src/score/gold.ts';
import { emptyFolder } from './make-inspection.ts';
import { type BrowserAndPage, chromiumPath, openBrowser, openPage } from './open-browser.ts';
import { closeReviews, openReview } from './open-review.ts';
import { type KeyboardReview, leftToCorrect, reviewByKeyboard } from './review-by-keyboard.ts';

const place = join(import.meta.dirname, 'narrations');
const names = chromiumPath ? (await readdir(place)).filter((name) => name.endsWith('.vtt')).sort() : [];
const results: KeyboardReview[] = [];
let opened: BrowserAndPage;

beforeAll(async () => {
  if (chromiumPath) opened = await openBrowser();
});
afterAll(async () => opened?.close());
afterEach(async () => {
  for (const context of opened?.browser.contexts() ?? []) await context.close();
  await closeReviews();
});

async function drafted(name: string): Promise<{ words: Words; draft: Draft }> {
  const heard = process.env.LINEWORD_HEARD;
  if (!heard) {
    const words = await transcribed(join(place, name));
    return { words, draft: await draftFrom(words) };
  }
  const read = async (file: string) => JSON.parse(await readFile(join(heard, name.replace('.vtt', ''), file), 'utf8'));
  const words = wordsSchema.parse(await read('words.json'));
  // Without the recording: what is counted here is keys.
  return {
    words: { ...words, hearing: { model: 'transcript', sha256: null } },
    draft: draftSchema.parse(await read('draft.json')),
  };
}

describe.skipIf(!chromiumPath)('a reviewer with only a keyboard', () => {
  test.each(names)('brings %s to the gold', async (name) => {
    const gold = goldSchema.parse(JSON.parse(await readFile(join(place, name.replace('.vtt', '.gold.json')), 'utf8')));
    const { words, draft } = await drafted(name);
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
    const result = await reviewByKeyboard(page, { draft, words, reviewed }, gold);
    results.push(result);
    if (process.env.LINEWORD_MEASURE)
      process.stdout.write(`${name} ${JSON.stringify(result)} ${draft.observations.length}\n`);
    const after = await reviewed();
    expect(leftToCorrect(gold, standingObservations(after))).toEqual([]);
    expect(after.openCount).toBe(0);
    expect(faults).toEqual([]);
  });

  test('in 2.2 keys an observation or fewer', () => {
    const presses = results.reduce((sum, one) => sum + one.presses, 0);
    const gold = results.reduce((sum, one) => sum + one.gold, 0);
    process.stdout.write(`${presses} keys for ${gold} observations: ${(presses / gold).toFixed(2)} each\n`);
    expect(presses / gold).toBeLessThanOrEqual(2.2);
  });
});
