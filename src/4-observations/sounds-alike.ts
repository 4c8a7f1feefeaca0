/** Places whose number was heard only a little better than one that sounds like it ("fifty" and "fifteen"). */
import type { Flag } from '../../shared/schemas/draft.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { soundsLikeNumber } from '../../shared/vocabulary/sounds-like-number.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { type Item, liveItems, type Reading } from './reading.ts';

/** Nine of nine wrong numbers lay nearer than this, and six of forty-three right ones (docs/hearing.md). */
const NEAR_NATS = 5.5;
/** Counters slip by so much. */
const SLACK_FEET = 1;
/** A place may be said so many sentences before or after its thing. */
const REACH_SENTENCES = 3;

/** The flag for an item whose `at` or `to` may be the other number, both offered; null when it was heard well. */
export function soundsAlike(reading: Reading, item: Item, words: Words): Flag | null {
  const { tokens } = reading.phrases;
  const near = reading.sentences.slice(
    Math.max(0, item.sentence - REACH_SENTENCES),
    item.sentence + REACH_SENTENCES + 1,
  );
  for (const sentence of near) {
    for (const { from, to, distance } of phrasesOf(sentence.phrases, 'distance')) {
      for (const token of tokens.slice(from, to)) {
        const other = otherNumber(words, token.firstWord);
        if (other === null) continue;
        for (const [about, feet] of [
          ['at', item.at],
          ['to', item.fields.to],
        ] as const) {
          const isSaidHere = feet === distance.feet || feet === distance.toFeet;
          if (feet === null || !isSaidHere || Math.floor(feet) !== Math.floor(other.heard)) continue;
          const offered = feet - other.heard + other.taken;
          if (!fitsPush(reading, item, offered)) continue;
          return {
            reason: 'distance-unsure',
            about,
            detail: `${other.heard} sounds like ${other.taken}`,
            offers: [feet, offered].map((value) => ({ value, label: `${value} ft` })),
          };
        }
      }
    }
  }
  return null;
}

/** Whether the camera can have been there: between what was named before and after it on the way out. */
function fitsPush(reading: Reading, item: Item, feet: number): boolean {
  if (item.evidence.isOnWayBack) return true;
  const named = liveItems(reading, item.run).filter((other) => other.at !== null && !other.evidence.isOnWayBack);
  const at = named.indexOf(item);
  const before = named[at - 1]?.at ?? 0;
  const after = named[at + 1]?.at ?? Number.POSITIVE_INFINITY;
  return feet >= before - SLACK_FEET && feet <= after + SLACK_FEET;
}

function otherNumber(words: Words, index: number): { heard: number; taken: number } | null {
  const word = words.words[index];
  const heard = word?.text.replace(/[^\d.]+|\.$/g, '') ?? '';
  const taken = soundsLikeNumber(heard);
  const other = word?.alternatives?.find(({ text, behindNats }) => text === taken && behindNats < NEAR_NATS);
  return taken !== null && other ? { heard: Number(heard), taken: Number(taken) } : null;
}
