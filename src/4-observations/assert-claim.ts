/**
 * Decides what is claimed about a thing: there, not there, doubtful, or not about this pipe now.
 * Scope follows the measured study: a cue reaches about six tokens, and stops at a comma (but not inside a list), a
 * distance, "but", or the opening of a new statement.
 */
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { REACH_TOKENS } from '../3-phrases/assertion/lexicon.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { type Claim, kindTakes } from './claim.ts';
import { type Cue, closesDenial, definites, reachesBackward, reachesForward, standsBefore } from './cue-reach.ts';
import { hedgesSomethingElse, isOfMeasure, isSaidAhead, saysMore } from './doubt-scope.ts';
import { fittingKinds, remedyKinds } from './kind-roles.ts';
import type { Sentence } from './sentence.ts';
import { isNoDenial, speaksGenerally } from './speaks-generally.ts';

export interface Assertion {
  isDenied: boolean;
  /** "That's not a crack": what is denied is this one, not every one in the run. */
  isOfThisOne: boolean;
  isHedged: boolean;
  /** The hedge stands after the thing or far from it: its scope is not certain. */
  isHedgeLoose: boolean;
  isSure: boolean;
  /** "the crack", "that one": something already known. */
  isDefinite: boolean;
  /** "there's a", "here's", "I've got": something pointed at now. */
  isPointedAt: boolean;
  /** Why the claim is not about this pipe now, or null. */
  aside: 'teaching' | 'history' | 'plan' | 'chat' | null;
  /** The cue words behind the decision, for the explanation. */
  because: string[];
}

