/** Ways on from the last place that hold no word like "past" or "beyond": "plus six feet", "four further", "it's six feet to some rubble". */
import type { NumberPhrase } from '../number/read-number.ts';
import { phraseAfter, phraseBefore, phraseSet } from '../number/surroundings.ts';
import type { Token } from '../token/token.ts';
import { isEndOfClause } from './read-feet.ts';
import { isTravelled } from './travel.ts';

const stepLead = phraseSet([
  "it|that|then|there 's about|another?",
  "it|that 's only|just",
  'it is',
  'then|only|just',
  'plus',
]);
const nextThing = phraseSet(['to', 'more to']);
const bareStep = phraseSet(['further|farther', 'further|farther on|along|down|in|up|out', 'more further|farther']);

/** "From there it's six feet to some rubble", "plus six feet": on from the last place. */
export function isStep(tokens: readonly Token[], from: number, to: number): boolean {
  const lead = phraseBefore(tokens, from, stepLead);
  if (lead?.text === 'plus') return isEndOfClause(tokens, to);
  const next = phraseAfter(tokens, to, nextThing);
  return lead !== null && next !== null && /^(a|an|some|another|more)$/.test(tokens[next.to]?.text ?? '');
}

/** "Four further, a crack", "go on four more": a way on, though its unit is left out. The token after it, or null. */
export function bareStepTo(tokens: readonly Token[], number: NumberPhrase): number | null {
  const step = phraseAfter(tokens, number.to, bareStep);
  if (step) return step.to;
  const opensPlus =
    tokens[number.from - 1]?.text === 'plus' && /stop|question/.test(tokens[number.from - 2]?.breakAfter ?? 'stop');
  if (opensPlus && isEndOfClause(tokens, number.to)) return number.to;
  const isMore = tokens[number.to]?.text === 'more' && (tokens[number.to - 1]?.breakAfter ?? 'stop') === 'none';
  if (!isMore || !isEndOfClause(tokens, number.to + 1)) return null;
  // "Three more, a tee" counts feet; "two more, at 24 and 26" counts things.
  const opens = /stop|question/.test(tokens[number.from - 1]?.breakAfter ?? 'stop');
  const goesOn = /^(a|an|and|there|then|it|we|i|another)$/.test(tokens[number.to + 1]?.text ?? '');
  return isTravelled(tokens, number.from) || (opens && goesOn) ? number.to + 1 : null;
}

/** Small words that soften a number and stand between it and the words that say what it is. */
const soft = /^(maybe|say|roughly|perhaps|probably|approximately|nearly|almost)$/;

/** Where the words before such a small word end. */
export function beforeSoft(tokens: readonly Token[], at: number): number {
  const before = tokens[at - 1];
  return before !== undefined && before.breakAfter === 'none' && soft.test(before.text) ? at - 1 : at;
}
