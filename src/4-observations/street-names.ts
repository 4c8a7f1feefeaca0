/** Words that are the end of a street's name ("66 Otter Bend") and name no thing in the pipe. */
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

/** "Vent Street", "on Otter Bend": a name in the middle of a sentence, told by its capitals. */
export function isInStreetName({ tokens }: Phrases, from: number, to: number, start: number): boolean {
  const last = tokens[to - 1];
  const next = tokens[to];
  const before = tokens[from - 1];
  if (!last?.isCapitalised || last.text.length < 3) return false;
  const joined = (last.breakAfter ?? 'stop') === 'none';
  if (joined && from > start && next?.isCapitalised && isStreetType(next.text)) return true;
  return (
    isStreetType(last.text) &&
    from - 1 > start &&
    before?.isCapitalised === true &&
    before.breakAfter === 'none' &&
    before.text.length > 2
  );
}
