/** What each sentence is in the order of places and things: a thing without a place, a place without a thing, or both at once. */
import type { KindName } from '../../shared/vocabulary/kinds/index.ts';
import type { Phrases } from '../3-phrases/find-phrases.ts';
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import { assertClaim } from './assert-claim.ts';
import { kindTakes } from './claim.ts';
import { endKinds, fittingKinds, placelessKinds } from './kind-roles.ts';
import { openingCorrection } from './opening-correction.ts';
import { spread } from './place-claim.ts';
import { readClaims } from './read-claims.ts';
import { findReplacements } from './read-corrections.ts';
import { isAnotherAlone } from './read-ellipsis.ts';
import type { Sentence } from './sentence.ts';
import { endTold } from './tell-ends.ts';

/** What a sentence is in the order of places and things. */
export type Mark =
  /** Names a thing and gives no place. */
  | {
      readonly sort: 'thing';
      readonly sentence: Sentence;
      readonly isWanting: boolean;
      readonly kinds: readonly KindName[];
      /** Whether the sentence after it, in the same breath, names something with a place. */
      readonly isToldNext: boolean;
    }
  /** Gives a place and names nothing. */
  | {
      readonly sort: 'place';
      readonly sentence: Sentence;
      readonly place: PhraseOf<'distance'>;
      readonly isLone: boolean;
      /** Whether it may as well be where something named before ends. */
      readonly mayEnd: boolean;
      /** Whether its words say that it is of what was just named. */
      readonly looksBack: boolean;
      /** Whether something was said in the same breath that may be what it is of, though it was not understood. */
      readonly isBesideUnread: boolean;
    }
  /** Names a thing with its place, or ends a stretch. */
  | {
      readonly sort: 'whole';
      readonly sentence: Sentence;
      /** The place it opens with or holds alone, which may be of what was named in the same breath before it. */
      readonly lead: PhraseOf<'distance'> | null;
    };

