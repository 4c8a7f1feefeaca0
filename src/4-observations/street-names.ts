/** Words that are the end of a street's name ("66 Harrow Bend") and name no thing in the pipe. */
import type { Phrases } from '../3-phrases/find-phrases.ts';

const streetTypes =
  /^(street|road|lane|avenue|court|drive|way|terrace|place|row|loop|hill|mews|alley|trail|ridge|circle|boulevard|park|bend|stairs|crescent|close|square|path|pike|highway|parkway|point|view|walk|run|hollow|cove|landing|creek|commons|heights|crossing|rise|grove|green|gardens|glen)$/;
export const isStreetType = (word: string): boolean => streetTypes.test(word);

/** How many words a street's name may have before its type. */
const NAME_WORDS = 3;

/** Whether the word at a token ends an address; where nothing is capitalised only `isLikely` lets it. */
export function endsAddress({ tokens, numbers }: Phrases, at: number, isLikely: boolean): boolean {
  if (!isStreetType(tokens[at]?.text ?? '')) return false;
  for (let from = at - 1; from >= Math.max(0, at - NAME_WORDS); from -= 1) {
    const word = tokens[from];
    if (word === undefined || word.breakAfter !== 'none') return false;
    if (!(word.isCapitalised || (isLikely && word.text.length > 3))) return false;
    if (numbers.some((number) => number.to === from && number.value % 1 === 0)) return true;
  }
  return false;
}
