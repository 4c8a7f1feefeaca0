/** Whether a sentence speaks of things in general: "roots love clay", "a sag holds whatever you send it". */
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Claim } from './claim.ts';
import type { Sentence } from './sentence.ts';

/** What things of a sort do: a verb of this list after a bare name makes a lesson. */
const habits =
  /^(let|lets|love|loves|like|likes|hate|hates|go|goes|come|comes|get|gets|grow|grows|find|finds|follow|follows|want|wants|will|can|cannot|can't|could|may|might|don't|doesn't|won't|never|always|just|eat|eats|cause|causes|happen|happens|mean|means|need|needs|make|makes|build|builds|harden|hardens|set|sets|kill|kills|tend|tends|cost|costs|spread|spreads|rot|rots|float|floats|show|shows|tell|tells|keep|keeps|last|lasts)$/;
const lessons =
  /^(is|lets|means|shows|finds|will|can|can't|cannot|doesn't|does|gets|happens|runs|starts|comes|goes|holds|sits|lasts|keeps|never|always|just|you|usually|in|tells|looks|won't|like)$/;
/** "A belly, that's a low spot", "grease is what kills these lines". */
const defines =
  /^(that 's|it 's|that is|it is|is|are|they 're) (when|where|what|why|how|basically|just when|just where|(a|an) (low|high|place|spot|section|part|piece|kind|type|fitting|gap|point|term|word|fancy|sort))\b/;
/** "A house trap is present": seen, however general it sounds. */
const isSeen =
  /^(is|sits|comes|starts|runs) (present|here|there|visible|seen|noted|observed|recorded|logged|located|next|overhead|right|on|at|off|in (on|at|from|the left|the right))\b/;
const hereAndNow = /\b(here|there|now|this|right|see|again)\b/;

export function speaksGenerally(claim: Claim, sentence: Sentence, tokens: readonly Token[]): boolean {
  const next = tokens[claim.to]?.text ?? '';
  const rest = textOf(tokens, claim.to, Math.min(sentence.to, claim.to + 4));
  if (claim.from - sentence.from <= 1 && defines.test(rest))
    return /^(a|an|\w+s)$/.test(tokens[sentence.from]?.text ?? '') || claim.from === sentence.from;
  const follows = claim.to < sentence.to && (tokens[claim.to - 1]?.breakAfter ?? 'stop') === 'none';
  if (!follows) return false;
  const opening = tokens.slice(sentence.from, claim.from).map((token) => token.text);
  if (opening.length === 1 && /^(a|an)$/.test(opening[0] ?? '')) return lessons.test(next) && !isSeen.test(rest);
  const isBare = opening.every((word) =>
    /^(and|but|so|well|because|see|you|know|now|once|when|if|clay|joints)$/.test(word),
  );
  const measured = Object.values(claim.fields).some((value) => value !== null && value !== undefined);
  // "Roots come in here" is seen; "roots come back every year" is known.
  return (
    isBare &&
    opening.length <= 2 &&
    !measured &&
    claim.source !== 'sign' &&
    sentence.to - claim.to >= 2 &&
    habits.test(next) &&
    !hereAndNow.test(sentence.text)
  );
}

/** Words that make even a denial a lesson or a wish: "no joints means no roots", "hopefully no roots". */
export const isNoDenial =
  /^(hopefully|hoping|let 's hope|fingers crossed|surprised|means no|you can|a liner|liners|if |when |mean no)/;
