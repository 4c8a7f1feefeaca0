/**
 * What the corrections say about the inspector's own way of speaking. Pure. In: a draft and its decisions. Out: heard
 * words with what they stood for, one entry each time a person corrected it so.
 */
import type { Decision } from '../../shared/schemas/decision.ts';
import type { Draft, Observation } from '../../shared/schemas/draft.ts';
import { type KindName, kinds } from '../../shared/vocabulary/kinds/index.ts';
import { type Deed, standingDecisions } from './standing-decisions.ts';
import { plainWords, subjectKey, subjectsOf } from './subject.ts';

export interface Correction {
  readonly heard: string;
  readonly said: string;
  readonly kind: KindName | null;
}

/** Words that carry no name of a thing; a phrase may hold them but not begin or end with them. */
const smallWords = new Set(
  `a an and are as at be been bit but by can coming could down for from get going got had has have he here hey i if in into is it its
  just kind let lets like little looks maybe me more my no not now of off oh ok okay on one or our out over right see so some
  still that thats the then there theres these they thing this those to too up us was we well were what when where which will
  with would yeah yes you feet foot inch inches about again another also all`.split(/\s+/),
);
const longestPhrase = 3;

/** Every correction from which a word of one's own could be learnt, in the order of the decisions. */
export function correctionsIn(draft: Draft, decisions: readonly Decision[]): Correction[] {
  const keys = subjectsOf(draft).observations.map(subjectKey);
  const byKey = new Map(draft.observations.map((observation, index) => [keys[index]!, observation]));
  return standingDecisions(decisions).deeds.flatMap((deed) => {
    const observation = 'subject' in deed ? byKey.get(subjectKey(deed.subject)) : undefined;
    return [...fromRespelling(deed, observation), ...fromPhrase(deed, observation)];
  });
}

/** A respelled word that was confirmed, or confirmed as another kind: the hearing is known. */
function fromRespelling(deed: Deed, observation: Observation | undefined): Correction[] {
  if (deed.action !== 'confirm' || !observation?.respelled) return [];
  const kind = (deed.changes?.kind?.now ?? null) as KindName | null;
  return observation.respelled.map(({ heard, taken }) => ({
    heard: plainWords(heard),
    said: kind ? nameOf(kind) : taken,
    kind: kind ?? kindNamed(taken),
  }));
}

/** A thing added from talk, or moved to another kind: any of its phrases may be what the inspector calls it. */
function fromPhrase(deed: Deed, observation: Observation | undefined): Correction[] {
  const kind =
    deed.action === 'add'
      ? deed.observation.kind
      : deed.action === 'confirm' || deed.action === 'change'
        ? ((deed.changes?.kind?.now ?? null) as KindName | null)
        : null;
  if (!kind || observation?.respelled?.length) return [];
  const text = deed.action === 'add' ? deed.observation.heard.text : observation?.heard.text;
  return phrases(plainWords(text ?? '')).map((heard) => ({ heard, said: nameOf(kind), kind }));
}

/** Offers: corrections made at least twice, the longest phrase where one lies in another. */
export function offersFrom(
  corrections: readonly Correction[],
  settled: readonly { heard: string; said: string }[],
): Correction[] {
  const counts = new Map<string, { correction: Correction; count: number }>();
  const phraseKinds = new Map<string, Set<string>>();
  for (const correction of corrections) {
    const key = `${correction.heard}|${correction.said}`;
    const entry = counts.get(key) ?? { correction, count: 0 };
    entry.count++;
    counts.set(key, entry);
    phraseKinds.set(correction.heard, (phraseKinds.get(correction.heard) ?? new Set()).add(correction.said));
  }
  const known = new Set(settled.map(({ heard, said }) => `${heard}|${said}`));
  const often = [...counts.values()]
    .filter(({ correction, count }) => count >= 2 && !known.has(`${correction.heard}|${correction.said}`))
    // What stood for two different things is no word for either; what the vocabulary has needs no entry.
    .filter(({ correction }) => phraseKinds.get(correction.heard)!.size === 1 && !isInVocabulary(correction))
    .map(({ correction }) => correction);
  return often.filter(
    (one) =>
      !often.some((other) => other !== one && other.said === one.said && ` ${other.heard} `.includes(` ${one.heard} `)),
  );
}

function phrases(words: string): string[] {
  const all = words.split(' ');
  const found = new Set<string>();
  for (let from = 0; from < all.length; from++) {
    for (let length = 1; length <= longestPhrase && from + length <= all.length; length++) {
      const part = all.slice(from, from + length);
      const isBare = [part[0]!, part.at(-1)!].some((word) => smallWords.has(word) || word.length < 3);
      if (!isBare && !part.some((word) => /\d/.test(word))) found.add(part.join(' '));
    }
  }
  return [...found];
}

function isInVocabulary({ heard, said }: Correction): boolean {
  const kind = kinds.find((candidate) => nameOf(candidate.name) === said);
  return kind?.words.some((word) => word === heard) ?? false;
}

function nameOf(kind: KindName): string {
  const entry = kinds.find((candidate) => candidate.name === kind)!;
  return (entry.words as readonly string[])[0] ?? entry.title.toLowerCase();
}

function kindNamed(word: string): KindName | null {
  const plain = word.toLowerCase();
  return kinds.find((kind) => kind.name === plain || (kind.words as readonly string[]).includes(plain))?.name ?? null;
}
