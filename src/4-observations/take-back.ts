/** What is taken back: "scratch that", "that's not roots, that's paper", "no, that was only a shadow". */

import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import type { Assertion } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { mentionAgain, withdrawItem } from './items.ts';
import { isWithdrawing } from './opening-correction.ts';
import { currentRun, type Item, liveItems, own, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { isAboutOther, isOfCamera, listedItem, struckByName } from './taken-by-name.ts';

/** "No, wait, that was only a shadow": what was said before was a mistake. */
const mistaken =
  /^(no|nope|oh no|wait|hang on|hold on|well no)\b.*\b(that was|that 's|it was|it 's|those were) (just|only|nothing but)\b/;

const mistakenWithin =
  /\b(no|nope|nah|wait|hang on|hold on) (no |hang on |hold on |wait |sorry )?(that was|that 's|it was|it 's|those were|those are|they 're) (just|only|nothing but)\b/;

/** "That's just a shadow of the coupling, scratch that": of what was listed last, whatever else is named. */
const speaksOfLast =
  /^(no |oh |wait |okay |well |actually |sorry |um |uh )*(that|it|those|they|this|these|scratch|strike|forget)\b/;
/** "Scratch that last, no, keep it." */
const keeps = /\b(keep|leave) (it|that|that one|them|those)\b/;

/** A sentence of so few tokens gives a place and no more. */
const LONE_TOKENS = 4;

/** "Strike that. Twenty five.": the number is taken back and not the thing, for another follows that nothing else needs. */
export function givesAnew(reading: Reading, sentence: Sentence): boolean {
  const next = reading.sentences[sentence.index + 1];
  const cue = isWithdrawing(sentence);
  const last = reading.lastValue;
  if (!cue || !next || !last || !/^(scratch|strike|scrap|cancel|forget|disregard) (that|it)$/.test(cue.rule))
    return false;
  if (sentence.phrases.some(({ family }) => family === 'thing' || family === 'distance')) return false;
  if (next.to - next.from > LONE_TOKENS || next.phrases.some(({ family }) => family === 'thing')) return false;
  const isLast = last.item.at !== null && !last.item.isWithdrawn && sentence.index - last.sentence <= 2;
  const isForNext = /next|both/.test(reading.plan.lone.get(next.index) ?? '');
  return isLast && !isForNext && phrasesOf(next.phrases, 'distance').length === 1;
}

export function withdraw(reading: Reading, sentence: Sentence, wasGoingOut: boolean): boolean {
  const focusedNow = reading.focus.findLast((item) => !item.isWithdrawn);
  // The same within one sentence, where commas were printed for stops.
  const mistake = mistakenWithin.exec(sentence.text);
  const named = phrasesOf(sentence.phrases, 'thing')[0];
  if (
    mistake &&
    named &&
    mistake.index > 0 &&
    textOf(reading.phrases.tokens, sentence.from, named.to).length <= mistake.index
  ) {
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
    return true;
  }
  if (mistaken.test(sentence.text) && focusedNow && sentence.index - reading.focusSentence <= 1) {
    withdrawItem(focusedNow, `taken back: "${sentence.text}"`);
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
    return true;
  }
  const struck = struckByName(reading, sentence);
  const cue = isWithdrawing(sentence) ?? struck?.cue ?? null;
  const run = currentRun(reading);
  if (!run || givesAnew(reading, sentence)) return false;
  if (!cue) return retracts(reading, sentence, focusedNow);
  if (keeps.test(textOf(reading.phrases.tokens, cue.to, sentence.to))) {
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back, and kept' });
    return true;
  }
  if (isAddressed(sentence, cue) || (wasGoingOut && isOfCamera(sentence, cue))) return false;
  // "Thirty one was nothing. Forget that one." takes back one thing, not two.
  if (reading.withdrawnSentence === sentence.index - 1 && sentence.to - sentence.from <= 4) {
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
    return true;
  }
  const places = phrasesOf(sentence.phrases, 'distance');
  const things = phrasesOf(sentence.phrases, 'thing');
  const live = liveItems(reading, run.n);
  const after = places.find((place) => place.from >= cue.to);
  const thingsAfter = things.filter(
    (thing) => thing.from >= cue.to && !/\b(nothing|no|isn't|is not)\b/.test(sentence.text),
  );
  // "Blistered, scratch that, it's squashed": the sentence itself sorts out what stays.
  if (things.some((thing) => thing.to <= cue.from) && thingsAfter.some((thing) => !isOtherDenied(sentence, thing.from)))
    return false;
  // "Crack at thirty, scratch that, thirty three": the place is given anew, and the crack stays.
  if (
    after &&
    after.from - cue.to <= 2 &&
    thingsAfter.length === 0 &&
    places.some((place) => place.to <= cue.from) &&
    things.some((thing) => thing.to <= cue.from)
  )
    return false;
  let targets: Item[] = [];
  const listed = struck?.item ?? listedItem(reading, cue);
  if (listed !== undefined) targets = listed === null ? [] : [listed];
  else if (/\b(both|all)\b/.test(sentence.text))
    targets = reading.focus.length >= 2 ? reading.focus.filter((item) => !item.isWithdrawn) : live.slice(-2);
  else {
    const named = things
      .map((thing) =>
        live.findLast(
          (item) =>
            item.kind === thing.kind &&
            (places.length === 0 ||
              places.some((place) => item.at !== null && Math.abs(item.at - place.distance.feet) <= 0.3) ||
              after !== undefined),
        ),
      )
      .filter((item) => item !== undefined);
    const placed = places
      .map((place) => live.findLast((item) => item.at !== null && Math.abs(item.at - place.distance.feet) <= 0.3))
      .filter((item) => item !== undefined);
    const focused = reading.focus.filter((item) => !item.isWithdrawn && item.run === run.n).slice(-1);
    const namesOther = things.some(
      (thing) =>
        (thing.from >= cue.to - 1 || !speaksOfLast.test(sentence.text)) &&
        !live.some((item) => item.kind === thing.kind),
    );
    targets =
      namesOther && named.length === 0
        ? []
        : named.length > 0
          ? named.slice(-1)
          : placed.length > 0 && after === undefined
            ? placed.slice(-1)
            : !isAboutOther(sentence) && sentence.index - reading.focusSentence <= 4
              ? focused
              : [];
  }
  if (targets.length === 0) {
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'withdrawn' });
    // A thing raised and taken back in one sentence leaves nothing.
    return things.some((thing) => thing.to <= cue.from) || things.length === 0;
  }
  // "scratch that, forty seven": a new place instead of the old one.
  if (after && thingsAfter.length === 0 && !things.some((thing) => thing.to <= cue.from)) {
    const item = targets.at(-1)!;
    item.corrected.push({ field: 'at', was: item.at, from: sentence.from, to: sentence.to });
    for (const other of live)
      if (other !== item && other.sentence === item.sentence && other.at === item.at) other.at = after.distance.feet;
    item.at = after.distance.feet;
    mentionAgain(reading, item, sentence.from, sentence.to);
    return true;
  }
  // "Delete the roots" takes out what is listed, or else is no such order.
  if (
    / (the|those|my|them|about)( |$)/.test(cue.rule) &&
    !/^(scratch|strike|forget) the/.test(cue.rule) &&
    things.length === 0
  )
    return false;
  reading.withdrawnSentence = sentence.index;
  for (const item of targets) {
    withdrawItem(item, `taken back: "${sentence.text}"`);
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'withdrawn' });
  }
  return !thingsAfter.some((thing) => !targets.some((item) => item.kind === thing.kind));
}

