/**
 * How a decision names what it is about: by content, without position. The words are those heard, in lower case and
 * without punctuation; `nth` counts, in order of time, subjects that are otherwise the same.
 */
import type { Subject } from '../../shared/schemas/decision.ts';
import type { Draft } from '../../shared/schemas/draft.ts';

/** The heard words as a subject carries them: lower case, letters, digits and decimal points only. */
export function plainWords(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(/[’']/g, '')
    .replaceAll(/[^\p{L}\p{N}.]+|\.(?!\d)/gu, ' ')
    .trim()
    .replaceAll(/\s+/g, ' ');
}

/** One string a subject; equal strings mean the same subject. */
export function subjectKey(subject: Subject): string {
  switch (subject.what) {
    case 'observation':
      return `observation|${subject.kind}|${subject.at}|${subject.words}|${subject.nth}`;
    case 'absent':
      return `absent|${subject.kind}|${subject.words}|${subject.nth}`;
    case 'unplaced':
    case 'set-aside':
    case 'run':
      return `${subject.what}|${subject.words}|${subject.nth}`;
    case 'added':
      return `added|${subject.id}`;
    case 'site':
      return `site|${subject.name}`;
  }
}

export interface DraftSubjects {
  readonly observations: readonly Subject[];
  readonly runs: readonly Subject[];
  readonly absent: readonly Subject[];
  readonly unplaced: readonly Subject[];
  readonly setAside: readonly Subject[];
}

/** The subject of every item of a draft, in the order of the draft's lists. */
export function subjectsOf(draft: Draft): DraftSubjects {
  return {
    observations: numbered(draft.observations, (o) => ({
      what: 'observation',
      kind: o.kind,
      at: o.at,
      words: plainWords(o.heard.text),
      nth: 0,
    })),
    runs: numbered(draft.runs, (run) => ({
      what: 'run',
      words: plainWords(run.heard?.text ?? run.access ?? ''),
      nth: 0,
    })),
    absent: numbered(draft.absent, (a) => ({
      what: 'absent',
      kind: a.kind,
      words: plainWords(a.heard.text),
      nth: 0,
    })),
    unplaced: numbered(draft.unplaced, (a) => ({ what: 'unplaced', words: plainWords(a.heard.text), nth: 0 })),
    setAside: numbered(draft.setAside, (a) => ({ what: 'set-aside', words: plainWords(a.heard.text), nth: 0 })),
  };
}

function numbered<T extends { heard: { start: number } | null }>(
  items: readonly T[],
  subjectOf: (item: T) => Exclude<Subject, { what: 'added' | 'site' }>,
): Subject[] {
  const subjects = items.map(subjectOf);
  const inTime = items.map((_, index) => index);
  inTime.sort((a, b) => (items[a]!.heard?.start ?? 0) - (items[b]!.heard?.start ?? 0) || a - b);
  const seen = new Map<string, number>();
  for (const index of inTime) {
    const subject = subjects[index]!;
    const key = subjectKey(subject);
    subject.nth = seen.get(key) ?? 0;
    seen.set(key, subject.nth + 1);
  }
  return subjects;
}

/** How alike two stretches of plain words are: Dice's coefficient over the words, 0 … 1. */
export function wordsAlike(a: string, b: string): number {
  if (a === b) return 1;
  const left = a.split(' ');
  const right = b.split(' ');
  const counts = new Map<string, number>();
  for (const word of left) counts.set(word, (counts.get(word) ?? 0) + 1);
  let shared = 0;
  for (const word of right) {
    const count = counts.get(word) ?? 0;
    if (count > 0) {
      shared++;
      counts.set(word, count - 1);
    }
  }
  return (2 * shared) / (left.length + right.length);
}