/** "That's at sixteen", "it starts at nine", "the counter says forty", "nine, for the record": about what was just named. */
const leadsBack =
  /\b((that|that one|those|it|they|this|these|which) ('s|is|are|was|were|starts?|begins?|began|started|would be|runs?|goes)|counter|footage|number|reads|call it|there we go)( \S+){0,3}$/;
const followsBack = /^(for the record|on the counter|there|for that( one)?)\b/;
/** "They come in at nine o'clock, twenty seven feet", "from thirty to forty it's on the floor": said of what was named. */
const ofLast =
  /\b(it|they|that one|those|these|this one) ('s|is|are|'re|was|were|comes?|came|starts?|begins?|sits?|lies|runs?|shows?|looks?|has|have|hangs?|fills?|takes?|sticks?)\b/;
const ofCounter =
  /\b(it|this|that) (says|reads|is|'s) (at |about |now )*\S+( \S+)?$|\b(it|they|this|that) (goes|turns|changes|drops|opens|narrows|widens|gets|becomes|joins)\b/;

/** "Feels like eight. It's nine.": "it" is the counter where the sentence before held nothing but a number. */
const isNumberAnew = (before: Sentence | undefined): boolean =>
  before !== undefined &&
  before.to - before.from <= SHORT_TOKENS &&
  phrasesOf(before.phrases, 'distance').length > 0 &&
  !before.phrases.some(({ family }) => family === 'thing' || family === 'material');

function looksBack(
  { sentence, place }: { sentence: Sentence; place: PhraseOf<'distance'> },
  phrases: Phrases,
): boolean {
  const saidBefore = textOf(phrases.tokens, sentence.from, Math.max(sentence.from, place.from));
  return (
    leadsBack.test(saidBefore) ||
    followsBack.test(textOf(phrases.tokens, place.to, sentence.to)) ||
    (ofLast.test(saidBefore) && !ofCounter.test(sentence.text)) ||
    (place.distance.toFeet !== null && saidBefore.split(' ').length <= 1 && ofLast.test(sentence.text))
  );
}

/** "Same place.": what was just named stands where the thing before stood. */
const isSamePlace = (sentence: Sentence | undefined): boolean =>
  sentence !== undefined &&
  sentence.to - sentence.from <= 5 &&
  phrasesOf(sentence.phrases, 'relative').some((phrase) => phrase.relative.shape === 'same');
const tellsChange =
  /\b(now|from here|after this|after that|becomes?|turns?|changes?|done|ends?|begins?|starts?|gives way|to)\b/;
const SHORT_TOKENS = 8;

/** "And that's the main.": there is one only, and this is it. */
const isMetHere = (sentence: Sentence, kind: KindName): boolean =>
  endKinds[kind] !== undefined &&
  /\b(that 's|this is|here 's|there 's|^and|^at|^then) (the|your|our|my)\b/.test(sentence.text);

/** "It wasn't eighteen, it was seventeen": of several numbers in a sentence those that were not taken back, each once. */
function standing(
  places: readonly PhraseOf<'distance'>[],
  sentence: Sentence,
  tokens: Phrases['tokens'],
): readonly PhraseOf<'distance'>[] {
  if (places.length < 2) return places;
  const old = findReplacements(sentence, tokens).map((pair) => pair.old);
  const left = places.filter(
    (place) => !old.some((phrase) => phrase.family === 'distance' && phrase.distance.feet === place.distance.feet),
  );
  return left.length > 0
    ? left.filter((place, index) => !left.slice(index + 1).some((other) => other.distance.feet === place.distance.feet))
    : places;
}

/** "The hub is cracked": the hub is known, and not the crack. */
const isPredicate = /\b(is|'s|are|'re|was|looks|gets|got)( \S+)?$/;

/** Whether a sentence only gives the number anew that one just before it gave. */
function correctsPlace(sentences: readonly Sentence[], sentence: Sentence, { tokens }: Phrases): boolean {
  const opening = openingCorrection(sentence, tokens);
  const isPlain = opening === 'strong' || (opening === 'weak' && !/^(well|or|say|actually)\b/.test(sentence.text));
  return (
    isPlain &&
    sentences
      .slice(Math.max(0, sentence.index - 2), sentence.index)
      .some((before) => phrasesOf(before.phrases, 'distance').length > 0)
  );
}

export function markOf(
  sentences: readonly Sentence[],
  sentence: Sentence,
  phrases: Phrases,
  isFirst: boolean,
  breaths: readonly number[],
  seen: ReadonlySet<KindName>,
): Mark | null {
  const { tokens } = phrases;
  const places = phrasesOf(sentence.phrases, 'distance');
  const hasThing = sentence.phrases.some(
    (phrase) =>
      phrase.family === 'thing' || phrase.family === 'material' || (phrase.family === 'angle' && phrase.isNoun),
  );
  if (!hasThing) {
    if (isAnotherAlone(sentence.text))
      return { sort: 'thing', sentence, isWanting: true, kinds: [], isToldNext: false };
    const goesOn = phrasesOf(sentence.phrases, 'relative').some((phrase) => phrase.relative.shape === 'offset');
    if (places.length === 0) return goesOn ? { sort: 'whole', sentence, lead: null } : null;
    const stretch = places.find((place) => place.distance.toFeet !== null);
    const said = standing(places, sentence, tokens);
    const isTalk = said.length > 1 && stretch === undefined && sentence.to - sentence.from > SHORT_TOKENS;
    // "Fifteen. Make it fifteen and a half.": one place said twice. "Six. Tee. Make that seven.": it may be the tee's.
    const isAnew = !isFirst && correctsPlace(sentences, sentence, phrases);
    const before = sentences[sentence.index - 1];
    if (
      isAnew &&
      (!before?.phrases.some(({ family }) => family === 'thing') || phrasesOf(before.phrases, 'distance')[0])
    )
      return null;
    const end = endTold(sentences, sentence);
    if (isTalk || (end === 'plain' && !(stretch && opensWith(sentence, stretch))))
      return { sort: 'whole', sentence, lead: null };
    const place = stretch ?? said.at(-1)!;
    return {
      sort: 'place',
      sentence,
      place,
      isLone: said.length < places.length || isLone(sentence, place, phrases),
      mayEnd: end === 'beside' || isAnew,
      looksBack: looksBack({ sentence, place }, phrases) && !isNumberAnew(before),
      isBesideUnread: isBesideUnread(sentences, sentence, breaths),
    };
  }
  // "It's under water from here to 25": where it begins was said before, or is said next.
  const isEndOnly = places.every(({ distance }) => distance.isEnd === true && distance.toFeet === null);
  if (places.length > 0 && !(isEndOnly && namesStretch(sentence))) {
    const isOfOthers = sentence.phrases.some(({ family }) => family === 'thing');
    const isLead = breaths[sentence.index] === breaths[sentence.index - 1] && opensWith(sentence, places[0]!);
    return { sort: 'whole', sentence, lead: isLead && !isOfOthers ? places[0]! : null };
  }
  const { claims } = readClaims(sentence, tokens);
  const open = claims.filter((claim) => {
    if (placelessKinds.has(claim.kind) || claim.relative !== null) return false;
    if (claim.source === 'weak' && sentence.to - sentence.from > SHORT_TOKENS) return false;
    const assertion = assertClaim(claim, claims, sentence, tokens);
    const lead = textOf(tokens, Math.max(sentence.from, claim.from - 3), claim.from);
    const isKnown =
      assertion.isDefinite &&
      (seen.has(claim.kind) || !fittingKinds.has(claim.kind)) &&
      !isMetHere(sentence, claim.kind) &&
      (!isPredicate.test(lead) || /\bthere\b/.test(sentence.text));
    return !assertion.isDenied && assertion.aside === null && !isKnown;
  });
  const isChange =
    !isFirst &&
    claims.length === 0 &&
    phrasesOf(sentence.phrases, 'material').length > 0 &&
    (sentence.to - sentence.from <= SHORT_TOKENS / 2 || tellsChange.test(sentence.text));
  if (
    sentence.isQuestion ||
    spread.test(sentence.text) ||
    isSamePlace(sentences[sentence.index + 1]) ||
    (open.length === 0 && !isChange)
  )
    return null;
  const kinds = open.map((claim) => claim.kind);
  const isWanting = open.some((claim) => claim.source === 'word' || kindTakes(claim.kind, 'degree'));
  return { sort: 'thing', sentence, isWanting, kinds, isToldNext: isToldNext(sentences, sentence, breaths) };
}

/** Whether all that a sentence names has a length, so that an ending is none of its places. */
function namesStretch({ phrases }: Sentence): boolean {
  const kinds = phrasesOf(phrases, 'thing').map(({ kind }) => kind);
  return kinds.length > 0 && kinds.every((kind) => kind !== 'pipe' && kindTakes(kind, 'to'));
}

/** So many small words may stand before the place a sentence opens with. */
const OPENING_TOKENS = 2;
const opensWith = (sentence: Sentence, place: PhraseOf<'distance'>): boolean =>
  place.from - sentence.from <= OPENING_TOKENS;

/** "Something's in here. A spoon, at twelve feet." */
function isToldNext(sentences: readonly Sentence[], sentence: Sentence, breaths: readonly number[]): boolean {
  const next = sentences[sentence.index + 1];
  return (
    next !== undefined &&
    breaths[next.index] === breaths[sentence.index] &&
    next.phrases.some(({ family }) => family === 'thing') &&
    phrasesOf(next.phrases, 'distance').length > 0
  );
}

/** A sentence of fewer tokens than this says nothing of its own. */
const STATEMENT_TOKENS = 3;

/** "Something dripping here. Twenty.": words in the same breath as a place that were understood as nothing. */
function isBesideUnread(sentences: readonly Sentence[], sentence: Sentence, breaths: readonly number[]): boolean {
  return [sentences[sentence.index - 1], sentences[sentence.index + 1]].some(
    (beside) =>
      beside !== undefined &&
      breaths[beside.index] !== undefined &&
      breaths[beside.index] === breaths[sentence.index] &&
      beside.to - beside.from >= STATEMENT_TOKENS &&
      !beside.phrases.some(({ family }) => family === 'thing' || family === 'distance'),
  );
}

const smallWords =
  /^(um|uh|okay|so|that|'s|at|about|it|is|was|be|yeah|yep|got|and|there|we|are|'re|now|the|a|an|on|in|i|'m|for|of|record|here|this|say|call|reads|says|number|counter|location|footage|station|feet|foot|right|just|or|even|then|well|like|ladies|gentlemen|sir|please|exactly|almost|nearly|starts|start|begins|began|started|runs|from|to|out|up|joint|mark)$/;
/** Free words a sentence may hold beside its place and still be nothing but a place. */
const FREE_WORDS = 1;

/** Whether a sentence gives a place, and perhaps a size or a side, and says nothing else. */
function isLone(sentence: Sentence, place: PhraseOf<'distance'>, phrases: Phrases): boolean {
  const { tokens } = phrases;
  if (looksBack({ sentence, place }, phrases)) return true;
  let free = 0;
  for (let at = sentence.from; at < sentence.to; at += 1) {
    const isRead = sentence.phrases.some(
      (phrase) =>
        at >= phrase.from &&
        at < phrase.to &&
        /^(distance|position|clock|degree|share|inches|correction)$/.test(phrase.family),
    );
    if (!isRead && !smallWords.test(tokens[at]?.text ?? '')) free += 1;
  }
  return free <= FREE_WORDS;
}
