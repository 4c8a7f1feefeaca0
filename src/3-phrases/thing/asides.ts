/**
 * Words that may stand inside a description without being part of it: adverbs ("it's just sitting there"), and a place or a side
 * ("the joint at fourteen is open", "the wall on the left has gone").
 */
import type { AsideReader } from '../lexicon/pattern.ts';
import { buildLexicon, matchAt } from '../lexicon/pattern.ts';
import type { Token } from '../token/token.ts';

const small =
  "just|really|actually|basically|kinda|sorta|kind_of|sort_of|now|still|also|even|definitely|clearly|obviously|certainly|pretty_much|pretty_well|maybe|probably|badly|slightly|a_little|a_little_bit|a_bit|here|there|right_here|right_there|down_here|up_here|in_here|down_there|up_there|in_there|through_here|along_here|um|uh|er|you_know|i_think|i_guess|i_'d_say|since|somehow|simply|slowly|quite|fairly";
const sides = 'left|right|top|bottom|side|crown|invert|roof|floor|left_side|right_side|left_hand_side|right_hand_side';

const lexicon = buildLexicon<null>([
  { pattern: small, value: null },
  { pattern: 'at|by|around|about # feet|foot?', value: null },
  { pattern: `on|at|along|down|up|from|to|over|near the|your|this ${sides}`, value: null },
  { pattern: 'up|down top|high|low', value: null },
  { pattern: 'of|in|inside|along the|this|that|our|your pipe|line', value: null },
  { pattern: 'at|in|on this|that|the joint|bell|hub|spot|point', value: null },
]);

/** Reads what may be passed over at each token of a talk. Many patterns ask at the same token, so the answers are kept. */
export function asideReader(tokens: readonly Token[], numberLengthAt: (index: number) => number): AsideReader {
  const known = new Map<number, readonly number[]>();
  return (index) => {
    let lengths = known.get(index);
    if (!lengths) {
      lengths = matchAt(lexicon, tokens, index, numberLengthAt).map(({ from, to }) => to - from);
      known.set(index, lengths);
    }
    return lengths;
  };
}
