/**
 * What speaks for doubt about an item, as numbers. Each feature is named for what it means, because the one that weighs most
 * becomes the reason shown to the inspector.
 */
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { agrees, type NearestReading } from './read-nearest.ts';
import { type Item, isPlaceGuessed, type Reading } from './reading.ts';
import { type Opinion, UNLIKELY } from './taught/opinion.ts';

const groups = new Map<string, string>(kinds.map((kind) => [kind.name, kind.group]));

export type DoubtFeatures = Readonly<Record<string, number>>;

/** What is the same for every item of one talk. */
export interface TalkFacts {
  readonly nearest: readonly NearestReading[];
  /** The share of tokens after which a comma or a stop is printed. */
  readonly punctuated: number;
}

const is = (value: boolean): number => (value ? 1 : 0);

export function doubtFeatures(reading: Reading, item: Item, facts: TalkFacts, opinion: Opinion): DoubtFeatures {
  const { evidence } = item;
  const notes = evidence.notes.join('; ');
  const run = reading.runs.find((candidate) => candidate.n === item.run);
  const siblings = reading.items.filter((other) => other.run === item.run && !other.isWithdrawn && other !== item);
  const sameSentence = siblings.filter((other) => other.sentence === item.sentence);
  const agreement = agrees(facts.nearest, item);
  const isStart = item.kind === 'pipe' && item.at === 0;
  const rule = evidence.placeRule;
  const fieldsGiven = Object.values(item.fields).filter((value) => value !== null).length;
  return {
    'place:none': is(item.at === null && item.kind !== 'no-access'),
    'place:guessed': is(isPlaceGuessed(item)),
    'place:said-before': is(rule.startsWith('place said before')),
    'place:sentences-back': Math.min(3, evidence.placeSentences),
    'place:said-after': is(/said (right )?after|said later|second mention/.test(rule)),
    'place:relative': is(item.basis === 'relative'),
    'place:bare': is(evidence.frame === 'bare'),
    'place:far': Math.min(2, (evidence.placeTokens ?? 0) / 10),
    'place:several': is(evidence.placesInSentence > 1),
    'place:jumps': is(notes.includes('does not fit the push')),
    'place:start': is(isStart),
    'things:several': Math.min(3, evidence.thingsInSentence - 1),
    'things:same-sentence-same-kind': is(sameSentence.some((other) => other.kind === item.kind)),
    'word:sign': is(evidence.source === 'sign'),
    'word:weak': is(evidence.source === 'weak'),
    'word:respelled': is(evidence.isRespelled || item.respelled.length > 0),
    'hedge:hedged': is(item.status === 'suspected'),
    'hedge:apart': is(notes.includes('hedge stands apart') || notes.includes('hedged after')),
    'hedge:words': is(item.status === 'present' && /hedged:/.test(notes)),
    'repeat:way-back': is(evidence.isOnWayBack),
    'repeat:near-same': is(
      siblings.some(
        (other) =>
          other.kind === item.kind && other.at !== null && item.at !== null && Math.abs(other.at - item.at) <= 2,
      ),
    ),
    'repeat:after-end': is(run?.end?.at != null && item.at !== null && item.at > run.end.at + 0.5),
    'repeat:mentions': Math.min(3, item.again.length),
    'correction:weak': is(notes.includes('weak correction')),
    'correction:any': is(item.corrected.length > 0),
    'correction:conflict': is(notes.includes('later said')),
    'attribute:later': is(notes.includes('said later')),
    'attribute:many': Math.min(3, fieldsGiven),
    'sentence:long': Math.min(3, evidence.sentenceTokens / 15),
    'sentence:unpunctuated': is(facts.punctuated < 0.06),
    'sentence:not-pointed': is(!evidence.hasExistential),
    'readers:differ': is(agreement === false),
    'readers:silent': is(agreement === null && !isStart),
    ...taughtFeatures(opinion),
    'run:unsure': is(run?.isDirectionAssumed ?? false),
    'kind:defect': is(groups.get(item.kind) === 'defect'),
    'kind:limit': is(groups.get(item.kind) === 'limit'),
    [`kind=${item.kind}`]: 1,
  };
}

/** How likely a reader taught from examples finds the item's kind where it is spoken of, and another kind. */
function taughtFeatures({ own, others }: Opinion): DoubtFeatures {
  const bounded = Math.min(0.999, Math.max(0.001, own));
  return {
    'taught:unlikely': -Math.log(bounded / (1 - bounded)) / 3,
    'taught:low': is(own < UNLIKELY),
    'taught:middling': is(own >= UNLIKELY && own < 0.5),
    'taught:sure': is(own > 0.95),
    'taught:other': is(Math.max(...others.values()) > 0.5),
  };
}