/** "Never mind the dog", "forget it, I'm not climbing that": said of something else. */
function isAddressed(sentence: Sentence, cue: PhraseOf<'correction'>): boolean {
  if (!/^(never mind|nevermind|forget it|forget the|ignore it|ignore the|disregard the)/.test(cue.rule)) return false;
  const rest = sentence.text.slice(sentence.text.indexOf(cue.rule) + cue.rule.length).trim();
  if (rest === '' || sentence.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'distance'))
    return false;
  return !/^(that|it|this|those|these|about|false|my mistake|wrong|no|what i|just|scratch|please|sorry)\b/.test(rest);
}

const isOtherDenied = (sentence: Sentence, from: number): boolean =>
  sentence.phrases.some(
    (phrase) =>
      phrase.family === 'assertion' && phrase.cue.axis === 'denied' && phrase.to <= from && from - phrase.to <= 2,
  );

const artefact =
  '(shadow|reflection|glare|lens|hair|scratch|smudge|smear|bubble|bubbles|droplet|drop|stain|stains|staining|discoloration|discolouration|mark|seam|glue|joint|string|trick|skid|eyes|camera|spot|nothing(?! (?:too|very|real|really|major|serious|heavy|bad|terrible|severe|big|crazy|dramatic|to|more|but|like|compared|much)\\b))';