const groupOf = new Map<string, string>(kinds.map((kind) => [kind.name, kind.group]));
/** "That's not a crack": said of the thing at hand. */
function isOfThisOne(cue: Cue, sentence: Sentence, tokens: readonly Token[]): boolean {
  const said = textOf(tokens, Math.max(sentence.from, cue.from - 3), cue.to);
  return /\b(that|it|this|they|those|these|them)( (joint|one|line|mark))?( (is|'s|are|'re|was|were))?( (not|isn't|ain't|aren't|wasn't|weren't|no|neither))?( (a|an|any|one|really))*$/.test(
    said,
  );
}

const pointing =
  /(^| )(there 's|there is|there are|there was|there go|there goes|here 's|here is|here are|here comes|here come|we 've got|we have|we got|i 've got|i got|i have|i see|i 'm seeing|we see|you can see|you see|see the|see that|see this|see how|that 's|this is|it 's|that is|it is|looks like|found|find|comes|hit|hitting|spot|spotted|picking up|got)( |$)/;
/** Of these, what can only be said of what is on the screen. */
const pointingNow =
  /(^| )(there 's|there is|there are|there go|there goes|here 's|here is|here are|here comes|here come|we 've got|i 've got|i see|i 'm seeing|we see|you can see|you see|see the|see that|see this|see how|that 's|this is|it 's|it is|looks like|picking up)( |$)/;
/** "If there are roots", "whether it's a crack": nothing is seen. */
const supposes =
  /(^| )(if|unless|whether|in case|when you|once you|wherever|hopefully|hoping) (?!you look|you 'll look|i 'm |i am |i miss|you ask|anything|you want|you like)/;
/** "Not certain whether that is a crack": doubted, but seen. */
const wonders =
  /\b(not|can't|don't|couldn't|wonder|wondering|hard to|tell|say|know|sure|certain|question)\b.*\b(if|whether)\b/;
/** "The main ought to be around sixty": looked for, not met. */
const expected =
  /^('s |is |are )?(ought to|oughta|should|supposed to|meant to|gonna|going to|'ll|will|would|'d|expected to|has got to|gotta|might) (be|come|show|turn|lie|sit)( up| in)? (at|about|around|near|somewhere|roughly|another|close|right|like|maybe|in|by|past)\b/;
/** "At forty feet we should hit the main." */
const hoped =
  /\b(should|ought to|oughta|expect to|hope to|hoping to) (be (at|hitting|seeing|coming|getting)|hit|see|find|reach|meet|come|get|run into)\b/;
/** Said of what is to be put in, before it is named. */
const wanted =
  /^(you 'll (want|need)|you 're going to want|i 'd|i would|should (get|have)|needs? a|ought to|want to|recommend|recommendation|have (somebody|someone|them)|get a|get (that|it|them|those))/;
const ownGear = /\b(camera|lens|cable|reel|screen)\b/;
const reported =
  /^(disclosure|the previous|previous|prior|earlier report|listing|report|plans?|drawings?|maps?|survey|blueprints?|sketch|as|gis|according|going by|on the|i (can|could|hear|smell)|we (can|could|hear|smell))\b|\b(said|says|told|tells|swears|swore|insists|insisted|claims|claim|wrote|promised|promises)\b/;
const isSeenNow = /\b(there 's|here 's|there is|here is|i see|i 've got|we 've got|sure enough|and yes)\b/;

const longAgo =
  /^(yesterday|last|this morning|i did|the one i did|years|months|weeks|my|told|seller|owner|he had|she had|they had|snaked)/;

const nothingDenied = { wasDenied: false, isListedAbsent: false };

export function assertClaim(
  claim: Claim,
  claims: readonly Claim[],
  sentence: Sentence,
  tokens: readonly Token[],
  before: { readonly wasDenied: boolean; readonly isListedAbsent: boolean } = nothingDenied,
): Assertion {
  const cues = sentence.phrases.filter((phrase) => phrase.family === 'assertion');
  const because: string[] = [];
  const isLimit = groupOf.get(claim.kind) === 'limit';
  const isInside = (cue: Cue): boolean => claim.things.some((thing) => cue.from < thing.to && cue.to > thing.from);
  // "A rag, or a mop head, no, definitely a rag": named again after the "no", it stands.
  const first = claim.things[0];
  const last = claim.things.at(-1);
  const isOvertaken = (cue: Cue): boolean =>
    first !== undefined &&
    last !== undefined &&
    last !== first &&
    cue.from >= first.to &&
    cue.to <= last.from &&
    /^(no|nope|nah)$/.test(cue.rule);
  const outside = cues.filter((cue) => !isInside(cue) && !isOvertaken(cue));
  // "that joint might be open": the hedge stands inside the description.
  const hedgedInside =
    claim.source === 'sign'
      ? cues.filter((cue) => cue.cue.axis === 'hedged' && cue.cue.reaches === 'forward' && isInside(cue))
      : [];
  const hits = (axis: Cue['cue']['axis']): Cue[] => outside.filter((cue) => cue.cue.axis === axis);
  const denying = isLimit
    ? []
    : hits('denied').filter((cue) =>
        cue.cue.reaches === 'forward'
          ? reachesForward(cue, claim, claims, sentence, tokens, true) ||
            (closesDenial(cue, claims, sentence, tokens) && standsBefore(cue, claim, claims, tokens))
          : reachesBackward(cue, claim, claims, sentence, tokens) ||
            (/ (any|one)$/.test(cue.rule) && reachesForward(cue, claim, claims, sentence, tokens, true)),
      );
  // "There isn't a joint without roots": twice denied is claimed.
  const isTwice = denying.some(
    (cue) =>
      cue.rule === 'without' &&
      isDeniedBefore(
        cue,
        cues.filter((other) => other.rule !== 'without'),
      ),
  );
  const isFreeOf = tokens[claim.to]?.text === 'free' && tokens[claim.to - 1]?.breakAfter === 'none';
  const hedging = hits('hedged').filter(
    (cue) =>
      !hedgesSomethingElse(cue, claim, sentence, tokens) &&
      (cue.cue.reaches === 'forward'
        ? reachesForward(cue, claim, claims, sentence, tokens, false) ||
          (saysMore.test(cue.rule) &&
            !isOfMeasure(cue, sentence) &&
            reachesBackward(cue, claim, claims, sentence, tokens))
        : reachesBackward(cue, claim, claims, sentence, tokens) || isSaidAhead(cue, claim, claims, tokens)),
  );
  const sure = hits('sure').filter(
    (cue) =>
      reachesForward(cue, claim, claims, sentence, tokens, false) ||
      (cue.from >= claim.to && cue.from - claim.to <= REACH_TOKENS),
  );
  for (const cue of [...denying, ...hedging, ...sure]) because.push(`${cue.cue.axis}: "${cue.rule}"`);

  const lead = tokens.slice(Math.max(sentence.from, claim.from - 4), claim.from).map((token) => token.text);
  const clause = clauseBefore(tokens, sentence, claim);
  const isOneStatement = (cue: Cue): boolean =>
    !sentence.phrases.some(
      (phrase) => phrase.family === 'distance' && phrase.from >= cue.to && phrase.to <= claim.from,
    );
  const isSupposedHere = supposes.test(` ${clause} `) && !wonders.test(clause);
  const isPointedAt = pointing.test(` ${clause} `) && !isSupposedHere;
  // What was found elsewhere or before was pointed at there and then.
  const isPointedNow = isPointedAt && pointingNow.test(` ${clause} `);
  const nearest = lead.findLast((word) => definites.test(word) || /^(a|an|another|some|more|no|any)$/.test(word));
  const isDefinite =
    claim.source !== 'sign' &&
    nearest !== undefined &&
    definites.test(nearest) &&
    !/ (there|here) 's (the|your|our)/.test(` ${clause}`);

  const hasPlace = claim.place !== null || (claim.relative !== null && claim.relative.relative.shape !== 'same');
  let aside: Assertion['aside'] = null;
  const axis = (name: Cue['cue']['axis']): Cue | undefined =>
    cues.find((cue) => cue.cue.axis === name && isSameStatement(cue, claim, tokens));
  const past = axis('past');
  const general = isLimit ? undefined : axis('general');
  const planned = axis('planned');
  const other = axis('elsewhere');
  // "My camera won't go": where the survey ends is told of the camera.
  const elsewhere = isLimit && other && ownGear.test(other.rule) ? undefined : other;
  const isHere = / (here|this one|right there|now|there 's|here 's)( |$)/.test(` ${clause} `);
  const isLesson = speaksGenerally(claim, sentence, tokens);
  if (isLesson && !hasPlace) aside = 'teaching';
  else if (hasPlace) {
    const isGeneralNear =
      general !== undefined &&
      (general.from < claim.from || general.from - claim.to <= 2) &&
      Math.min(Math.abs(claim.from - general.to), Math.abs(general.from - claim.to)) <= REACH_TOKENS;
    // "The disclosure says there was a collapse at thirty": told by others, however it is pointed at.
    const isTold = past !== undefined && past.to <= claim.from && reported.test(past.rule) && !isSeenNow.test(clause);
    const isHoped = hoped.test(clause) && !isSeenNow.test(clause);
    if (isHoped || expected.test(textOf(tokens, claim.to, Math.min(sentence.to, claim.to + 8)))) aside = 'plan';
    else if (isSupposedHere && !isSeenNow.test(clause)) aside = 'teaching';
    else if (isGeneralNear && !isPointedAt) aside = 'teaching';
    else if (isShown(claim, sentence, tokens)) aside = null;
    else if (isTold) aside = 'history';
    else if (past && !isPointedNow && ((past.to <= claim.from && isOneStatement(past)) || longAgo.test(past.rule)))
      aside = 'history';
    else if (elsewhere && !isPointedNow && !isOwner(elsewhere, claim, tokens)) aside = 'chat';
    else if (planned && planned.to <= claim.from && !isPointedAt && remedyKinds.has(claim.kind)) aside = 'plan';
    else if (
      planned &&
      planned.to <= claim.from &&
      !isPointedAt &&
      fittingKinds.has(claim.kind) &&
      wanted.test(planned.rule)
    )
      aside = 'plan';
  } else {
    if (isSupposedHere && !isSeenNow.test(clause)) aside = 'teaching';
    else if (past) aside = 'history';
    else if (elsewhere) aside = 'chat';
    else if (planned && !isHere) aside = 'plan';
    else if (general && !isHere) aside = 'teaching';
    const cue = past ?? elsewhere ?? planned ?? general;
    if (aside && cue) because.push(`${aside}: "${cue.rule}"`);
  }
  // "Fifty one had a crack": a number that had something is a house.
  if (aside === null && hasPlace && isHouse(claim, sentence, tokens)) aside = 'chat';
  const supposed = past ?? planned ?? general;
  const isSupposed =
    !hasPlace && aside !== null && (isLesson || (supposed !== undefined && isNoDenial.test(supposed.rule)));
  const followsDenial = /^(or|nor) /.test(sentence.text) && claim === claims[0] && before.wasDenied;
  const isListed = before.isListedAbsent && !hasPlace && !isPointedAt;
  return {
    isDenied: !isSupposed && ((denying.length > 0 && !isTwice) || isFreeOf || followsDenial || isListed),
    isOfThisOne: denying.length > 0 && denying.every((cue) => isOfThisOne(cue, sentence, tokens)),
    isHedged: (hedging.length > 0 || hedgedInside.length > 0) && sure.length === 0,
    isHedgeLoose: hedging.length > 0 && hedgedInside.length === 0 && hedging.every((cue) => cue.from >= claim.to),
    isSure: sure.length > 0,
    isDefinite,
    isPointedAt,
    aside,
    because,
  };
}

/** "You asked about roots, well, there they are at fifteen": what was asked for is seen. */
const shown =
  /(^|\b(well|and|yes|yeah|yep|so|sir|ma'am|now|okay) )(there|here) ((they|it|he|she) (are|is|'s)|you (are|go)|we (are|go)|they 're|it 's)\b/;
const isShown = (claim: Claim, sentence: Sentence, tokens: readonly Token[]): boolean =>
  shown.test(textOf(tokens, claim.things[0]?.to ?? claim.to, Math.min(sentence.to, claim.to + 12)));
/** "The seller said roots, and yep, roots at nineteen": what was told is seen now. */
const confirms =
  /\b(yep|yup|sure enough|lo and behold|guess what|indeed|what do you know|wouldn't you know|(there|here) (it is|they are|he is|she is|we are|you go|we go))\b/;

const isHouse = (claim: Claim, sentence: Sentence, tokens: readonly Token[]): boolean =>
  claim.place?.distance.frame === 'bare' &&
  claim.place.from - sentence.from <= 1 &&
  /^(had|did|hadn't)$/.test(tokens[claim.place.to]?.text ?? '');

const isDeniedBefore = (cue: Cue, cues: readonly Cue[]): boolean =>
  cues.some((other) => other.cue.axis === 'denied' && other.to <= cue.from && cue.from - other.to <= 4);

/** "A line at 31, which I'd bet is the neighbor's": whose it is, not where. */
const isOwner = (cue: Cue, claim: Claim, tokens: readonly Token[]): boolean =>
  // "The neighbor's tap is sticking in at 24".
  (cue.to <= claim.from && tokens[cue.to]?.text === "'s" && claim.from - cue.to <= 3) ||
  (cue.from >= claim.to &&
    kindTakes(claim.kind, 'serves') &&
    /\b(is|'s|be|for|from|serves|to|goes)( the| his| her| a)?$/.test(textOf(tokens, claim.to, cue.from)));

/** A cue for the whole statement reaches this far, in tokens, where no stop was printed. */
const STATEMENT_TOKENS = 14;

function isSameStatement(cue: Cue, claim: Claim, tokens: readonly Token[]): boolean {
  const from = Math.min(cue.to, claim.to);
  const to = Math.max(cue.from, claim.from);
  if (cue.to <= claim.from && confirms.test(textOf(tokens, cue.to, claim.things.at(-1)?.from ?? claim.from)))
    return false;
  return to - from <= STATEMENT_TOKENS && !tokens.slice(from, to).some((token) => /^(but|so|anyway)$/.test(token.text));
}

/** The words of the clause up to the thing, back to the last comma or the start of the sentence. */
function clauseBefore(tokens: readonly Token[], sentence: Sentence, claim: Claim): string {
  let from = claim.from;
  while (from > sentence.from && tokens[from - 1]?.breakAfter === 'none' && claim.from - from < 12) from -= 1;
  // A thing named twice ends where it was named first.
  return textOf(tokens, from, claim.things[0]?.to ?? claim.to);
}
