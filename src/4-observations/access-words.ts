/** The words that name the opening a run is begun from, as said. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import { needsOpening } from './kind-roles.ts';
import type { Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

const ACCESS_WORDS = 8;

const leadsIn =
  /^(the|a|an|at|in|from|through|by|via|my|this|is|'s|and|are|into|up|down|on|off|to|with|have|had|got|we|i|'ve|'m|'re)$/;
const leadsOn =
  /^(and|so|heading|headed|going|which|that|we|i|running|is|'s|came|pushing|then|downstream|upstream|toward|towards|out|down|up|to|where|open|opened)$/;

/** What is done with an opening is not its name. */
const verbs =
  /^(use|using|used|try|trying|take|taking|taken|took|choose|choosing|borrow|borrowing|lifted|lifting|picked|popped|got|have|up|off|out|the|a|my|our|their|that|this)$/;

/** An opening that could not be used is not the one gone in by. */
export const isUnusable = (sentence: Sentence): boolean =>
  phrasesOf(sentence.phrases, 'thing').some((thing) => needsOpening.has(thing.kind));

/** Openings that stand above the line: from them a camera can only go down. */
const above =
  /\b(roof|vent|toilet|commode|stool|flange|standpipe|washer|shower|tub|bath|sink|basin|vanity|lavatory|floor drain|laundry)\b/;
export const leadsDown = (access: string): boolean =>
  above.test(access) && !/\b(cleanout|plug|cap|riser)\b/.test(access);

export function accessWords(reading: Reading, sentence: Sentence): string | null {
  if (isUnusable(sentence)) return null;
  const { tokens } = reading.phrases;
  // "There's no outside cleanout, so it's the roof vent": an opening that is not there is not gone in by.
  const isMissing = (from: number): boolean =>
    /\b(no|any|without|isn't a|never|neither)( [\w']+){0,2}$/.test(
      textOf(tokens, Math.max(sentence.from, from - 3), from),
    );
  const access = phrasesOf(sentence.phrases, 'camera').find(
    (phrase) => phrase.cue === 'access' && !isMissing(phrase.from),
  );
  if (!access) return null;
  let from = access.from;
  while (from > sentence.from && access.from - from < ACCESS_WORDS && tokens[from - 1]?.breakAfter === 'none') {
    if (leadsIn.test(tokens[from - 1]?.text ?? '')) break;
    from -= 1;
  }
  let to = access.to;
  while (to < sentence.to && to - access.to < ACCESS_WORDS && tokens[to - 1]?.breakAfter === 'none') {
    if (leadsOn.test(tokens[to]?.text ?? '')) break;
    to += 1;
  }
  while (from < access.to - 1 && verbs.test(tokens[from]?.text ?? '')) from += 1;
  while (to > access.to && leadsIn.test(tokens[to - 1]?.text ?? '')) to -= 1;
  return textOf(tokens, from, to);
}
