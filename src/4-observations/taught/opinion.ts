/** What the taught reader holds of an item: how likely its kind is where it is spoken of, and what else is. */
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import type { Item, Reading } from '../reading.ts';
import { type Sentence, sentenceAt } from '../sentence.ts';
import type { TaughtReading } from './read-taught.ts';

/** Below this chance it would not name the kind. */
export const UNLIKELY = 0.1;
/** From this chance on it would name another. */
const LIKELY = 0.4;

/** Below this chance it is all but sure that the kind is not named. */
export const ALL_BUT_NONE = 0.05;

/** Denials, doubts and corrections are what the rules are for: there their word stands. */
export const isWeighed = ({ phrases }: Sentence): boolean =>
  phrases.some(
    (phrase) =>
      phrase.family === 'correction' ||
      (phrase.family === 'assertion' && (phrase.cue.axis === 'denied' || phrase.cue.axis === 'hedged')),
  );

/** What the taught reader finds in a sentence with at least some chance, or null. */
export function likelyIn(taught: TaughtReading, sentence: Sentence, least: number): string | null {
  let best: string | null = null;
  let most = least;
  for (const [kind, chance] of taught.chances(sentence)) {
    if (chance < most) continue;
    best = kind;
    most = chance;
  }
  return best;
}

export interface Opinion {
  /** The chance of the item's own kind, the best of all its mentions. */
  readonly own: number;
  /** The same of every other kind, by name. */
  readonly others: ReadonlyMap<string, number>;
}

export function opinionOf({ sentences, taught }: Reading, item: Item): Opinion {
  const best = new Map<string, number>();
  for (const { from } of [item, ...item.again]) {
    const sentence = sentenceAt(sentences, from);
    for (const [kind, chance] of sentence ? taught.chances(sentence) : [])
      best.set(kind, Math.max(chance, best.get(kind) ?? 0));
  }
  const own = best.get(item.kind) ?? 0;
  best.delete(item.kind);
  return { own, others: best };
}

/** From this chance on it finds another thing in the same words. */
const SURE = 0.9;

/** Another kind that is all but surely named where the item is, and that nothing was made of there; null when there is none. */
export function alsoNamed(reading: Reading, item: Item): string | null {
  const sentence = reading.sentences[item.sentence];
  if (!sentence) return null;
  const isListed = (kind: string): boolean =>
    reading.items.some(
      (other) =>
        !other.isWithdrawn &&
        other.kind === kind &&
        (Math.abs(other.sentence - sentence.index) <= 1 ||
          other.again.some(({ from, to }) => from < sentence.to && to > sentence.from)),
    );
  for (const [kind, chance] of reading.taught.chances(sentence)) if (chance >= SURE && !isListed(kind)) return kind;
  return null;
}

/** The item's kind and those it would name instead, to choose from; none where it would name nothing else. */
export function kindOffers({ kind }: Item, { others }: Opinion): { offers?: { value: string; label: string }[] } {
  const likely = [...others].filter(([, chance]) => chance >= LIKELY).map(([name]) => name);
  return likely.length > 0 ? { offers: [kind, ...likely].map((value) => ({ value, label: kindTitle(value) })) } : {};
}