/** "It's only a shadow", "wait, that's my light", "no, I take that back", "my mistake, nothing there". */
const retraction = new RegExp(
  `^((no|nope|nah|oh|ah|wait|hm|hang on|hold on|my mistake|my bad|sorry|okay|actually|well|but|uh|um) )*((i take (that|it) back)|(nothing there|nothing at all|there 's nothing( there| here)?|it was nothing|that was nothing|that 's nothing|it 's nothing)( there| here| after all| at all| sorry)*|((that|it|those|they|this) )('s|is|was|are|were|'re) (just |only |really )*(nothing (but )?)?(a |an |my |the |some |your )*(little |small |water |dark |rust |own )*(${artefact}|(?<=(my|the|own) )lights?)( \\w+){0,4}|(just|only) (a |an |my |the |some )*(little |small |water |rust )*${artefact}( \\w+){0,4})$`,
);

/** Takes back what was just listed, where a sentence says no more than that it was nothing. */
function retracts(reading: Reading, sentence: Sentence, focused: Item | undefined): boolean {
  if (!focused || sentence.index - reading.focusSentence > 2 || sentence.isQuestion) return false;
  // "Is that gravel? No, just bubbles." answers, and takes back nothing listed.
  const before = reading.phrases.tokens[sentence.from - 1];
  if (before?.breakAfter === 'question') return false;
  if (sentence.phrases.some((phrase) => phrase.family === 'distance')) return false;
  if (sentence.phrases.some((phrase) => phrase.family === 'thing' && phrase.source !== 'weak')) return false;
  if (!retraction.test(sentence.text) || focused.kind === 'pipe') return false;
  // "It's glare, I know" is of the picture; "it's only glare" is of what was seen.
  if (!/^(no|nope|nah|wait|my mistake|my bad|oh no|actually)\b|\b(just|only|nothing|take|really)\b/.test(sentence.text))
    return false;
  withdrawItem(focused, `taken back: "${sentence.text}"`);
  reading.withdrawnSentence = sentence.index;
  own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
  return true;
}

const seemed =
  /\b(looked|looks|looking|look|seemed|seems|sounded) (like|to be)\b|\b(thought|figured|fancied|wondered|suspected|swore|believed) (i saw|i had|that|it|there|maybe|we had|this|about|for)\b|\bfor (a|half a|one) (second|sec|moment|minute|split second)\b|\b(might|may|could) look\b|\bi (almost|nearly|was going to|was gonna|was about to|took (that|it|this) for|had (a|an) [\w']+( [\w']+)? in mind|wanted to call)\b|\byou 'd think\b/;
