/** "I carry on for another five feet": the camera goes on by so much, which is neither a place nor how long a thing is. */
import { type Token, textOf } from '../token/token.ts';
import { leadOf } from './lead.ts';

const goesOn =
  /(?:^|\b(?:i|we|'m|'re|'ll|'ve|'s|me|and|then|now|okay|camera|just|gonna|to) )(?:carry|carrying|carried|go|going|went|push|pushing|pushed|move|moving|moved|roll|rolling|rolled|run|head|heading|headed|continue|continuing|crawl|crawling|travel|travelling|keep going|keep pushing|feed|feeding|creep|forward|ahead|along|down another|on another|out another|up another)(?: on| along| forward| ahead| up| down| out| in| another| about| maybe| just| for| further| farther| a good| a| the| next| only| of cable| by)*$/;

const cleanFor =
  /\b(clean|clear|good|fine|nothing|okay|smooth|quiet|dry|tidy|uneventful|no \w+|pipe|looks|looking|nice|solid|sound)( \S+){0,4} (for|over) (about |maybe |roughly )?(another|the next|a further|a good|an additional)( good| about)?$/;
const thenNamed =
  /^(feet|foot|ft)?( or so| more)?( of (clean|clear|good|nothing|smooth)( \S+){0,3})? ?(and|then|before|until|to|there)\b/;

/** "Clean for another seven feet, and there's a crack": the camera goes on by so much as well. */
export const isCleanFor = (tokens: readonly Token[], at: number, to: number): boolean =>
  cleanFor.test(leadOf(tokens, at, REACH_TOKENS + 4)) && thenNamed.test(textOf(tokens, to, to + 8));

/** How far before a number such words are looked for, in tokens. */
const REACH_TOKENS = 8;

/** Whether the words before a number of feet say that the camera goes on by it. */
export function isTravelled(tokens: readonly Token[], at: number): boolean {
  let text = '';
  for (let from = at - 1; from >= 0 && from >= at - REACH_TOKENS; from -= 1) {
    const token = tokens[from]!;
    if (token.breakAfter !== 'none') break;
    text = text === '' ? token.text : `${token.text} ${text}`;
  }
  return (
    goesOn.test(text) &&
    !/\b(it|that|this|they|he|she|you)('s)? \S+( \S+)?$/.test(
      text.replace(goesOn, (found) => found.split(' ')[0] ?? ''),
    )
  );
}
