/**
 * Some people say the number and then the thing, some the thing and then the number, in sentences of their own:
 * "Twenty. Roots." or "Roots. Light. Twenty." Which number is whose shows only over several of them, so it is planned
 * for a whole stretch of talk at once: every number should find a thing and every thing a number, near it, and in the
 * way this speaker has.
 */
import type { Phrases } from '../3-phrases/find-phrases.ts';
import type { PhraseOf } from '../3-phrases/phrase.ts';
import { arrange, type Choice, REACH_SENTENCES, type Stretch, stretches } from './arrange-places.ts';
import type { Sentence } from './sentence.ts';

export interface PlacePlan {
  /** The place that follows a sentence and belongs to the things in it. */
  readonly after: ReadonlyMap<number, { readonly place: PhraseOf<'distance'>; readonly sentence: number }>;
  /** Sentences that give a place only: whether it is for what was named before, for what comes, or for both. */
  readonly lone: ReadonlyMap<number, 'before' | 'next' | 'both'>;
  /** Sentences whose things a speaker of the other habit would have placed here, where which habit it is shows too little; null for nowhere. */
  readonly otherwise: ReadonlyMap<number, number | null>;
}

/** How much cheaper the other habit must make a stretch before the speaker is taken to have changed it there. */
const CHANGED_HABIT = 2;
/** What the order inside sentences may add at most, and at least, to the costs of the plan. */
const LEAN_MOST = 2;
const LEAN_LEAST = 0.5;
/** A habit that is only this much cheaper over the whole talk, and over the stretch at hand, is a guess. */
const THIN_TALK = 2;
const THIN_STRETCH = 0.6;

export function planPlaces(sentences: readonly Sentence[], phrases: Phrases, lean: number): PlacePlan {
  const parts = stretches(sentences, phrases);
  const habits = [lean >= 0, lean < 0].map((habit) => parts.map((part) => arrange(part, phrases, habit)));
  const [usual, unusual] = habits as [Choice[], Choice[]];
  const total = (choices: readonly Choice[]): number => choices.reduce((sum, choice) => sum + choice.cost, 0);
  const isUsual = total(usual) <= total(unusual) + Math.min(LEAN_MOST, LEAN_LEAST + Math.abs(lean));
  const [own, other] = isUsual ? [usual, unusual] : [unusual, usual];
  const choices = own.map((choice, part) => (choice.cost - other[part]!.cost > CHANGED_HABIT ? other[part]! : choice));
  const { after, lone } = laidOut(parts, choices);
  const otherwise = new Map<number, number | null>();
  const margin = Math.abs(total(usual) - total(unusual) - Math.min(LEAN_MOST, Math.abs(lean)));
  parts.forEach((part, index) => {
    const local = Math.abs(usual[index]!.cost - unusual[index]!.cost);
    if (margin > THIN_TALK && local > THIN_STRETCH) return;
    const [one, two] = [usual, unusual].map((choice) => placesOf(part, choice[index]!));
    for (const [sentence, feet] of choices[index] === usual[index] ? one! : two!) {
      const elsewhere = (choices[index] === usual[index] ? two! : one!).get(sentence) ?? null;
      if (elsewhere !== feet) otherwise.set(sentence, elsewhere);
    }
  });
  // A number that has a thing on its other side already is shared for want of another: "Tee. Three. Coupling. Nine, clay."
  parts.forEach(({ anchors, gaps }, part) => {
    gaps.forEach((things, index) => {
      const before = anchors[index - 1];
      if (before?.sort !== 'place' || lone.get(before.sentence.index) !== 'both') return;
      for (const thing of things.slice(0, choices[part]!.splits[index] ?? things.length))
        if (!otherwise.has(thing.sentence.index)) otherwise.set(thing.sentence.index, null);
    });
  });
  return { after, lone, otherwise };
}

/** Which place each thing of a stretch is given, by its sentence. */
function placesOf({ anchors, gaps }: Stretch, { splits }: Choice): Map<number, number> {
  const places = new Map<number, number>();
  gaps.forEach((things, index) => {
    const split = splits[index] ?? things.length;
    things.forEach((thing, at) => {
      const anchor = at < split ? anchors[index - 1] : anchors[index];
      if (anchor?.sort === 'place') places.set(thing.sentence.index, anchor.place.distance.feet);
    });
  });
  return places;
}

function laidOut(parts: readonly Stretch[], choices: readonly Choice[]): Pick<PlacePlan, 'after' | 'lone'> {
  const after = new Map<number, { place: PhraseOf<'distance'>; sentence: number }>();
  const lone = new Map<number, 'before' | 'next' | 'both'>();
  parts.forEach(({ anchors, gaps }, part) => {
    gaps.forEach((things, index) => {
      const split = choices[part]!.splits[index] ?? things.length;
      const before = anchors[index - 1];
      const place = anchors[index];
      if (before?.sort === 'place' && split > 0)
        lone.set(before.sentence.index, lone.has(before.sentence.index) ? 'both' : 'next');
      if (place?.sort !== 'place') return;
      const taken = things
        .slice(split)
        .filter((thing) => place.sentence.index - thing.sentence.index <= REACH_SENTENCES);
      if (taken.length > 0) lone.set(place.sentence.index, 'before');
      for (const thing of taken)
        after.set(thing.sentence.index, { place: place.place, sentence: place.sentence.index });
    });
  });
  return { after, lone };
}