const turnedOut = new RegExp(
  `\\b(turned|turns) out (to be )?(just |only )?(a |an |my |the |some |nothing)|(it|that|this|they|those) ('s|is|was|'re|are|were) (just|only|nothing but|actually) |but (it|that|they) ('s|is|was|'re|are) (just |only )*(a |an |my |the )?(little |small )*${artefact}|but (no|nope|not|it isn't|it wasn't|it ain't|it 's not|i don't|nothing)\\b|^(at [\\w ]{1,24})?(is|are|was|were) (actually|really|just|only|nothing but)\\b|(it|that|they) (isn't|wasn't|ain't|aren't)$|(it|that|this) ('s|is|was) (a|an|the|my) (little |small |old )?${artefact}|so (no|never mind|scratch|forget)\\b`,
);

/** "Looked like a hole, it's only a stain", "the hole at twelve turned out to be a shadow". */
export function isDismissed(sentence: Sentence, claim: Claim, claims: readonly Claim[], after: string): boolean {
  if (claims.at(-1) !== claim || !turnedOut.test(after)) return false;
  return seemed.test(sentence.text) || /\b(turned|turns) out\b/.test(after);
}

/** "That looks like another break, but it's the joint", "I almost wrote down a hole": what was listed before is not meant. */
export const speaksOfAnother = ({ text }: Sentence): boolean =>
  /\b(another|other|second|too|also|as well|again|almost|nearly|for a (second|moment|sec|minute)|(was|were) (about|going|gonna)|you 'd think|(might|could|may) look|over (there|here)|up ahead|this one|that one there)\b/.test(
    text,
  );

/** "That looks like other break but no": what is taken back was never listed. */
const looksLikeAnother = /\b(looks?|looked|thought|seems?|seemed)\b.{0,24} (another|other|a second|more)\b/;

/** "That's not roots, that's paper": takes back what was just claimed. */
export function rejects(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): Item | null {
  if (!assertion.isDenied || (claim.place === null && looksLikeAnother.test(sentence.text))) return null;
  if (!/\b(not|isn't|ain't|aren't|wasn't|weren't|no)\b/.test(sentence.text)) return null;
  const isRecent = sentence.index - reading.focusSentence <= 2;
  const focused = reading.focus.findLast((item) => item.kind === claim.kind && !item.isWithdrawn);
  const here = reading.focus.findLast((item) => !item.isWithdrawn)?.at ?? null;
  const beside =
    here === null
      ? undefined
      : liveItems(reading, currentRun(reading)?.n ?? 1).findLast(
          (item) => item.kind === claim.kind && item.at === here && sentence.index - item.sentence <= 6,
        );
  if (!focused && beside && isRecent && claim.place === null && !/^(no|not) /.test(sentence.text)) return beside;
  if (focused && isRecent && (claim.place === null || claim.place.distance.feet === focused.at)) {
    const saysThisOne =
      /\b(that 's not|that 's no|it 's not|it 's no|it isn't|that isn't|those aren't|those are not|they 're not|not a|not an|not roots|wasn't|isn't a|no \w+ there|is not|weren't)\b/.test(
        sentence.text,
      );
    return saysThisOne || focused.status === 'suspected' ? focused : null;
  }
  const run = currentRun(reading);
  if (run && run.way === 'back' && /\b(so it 's not|it 's not a|that 's not a|isn't a|not a)\b/.test(sentence.text))
    return (
      liveItems(reading, run.n).findLast((item) => item.kind === claim.kind && item.status === 'suspected') ?? null
    );
  return null;
}

const recalls = /\b(i said|i called (it|that)|i had (it|that)( down)?( as)?|i told you)( it was| it 's)?( a| an)?$/;
const renames = /\b(it 's|it is|that 's|that is|should be|should have been|really|actually|meant)\b/;

/** "I said tee, it's a wye": the thing already listed is the other one named in the same breath. */
export function isNamedAnew(reading: Reading, sentence: Sentence, claim: Claim, claims: readonly Claim[]): boolean {
  const { tokens } = reading.phrases;
  const next = claims[claims.indexOf(claim) + 1];
  return (
    next !== undefined &&
    next.kind !== claim.kind &&
    recalls.test(textOf(tokens, Math.max(sentence.from, claim.from - 6), claim.from)) &&
    renames.test(textOf(tokens, claim.to, next.from))
  );
}
