/** The things a sentence names: each once, without those that only say where another is. */
import { type Phrase, type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { type Claim, newClaim } from './claim.ts';
import { fittingKinds, sidewaysKinds, weakNeeds, yieldingKinds, yieldsTo } from './kind-roles.ts';
import { isOutgrown } from './outgrow.ts';
import type { Sentence } from './sentence.ts';
import { isShareOfOther } from './tell-share.ts';

export const isBreakBetween = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).some((token) => token.breakAfter !== 'none');
export const tokenGap = (a: { from: number; to: number }, b: { from: number; to: number }): number =>
  a.to <= b.from ? b.from - a.to : b.to <= a.from ? a.from - b.to : 0;

export function namedThings(sentence: Sentence, tokens: readonly Token[]): Claim[] {
  const claims: Claim[] = [];
  const anchors = anchorThings(sentence);
  for (const phrase of sentence.phrases) {
    if (anchors.has(phrase)) continue;
    if (phrase.family === 'thing') {
      const claim: Claim = {
        ...newClaim(phrase.kind, phrase.rule, phrase),
        source: phrase.source,
        respelled: phrase.respelled ? [phrase.respelled] : [],
        isDoubtful: phrase.isDoubtful ?? false,
      };
      // "it jogs right at 44": the side is part of the description, whatever follows.
      const side = phrase.source === 'sign' ? tokens[phrase.to - 1]?.text : undefined;
      if ((side === 'left' || side === 'right') && sidewaysKinds.has(phrase.kind)) claim.fields.position = side;
      claims.push(claim);
    } else if (
      phrase.family === 'angle' &&
      phrase.isNoun &&
      !sentence.phrases.some((other) => other.family === 'thing' && isFittingBeside(other, phrase, sentence, tokens))
    ) {
      claims.push({ ...newClaim('bend', phrase.rule, phrase), count: phrase.count });
    }
  }
  const kept = claims.filter(
    (claim) =>
      !isLikened(claim, sentence, tokens) &&
      !givesWay(claim, claims, sentence, tokens) &&
      !isOutgrown(claim, claims, sentence, tokens) &&
      !isShareOfOther(claim, claims, sentence),
  );
  return mergeSameThings(withoutLandmarks(kept, sentence, tokens), sentence, tokens);
}

