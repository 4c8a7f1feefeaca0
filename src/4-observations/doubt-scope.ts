/** What a word of doubt is about: the thing itself, or its size, its cause or its owner. */
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Claim } from './claim.ts';
import type { Cue } from './cue-reach.ts';
import type { Sentence } from './sentence.ts';

/** Words that doubt the thing only where they close what is said of it; with more after them they doubt that. */
export const saysMore =
  /^(maybe|possibly|perhaps|likely|probably|presumably|i think|i guess|i believe|i suppose|i assume|i 'm guessing|i 'd guess|if i had to guess|my guess is|(it|that|there) (might|may|could)|could be|might be|may be|may|might|suspect|suspected|seems|appears|i wonder if|likely)$/;

function endsClause(cue: Cue, sentence: Sentence, tokens: readonly Token[]): boolean {
  for (let at = cue.to; at < sentence.to && tokens[at - 1]?.breakAfter === 'none'; at += 1) {
    const isPlace = sentence.phrases.some(
      (phrase) => /^(distance|position|clock)$/.test(phrase.family) && at >= phrase.from && at < phrase.to,
    );
    if (
      !isPlace &&
      !/^(at|here|there|so|it|is|was|on|in|the|that|one|right|but|though|anyway|yeah|at|um|uh|not|or)$/.test(
        tokens[at]?.text ?? '',
      )
    )
      return false;
  }
  return true;
}

/** "I won't swear to it, but that's a crack": a doubt said ahead of the thing. */
const saidAhead =
  /swear|quote me|hold me|could be wrong|may be wrong|might be wrong|question mark|a maybe|call it possible|be sure|be certain|not (sure|certain|positive)|can't tell|hard to/;

/** "A quarter of the pipe, I'd guess." */
export const isOfMeasure = (cue: Cue, sentence: Sentence): boolean =>
  sentence.phrases.some(
    (phrase) =>
      /^(share|inches|degree|service)$/.test(phrase.family) && phrase.to <= cue.from && cue.from - phrase.to <= 1,
  );

export function isSaidAhead(cue: Cue, claim: Claim, claims: readonly Claim[], tokens: readonly Token[]): boolean {
  return (
    saidAhead.test(cue.rule) &&
    cue.to <= claim.from &&
    claim.from - cue.to <= 8 &&
    tokens.slice(cue.to - 1, claim.from).some((token) => token.breakAfter === 'comma' || token.text === 'but') &&
    !claims.some((other) => other.from < claim.from) &&
    !/^(where|who|whose|why|how|what|which|when|about)$/.test(tokens[cue.to]?.text ?? '')
  );
}

/** "A nail, I think, or a rod": which of the two it is, not whether it is there. */
function isBetweenNames(cue: Cue, { things }: Claim, tokens: readonly Token[]): boolean {
  const first = things[0];
  const last = things.at(-1);
  if (!first || !last || first === last || cue.from < first.to || cue.to > last.from) return false;
  const nameOf = ({ from, to }: { from: number; to: number }): string => textOf(tokens, from, to);
  return saysMore.test(cue.rule) && nameOf(first) !== nameOf(last);
}

/** A hedge that belongs to a number, an owner or a cause beside it, not to the thing. */
export function hedgesSomethingElse(cue: Cue, claim: Claim, sentence: Sentence, tokens: readonly Token[]): boolean {
  const measured = sentence.phrases.filter((phrase) =>
    /^(share|inches|distance|service|clock|count|relative|angle|diameter|length)$/.test(phrase.family),
  );
  if (isBetweenNames(cue, claim, tokens)) return true;
  // "from four through to maybe eleven"
  if (measured.some((phrase) => phrase.from <= cue.from && phrase.to >= cue.to)) return true;
  const followsDirectly = measured.some(
    (phrase) =>
      phrase.from >= cue.to && phrase.from - cue.to <= 2 && !(claim.from >= cue.to && claim.from <= phrase.from),
  );
  if (followsDirectly) return true;
  // "two inches, perhaps": the size is in doubt, not the thing.
  const isOfSize =
    cue.from >= claim.to &&
    sentence.phrases.some(
      (phrase) =>
        /^(share|inches|degree|service|angle|diameter)$/.test(phrase.family) &&
        phrase.from >= claim.to &&
        phrase.to <= cue.from &&
        cue.from - phrase.to <= 1,
    );
  if (isOfSize) return true;
  const isAfterThing = cue.from >= claim.to;
  if (isAfterThing && saysMore.test(cue.rule) && !endsClause(cue, sentence, tokens)) return true;
  // "I can't tell who owns it": of the owner.
  const asked = /^(you|ya|for|exactly|just|rightly)$/.test(tokens[cue.to]?.text ?? '') ? cue.to + 1 : cue.to;
  if (/^(where|who|whose|why|how|what|which|when)$/.test(tokens[asked]?.text ?? '')) return true;
  const ownerBefore = sentence.phrases.some(
    (phrase) =>
      phrase.family === 'service' && phrase.to <= cue.from && cue.from - phrase.to <= 3 && phrase.from >= claim.to,
  );
  if (isAfterThing && ownerBefore) return true;
  const next = tokens[cue.to]?.text ?? '';
  return (
    isAfterThing &&
    /^(where|from|because|somebody|someone|due|why|when|how|about|off|since|a|an|the|what|that|they|he|she|it|for)$/.test(
      next,
    ) &&
    cue.cue.reaches === 'forward'
  );
}
