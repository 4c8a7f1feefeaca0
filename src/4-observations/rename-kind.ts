/** A thing called by the wrong name first: "crack at twelve, no, fracture", "Tee on the left. Sorry, wye." */
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Assertion } from './assert-claim.ts';
import { type Claim, kindTakes } from './claim.ts';
import { fillFields, mentionAgain } from './items.ts';
import { currentRun, focusedIn, type Item, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

const groupOf = new Map<string, string>(kinds.map((kind) => [kind.name, kind.group]));
const isSameGroup = (a: string, b: string): boolean => groupOf.get(a) === groupOf.get(b);

const leadsIn =
  /^((it|that|this|they|those|these|i|we|you) )?(('s|is|are|'re|was|'d|would|should|meant|mean|say|call|called|make|be|have|been|it|that|this|really|actually|more|like|of|just|see|so|rather|better|no|sorry|well|wait|a|an|the|small|little) ?)*$/;
/** Cues that replace a name; "or" and "hang on" do not. */
const replaces =
  /^(no|nope|nah|sorry|i mean|i meant|actually|rather|or rather|wait|no wait|wait no|correction|make that|make it|no sorry|i should say|my mistake|call it|let 's call it|excuse me|i misspoke|i stand corrected|(?:scratch|strike|forget|scrap|cancel|never mind|nevermind) (?:that|it)|on second (?:look|thought)|no , wait|wait , no|should say|should be|no hold on|no , sorry)$/;

/** "There's a tee, it's a wye": the second name is the one that stays. */
const appositive = /^((so|no|well|or) )?(it|that) (is|'s) (really |actually )?(a|an)$/;
/** "Scale at twelve no that's grease": after it the same thing is spoken of. */
const pointsBack = /^(it|that|this|those|they) ('s|is|are|'re)$/;
const lookedUp =
  /\b(not|no|isn't|wasn't|aren't|(said|called|had|told|noted|logged) (it|that|this|you|him|her)?( as| down as| was| 's)?)( really| even)?( a| an| any| the)?$/;
const assertsNothing = /\b(no|not|nothing|isn't)$/;

/** Marks what the same sentence calls by another name after a correcting word. */
export function rejectMisnamed(claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): void {
  const cues = phrasesOf(sentence.phrases, 'correction').filter((cue) => replaces.test(cue.rule));
  const withdrawals = phrasesOf(sentence.phrases, 'correction').filter((cue) => cue.cue.act === 'withdraw');
  for (const [index, claim] of claims.entries()) {
    const next = claims[index + 1];
    // What is denied or quoted was listed before: it is looked up and taken back there.
    const lead = textOf(tokens, Math.max(sentence.from, claim.from - 5), claim.from);
    if (!next || lookedUp.test(lead)) continue;
    // "Root at 12, scratch that, hole at 15" leaves nothing of the first.
    const isWithdrawn = withdrawals.some((cue) => cue.from >= claim.to && cue.to <= next.from);
    if (isWithdrawn && !assertsNothing.test(textOf(tokens, next.from - 3, next.from))) claim.isRejected = true;
    if (next.kind === claim.kind || !isSameGroup(next.kind, claim.kind)) continue;
    const isAppositive = groupOf.get(claim.kind) === 'fitting' && appositive.test(textOf(tokens, claim.to, next.from));
    if (isAppositive && tokens[claim.to - 1]?.breakAfter !== 'none') claim.isRejected = true;
    const isReplaced = cues.some(
      (cue) =>
        cue.from >= claim.to &&
        cue.to <= next.from &&
        (cue.cue.strength === 'strong' ||
          tokens[cue.from - 1]?.breakAfter !== 'none' ||
          cue.rule === 'i mean' ||
          pointsBack.test(textOf(tokens, cue.to, cue.to + 2))) &&
        // "Roots at twelve, no cracks" denies: the word that corrects stands apart or points back.
        (cue.rule !== 'no' ||
          tokens[cue.to - 1]?.breakAfter !== 'none' ||
          /^(it|that|this)$/.test(tokens[cue.to]?.text ?? '')) &&
        leadsIn.test(textOf(tokens, cue.to, next.from)),
    );
    // A second place of its own makes it a second thing.
    const hasOwnPlace = sentence.phrases.some(
      (phrase) => phrase.family === 'distance' && phrase.from >= next.to && claim.place !== null,
    );
    if (isReplaced && !hasOwnPlace) claim.isRejected = true;
  }
}

const newThing = /\b(there|here) ('s|is|are|comes)\b|\b(also|another|too|plus|next|and then)\b/;
/** How long a sentence may be that only gives another name, in tokens. */
const RENAMING_TOKENS = 12;

/** "No, that's a fracture.", said right after "Crack at twelve." */
export function renameLast(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  assertion: Assertion,
  correcting: 'strong' | 'weak' | null,
): Item | null {
  const run = currentRun(reading);
  if (correcting === null || !run || run.way === 'back' || reading.isSummary) return null;
  if (
    (claim.source === 'weak' && correcting !== 'strong') ||
    assertion.isDenied ||
    assertion.aside !== null ||
    sentence.isQuestion
  )
    return null;
  const { tokens } = reading.phrases;
  const cue = phrasesOf(sentence.phrases, 'correction').find((other) => other.to <= claim.from);
  const isOpened = cue !== undefined && replaces.test(cue.rule) && leadsIn.test(textOf(tokens, cue.to, claim.from));
  const isAfterOpening = cue === undefined && leadsIn.test(textOf(tokens, sentence.from, claim.from));
  if (!isOpened && !isAfterOpening) return null;
  // "No roots." after a thing denies something else.
  if (cue?.rule === 'no' && tokens[cue.to - 1]?.breakAfter === 'none' && cue.to === claim.from) return null;
  if (newThing.test(sentence.text) || sentence.to - sentence.from > RENAMING_TOKENS) return null;
  const item = focusedIn(reading, run);
  if (!item || sentence.index - reading.focusSentence > 2 || item.kind === claim.kind || item.kind === 'pipe')
    return null;
  if (!isSameGroup(item.kind, claim.kind) || (claim.place !== null && claim.place.distance.feet !== item.at))
    return null;
  item.corrected.push({ field: 'kind', was: item.kind, from: sentence.from, to: sentence.to });
  item.kind = claim.kind;
  item.status = assertion.isHedged ? 'suspected' : 'present';
  for (const name of Object.keys(item.fields) as (keyof Item['fields'])[])
    if (!kindTakes(item.kind, name === 'clockTo' ? 'clock' : name)) item.fields[name] = null as never;
  fillFields(item, claim);
  mentionAgain(reading, item, sentence.from, sentence.to);
  return item;
}

/** "It's not a tee, it's a wye.": the thing stays where it is, and takes the other name. */
export function renameRejected(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  claims: readonly Claim[],
  item: Item,
): Item | null {
  const next = claims[claims.indexOf(claim) + 1];
  if (!next || next.source === 'weak' || next.place !== null || next.relative !== null) return null;
  if (next.kind === claim.kind || !isSameGroup(next.kind, claim.kind)) return null;
  const lead = textOf(reading.phrases.tokens, claim.to, next.from);
  if (
    !/^(but |no |well )*((it|that|this) ('s|is) |just |more of |actually |really |a |an |the |only )+$/.test(`${lead} `)
  )
    return null;
  item.corrected.push({ field: 'kind', was: item.kind, from: sentence.from, to: sentence.to });
  item.kind = next.kind;
  for (const name of Object.keys(item.fields) as (keyof Item['fields'])[])
    if (!kindTakes(item.kind, name === 'clockTo' ? 'clock' : name)) item.fields[name] = null as never;
  fillFields(item, next);
  next.isRejected = true;
  mentionAgain(reading, item, sentence.from, sentence.to);
  return item;
}