const likened =
  /(?<!\b(?:look|looks|looked|looking|seems|sounds) )\b(?:like|as)(?: (?:a|an|the|my|your|some|one of those|looking \w+ (?:a|the)))?(?: (?!is\b|'s\b)\w+)?$|\bsize of (?:a|an|my|your|the|his|her)(?: \w+)?$|\b(?:could|couldn't|can|can't|cannot)(?: have)?(?: almost| just| nearly)? (?:get|got|fit|put|stick|drop|pass|push|slide|read|lose|roll|throw|park)(?: (?:a|an|my|your|the))?(?: \w+)?$/;
const LIKENED_TOKENS = 5;

/** "Clean as a whistle", "hanging there like a sock", "you couldn't fit a pencil in it": an everyday thing that is not in the pipe. */
function isLikened(claim: Claim, sentence: Sentence, tokens: readonly Token[]): boolean {
  const isEveryday = claim.source === 'weak' || weakNeeds.get(claim.kind) === 'pointing';
  if (!isEveryday || claim.source === 'sign') return false;
  let from = claim.from;
  while (from > sentence.from && claim.from - from < LIKENED_TOKENS && tokens[from - 1]?.breakAfter === 'none')
    from -= 1;
  return likened.test(textOf(tokens, from, claim.from));
}

const landmarkLead =
  /\b(past|after|beyond|below|above|before|behind|beside|alongside|underneath|opposite|outside|near|next to|close to|off|(?:upstream|downstream|ahead|short|outside|front|back|shy|side) of) (the|that|this|your|our|my|his|her|their|its|those)( (?!(?:a|an|another|there|is|'s|it)\b)[\w']+){0,2}$|\b(rather than|instead of|as opposed to|and not)( (in|at|into|on|to))? (the|a|an)( \w+){0,2}$/;
/** "From the cleanout to the trap": a way told by its two ends. */
const betweenEnds = /\b(from|between) the [\w']+( [\w']+)? (to|until|till|up to|down to|out to|and) the\b/;
const wished =
  /\b(we 'll|they 'll|i 'll|should|would|could|gonna|going to|i 'd|you 'd|let 's|might want to|want|need|needs|recommend|suggest|ought to)( [\w']+){0,6} (put|install|add|have|cut|get|want|need|set)( in)?( (a|an|another|some|new|proper|outside|two|way))*$/;
/** How far before a thing the words stand that make it a landmark, in tokens. */
const LANDMARK_TOKENS = 6;
const WISH_TOKENS = 12;

/** "Just past the wye there's a crack": where something else stands in the sentence, the wye only says where. */
function withoutLandmarks(claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): Claim[] {
  const places = phrasesOf(sentence.phrases, 'distance');
  // "Grease at 12, and I can't get past the bend at 23": with a place of its own it is seen, not only named; so it is where
  // nothing else in the sentence is a thing that the place could belong to.
  const isOnlyThing = (claim: Claim): boolean => claims.every((other) => other === claim || other.source === 'sign');
  const hasOwnPlace = (claim: Claim): boolean =>
    (places.length > 1 || isOnlyThing(claim)) &&
    places.some((place) => place.from >= claim.to && place.from - claim.to <= 2);
  const isEndOfWay = (claim: Claim): boolean =>
    fittingKinds.has(claim.kind) &&
    betweenEnds.test(sentence.text) &&
    /\b(from|between|to|until|till|and) the( [\w']+)?$/.test(
      textOf(tokens, Math.max(sentence.from, claim.from - 3), claim.from),
    );
  const isLandmark = (claim: Claim): boolean =>
    claim.source === 'word' &&
    !hasOwnPlace(claim) &&
    (isEndOfWay(claim) ||
      landmarkLead.test(textOf(tokens, Math.max(sentence.from, claim.from - LANDMARK_TOKENS), claim.from))) &&
    !isBreakBetween(tokens, Math.max(sentence.from, claim.from - 2), claim.from);
  const isWished = (claim: Claim): boolean =>
    fittingKinds.has(claim.kind) &&
    wished.test(textOf(tokens, Math.max(sentence.from, claim.from - WISH_TOKENS), claim.from));
  const seen = claims.filter((claim) => !isWished(claim));
  const findings = seen.filter((claim) => !isLandmark(claim));
  const saysPipe = sentence.phrases.some((phrase) => phrase.family === 'material');
  return findings.length > 0 || saysPipe ? findings : seen;
}

/** The things that only say where another thing is: "past the wye", "between the wye and the main". */
function anchorThings(sentence: Sentence): Set<Phrase> {
  const anchors = new Set<Phrase>();
  for (const place of phrasesOf(sentence.phrases, 'relative')) {
    const { relative } = place;
    if (!relative.anchor) continue;
    const { to } = relative.anchor;
    // "four feet into the liner": the thing may be read with the words that lead to it.
    const from = relative.shape === 'inside' ? place.from : relative.anchor.from;
    const inside = sentence.phrases.filter(
      (phrase) =>
        (phrase.family === 'thing' || phrase.family === 'material' || (phrase.family === 'angle' && phrase.isNoun)) &&
        phrase.from >= from &&
        phrase.to <= to + 1,
    );
    for (const phrase of inside.slice(0, relative.shape === 'between' ? 2 : 1)) anchors.add(phrase);
  }
  return anchors;
}

/** "a 45 degree bend", "long sweep 90", "a ninety turn": the angle names no second fitting. */
function isFittingBeside(
  thing: PhraseOf<'thing'>,
  angle: Phrase,
  sentence: Sentence,
  tokens: readonly Token[],
): boolean {
  if (thing.kind !== 'bend' && thing.kind !== 'wye') return false;
  const [from, to] = [Math.min(thing.to, angle.to), Math.max(thing.from, angle.from)];
  const isPlaceBetween = phrasesOf(sentence.phrases, 'distance').some((place) => place.from >= from && place.to <= to);
  if (isPlaceBetween && thing.kind === 'wye') return false;
  return (
    tokenGap(thing, angle) <= 6 &&
    !tokens
      .slice(Math.min(thing.to, angle.to), Math.max(thing.from, angle.from))
      .some((token) => token.text === 'another')
  );
}

const isPointedBack = (words: string): boolean =>
  /\b(that|this|which|it|there) ('s|is|would be|'d be|must be|'ll be|will be|was)( (where|the|your|our|what|how)( [\w']+){0,5})?$/.test(
    ` ${words}`,
  ) || /\b(it|that|this|which|that one|this one)( (just|only|also|likely|probably|then))?$/.test(words);

/** How near, in tokens, another thing must stand for a description to give way to it. */
const YIELD_TOKENS = 9;

function givesWay(claim: Claim, claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): boolean {
  const upper = claim.source === 'sign' ? yieldsTo.get(claim.kind) : undefined;
  if (upper && claims.some((other) => other.kind === upper)) return true;
  if (claim.source !== 'sign' || !yieldingKinds.has(claim.kind)) return false;
  const after = claims.find(
    (other) => other.from >= claim.to && fittingKinds.has(other.kind) && other.kind !== claim.kind,
  );
  // "There's an opening on top … so that's the vent": what is described first is named at the end.
  if (
    after &&
    /\b(that|it|this) ('s|is|would be|'d be|must be) (the|a|an|your|our)( \w+)?$/.test(
      textOf(tokens, claim.to, after.from),
    )
  )
    return true;
  // "The kitchen coming in through a wye": the description ends in the name.
  if (
    after &&
    /\b(through|on|via|by|with|into|at|using|as) (a|an|another)( \w+)?$/.test(textOf(tokens, claim.to - 1, after.from))
  )
    return true;
  const before = claims.findLast(
    (other) => other.to <= claim.from && fittingKinds.has(other.kind) && other.kind !== claim.kind,
  );
  // "There's a tee, and that's where the tub drops in": told of the tee.
  if (before && isPointedBack(textOf(tokens, before.to, claim.from))) return true;
  const isPronoun = /^(it|that|this)$/.test(tokens[claim.from]?.text ?? '');
  if (before && isPronoun && (claim.from - before.to <= 2 || isPointedBack(textOf(tokens, before.to, claim.from + 2))))
    return true;
  return claims.some(
    (other) =>
      other !== claim &&
      other.kind !== claim.kind &&
      tokenGap(other, claim) <= YIELD_TOKENS &&
      !tokens
        .slice(Math.min(other.to, claim.to), Math.max(other.from, claim.from))
        .some(
          (token, offset) =>
            /^(and|another|also|then)$/.test(token.text) &&
            !isInNumber(sentence, Math.min(other.to, claim.to) + offset),
        ),
  );
}

/** "eight and a half feet": the "and" of a number joins no two things. */
const isInNumber = (sentence: Sentence, at: number): boolean =>
  phrasesOf(sentence.phrases, 'distance').some((place) => at >= place.from && at < place.to);

function mergeSameThings(claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): Claim[] {
  const merged: Claim[] = [];
  for (const claim of claims) {
    const before = merged.findLast((other) => other.kind === claim.kind && !other.isRejected);
    const places = before
      ? sentence.phrases.filter(
          (phrase) => phrase.family === 'distance' && phrase.from >= before.to && phrase.to <= claim.from,
        )
      : [];
    const isAnother =
      before !== undefined &&
      tokens
        .slice(before.to, claim.from + 1)
        .some((token) => /^(another|second|more|also|again|next|plus|other)$/.test(token.text));
    const placesAfter = sentence.phrases.some((phrase) => phrase.family === 'distance' && phrase.from >= claim.to);
    // "Twelve feet, roots at the top, fifteen feet, roots on the left": each after its own place.
    const isAfterOwn =
      before !== undefined &&
      sentence.phrases.some((phrase) => phrase.family === 'distance' && phrase.to <= before.from) &&
      places.some((place) => claim.from - place.to <= 3);
    const isReferred = before !== undefined && /^(the|that|this)$/.test(tokens[claim.from - 1]?.text ?? '');
    const isSame =
      isReferred || (before !== undefined && !isAnother && !isAfterOwn && !(places.length > 0 && placesAfter));
    const isDeniedNow =
      before !== undefined &&
      tokens
        .slice(Math.max(before.to, claim.from - 3), claim.from)
        .some((token) => /^(not|no|isn't|ain't|aren't|wasn't)$/.test(token.text)) &&
      /\b(that|it|this|those|they) ('s|is|are|was|isn't|ain't|aren't|wasn't)\b/.test(
        textOf(tokens, Math.max(before.to, claim.from - 5), claim.from),
      );
    // "The water's moving, so no belly": the everyday word was none, and what is denied is named after it.
    const isNo = /^(no|any|without|zero|never)$/.test(tokens[claim.from - 1]?.text ?? '');
    if (before?.source === 'weak' && claim.source === 'word' && isNo) {
      merged[merged.indexOf(before)] = claim;
      continue;
    }
    if (before && isDeniedNow) {
      before.to = claim.to;
      before.isRejected = true;
    } else if (before && isSame) {
      before.to = claim.to;
      before.things.push({ from: claim.from, to: claim.to });
      before.respelled.push(...claim.respelled);
      before.isDoubtful &&= claim.isDoubtful;
      if (before.source !== 'word') before.source = claim.source === 'word' ? 'word' : before.source;
    } else merged.push(claim);
  }
  return merged;
}
