/**
 * Finds what a decision is about. First by exact content; when the recording was drafted again and the words came
 * out a little differently, by the same kind at the same distance with most of the words alike. A second candidate
 * that fits nearly as well means that nobody can tell: then nothing is found, and the decision is shown as one that
 * no longer fits.
 */
import type { Changes, Subject } from '../../shared/schemas/decision.ts';
import type { ReviewedObservation } from '../../shared/schemas/reviewed.ts';
import type { Held, ReviewState } from './review-state.ts';
import { subjectKey, wordsAlike } from './subject.ts';

const alikeEnough = 0.5;
const clearlyBetterBy = 0.1;

export interface Found<T> {
  readonly held: Held<T>;
  /** Only the words differ a little from what was decided on. */
  readonly isNear: boolean;
}

export function findObservation(
  state: ReviewState,
  subject: Subject,
  spokenFor: ReadonlySet<string>,
  changes: Changes = {},
): Found<ReviewedObservation> | null {
  const key = subjectKey(subject);
  const exact = state.observations.find((held) => held.key === key && !held.isGone);
  if (exact) return { held: exact, isNear: false };
  if (subject.what !== 'observation') return null;
  const kinds = [subject.kind, changes.kind?.now];
  const places = [subject.at, changes.at?.now];
  const near = nearest(
    state.observations.filter(
      ({ subject: candidate, isGone, key: candidateKey }) =>
        !isGone &&
        !spokenFor.has(candidateKey) &&
        candidate.what === 'observation' &&
        kinds.includes(candidate.kind) &&
        places.includes(candidate.at),
    ),
    subject.words,
  );
  return near ? { held: near, isNear: true } : null;
}

/** Finds an item of another list, by exact content or by words that are clearly the same. */
export function findOther<T>(
  list: Iterable<Held<T>>,
  subject: Subject,
  spokenFor: ReadonlySet<string>,
): Found<T> | null {
  const all = [...list].filter((held) => !held.isGone);
  const key = subjectKey(subject);
  const exact = all.find((held) => held.key === key);
  if (exact) return { held: exact, isNear: false };
  if (!('words' in subject)) return null;
  const near = nearest(
    all.filter(
      ({ subject: candidate, key: candidateKey }) =>
        !spokenFor.has(candidateKey) &&
        candidate.what === subject.what &&
        (!('kind' in candidate) || !('kind' in subject) || candidate.kind === subject.kind),
    ),
    subject.words,
  );
  return near ? { held: near, isNear: true } : null;
}

/** The observation that comes nearest in words, whatever its kind and place: to show beside an orphan. */
export function nearestByWords(state: ReviewState, words: string): Held<ReviewedObservation> | null {
  return nearest(
    state.observations.filter((held) => !held.isGone),
    words,
  );
}

function nearest<T>(candidates: readonly Held<T>[], words: string): Held<T> | null {
  const ranked = candidates
    .map((held) => ({ held, score: 'words' in held.subject ? wordsAlike(held.subject.words, words) : 0 }))
    .filter(({ score }) => score >= alikeEnough)
    .sort((a, b) => b.score - a.score);
  const [first, second] = ranked;
  if (!first || (second && first.score - second.score < clearlyBetterBy)) return null;
  return first.held;
}
