/** Of narrations with their gold: for each finding drafted, what spoke for doubt about it, and whether it was wrong. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { readTranscript } from '../2-words/read-transcript.ts';
import type { Weighed } from '../4-observations/close/weigh-closely.ts';
import { weighWordsClosely, writeDraft } from '../4-observations/draft-words.ts';
import { compareWithGold } from '../score/compare.ts';
import { goldSchema } from '../score/gold.ts';

export interface DoubtCase extends Weighed {
  /** The narration it comes from. */
  readonly talk: string;
  readonly isWrong: boolean;
}

const GOLD = '.gold.json';

/** Every narration of a folder that holds NAME.vtt and NAME.gold.json. */
export async function readDoubtCases(folder: string): Promise<DoubtCase[]> {
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(GOLD))
    .map((name) => name.slice(0, -GOLD.length))
    .sort();
  const cases: DoubtCase[] = [];
  for (const name of names) {
    const words = await readTranscript(path.join(folder, `${name}.vtt`));
    const { reading, weighed } = await weighWordsClosely(words);
    const gold = goldSchema.parse(JSON.parse(readFileSync(path.join(folder, name + GOLD), 'utf8')));
    const { claims } = compareWithGold(gold, writeDraft(reading, words));
    for (const [{ n }, each] of weighed) {
      const claim = claims.find(({ id }) => id === `o${n}`);
      if (claim) cases.push({ ...each, talk: path.join(folder, name), isWrong: !claim.isRight });
    }
  }
  return cases;
}
