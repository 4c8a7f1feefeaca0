/** Of narrations with their gold: for each finding drafted, what spoke for doubt about it, and whether it was wrong. */
import path from 'node:path';
import { readTranscript } from '../2-words/read-transcript.ts';
import type { Weighed } from '../4-observations/close/weigh-closely.ts';
import { weighWordsClosely, writeDraft } from '../4-observations/draft-words.ts';
import { compareWithGold } from '../score/compare.ts';
import { narrationsIn, readGold } from '../score/narrations.ts';

export interface DoubtCase extends Weighed {
  /** The narration it comes from. */
  readonly talk: string;
  readonly isWrong: boolean;
}

/** Every narration of a folder that holds NAME.vtt and NAME.gold.json. */
export async function readDoubtCases(folder: string): Promise<DoubtCase[]> {
  const cases: DoubtCase[] = [];
  for (const name of narrationsIn(folder)) {
    const words = await readTranscript(path.join(folder, `${name}.vtt`));
    const { reading, weighed } = await weighWordsClosely(words);
    const { claims } = compareWithGold(await readGold(folder, name), writeDraft(reading, words));
    for (const [{ n }, each] of weighed) {
      const claim = claims.find(({ id }) => id === `o${n}`);
      if (claim) cases.push({ ...each, talk: path.join(folder, name), isWrong: !claim.isRight });
    }
  }
  return cases;
}
