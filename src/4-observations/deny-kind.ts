/** What is said not to be there: one entry a kind, also where the denial and the thing stand in two sentences. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Claim } from './claim.ts';
import { withdrawItem } from './items.ts';
import { currentRun, type Item, own, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** Lists a kind as denied, with the words from what stands before it: "no cracks, breaks or holes" denies three. */
export function denyKind(reading: Reading, sentence: Sentence, claim: Pick<Claim, 'kind' | 'from' | 'to'>): void {
  const run = currentRun(reading)?.n ?? 1;
  const { kind, from, to } = claim;
  reading.absent.push({ run, kind, from, to });
  const before = sentence.phrases.filter(
    (phrase) => phrase.to <= from && phrase.family !== 'assertion' && phrase.family !== 'correction',
  );
  own(reading, Math.max(sentence.from, ...before.map((phrase) => phrase.to)), to, { sort: 'absent', kind, run });
}

const plainNo =
  /^(no|nope|nah|naw|negative)( (sir|ma'am|ma am|i didn't|we didn't|i did not|we did not))?$|^(i|we) (don't|didn't|do not|did not|can't|haven't)( see (it|one|any))?( ((not )?(in|on)) (this|here|that|there)( \w+)?)?$/;
const none =
  /^((no|nope|nah|well|and|but|,|so|now|honestly|sir|ma'am) )*((i can (tell|assure) you|i 'm (happy|glad|pleased) to (say|report)|(happy|glad|pleased) to (say|report)|good news|truth is|far as i can (see|tell)) ,? ?)?(none|nothing|nil|zero|zip|nada|negative|absent|nowhere|not (a )?(single )?(one|any|seen|found|present|observed|noted|detected|at all)|((i|we) )?(didn't|don't|did not|do not|never|haven't|have not) (see|saw|find|found|have|seen|got|notice|noticed) (any|one|a single one|none)|there (are|is|were|was) (none|not any|not one)|there (aren't|isn't|weren't|wasn't) (any|one|a single one))( (at all|here|there|seen|found|observed|noted|whatsoever|either|anywhere|none|not one|no|of (that|those|them|it)|that (i|we) (saw|could see|can see)|to (report|speak of|see)|(in|on|for|through) (here|there|either|this|that|any)( (direction|run|side|section|line|one|pass|survey|leg|way))?))*$/;
const heading =
  /^((and|so|now|well|also) )*(absent|missing|not (found|seen|present|observed|noted|detected)|none of (the following|these)|(what|things|defects) (did )?(i|we|you) (did |do |could )?(not|didn't|don't|won't|never|can't) (see|saw|find|found|have)|what (didn't|did|don't) (i|we|you) (not )?(see|find|have))\b/;

/** "You wondered about grease.", "Roots, you asked.": a question put by somebody else. */
const topic =
  /\b(asked|asking|wonder(ed|ing)?|wanted to know|want to know|worried|concerned|curious)( me| us)?( about| if| whether)\b|\b(you|they|he|she) (asked|wondered)$/;
export const isAskedAbout = ({ text }: Sentence): boolean => topic.test(text);

/** "Roots? None.", "Roots on run two. None.", "Did I see any cracks? No." Returns whether the sentence was such an answer. */
export function answersWithNone(reading: Reading, sentence: Sentence): boolean {
  // "There isn't any, and there's no scale": the answer comes first.
  const said = sentence.text.split(/ (?:and|but) /)[0] ?? '';
  const end = sentence.from + said.split(' ').length;
  const names = sentence.phrases.some(
    (phrase) => (phrase.family === 'thing' || phrase.family === 'distance') && phrase.from < end,
  );
  const isNone = none.test(said);
  const isNo = plainNo.test(said);
  if (names || !(isNone || isNo)) return false;
  const next = reading.sentences[sentence.index + 1]?.text ?? '';
  const asked = reading.asked.filter((question) => {
    const text = reading.sentences[question.sentence]?.text ?? '';
    // "Is that a crack? No." takes back a guess and denies nothing of the run.
    if (sentence.index - question.sentence > 2 || /\b(that|this|those|these|it)\b/.test(text)) return false;
    return isNone || /\b(any|did|do) /.test(text) || topic.test(text) || none.test(next);
  });
  const denied = asked.flatMap((question) => (question.item ? [question.item] : []));
  if (isNone && denied.length === 0) denied.push(...barelyNamed(reading, sentence));
  for (const item of denied) {
    const said = reading.sentences[item.sentence];
    withdrawItem(item, `denied: "${sentence.text}"`);
    if (!said) continue;
    for (let at = said.from; at < said.to; at += 1) if (isOf(reading, at, item)) reading.owners[at] = null;
    denyKind(reading, said, item);
  }
  if (denied.length === 0) return false;
  own(reading, sentence.from, said === sentence.text ? sentence.to : end, {
    sort: 'absent',
    kind: denied.at(-1)!.kind,
    run: denied.at(-1)!.run,
  });
  reading.asked = [];
  reading.focus = reading.focus.filter((item) => !item.isWithdrawn);
  return true;
}

function isOf(reading: Reading, token: number, item: Item): boolean {
  const owner = reading.owners[token];
  return (owner?.sort === 'item' && owner.item === item) || (owner?.sort === 'aside' && owner.why === 'question');
}

/** How long a sentence may be that only names a thing ("Root penetration on this run."). */
const NAMING_TOKENS = 8;

/** The things the sentence before named without a place and without claiming them. */
function barelyNamed(reading: Reading, sentence: Sentence): Item[] {
  const before = reading.sentences[sentence.index - 1];
  if (!before || before.to - before.from > NAMING_TOKENS) return [];
  if (phrasesOf(before.phrases, 'distance').length > 0) return [];
  if (/\b('s|is|are|there|here|got|have|has|see)\b/.test(before.text)) return [];
  return reading.items.filter((item) => !item.isWithdrawn && item.sentence === before.index && item.kind !== 'pipe');
}

/** "Absent from this survey.", "What didn't we see?": what the next sentence lists is denied. */
export const isDenyingHeading = (sentence: Sentence): boolean =>
  heading.test(sentence.text) && !sentence.phrases.some((phrase) => phrase.family === 'thing');
