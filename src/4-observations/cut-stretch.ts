/**
 * Where a recogniser printed no stops, statements are found by what belongs together: a new statement begins where the place
 * changes from one thing to the next.
 */
import type { Phrase } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { clauseStart, pausesAt } from './clause-start.ts';
import { runTalk } from './cut-run-talk.ts';
import { arrange, breaksAt, groupPlaces, groupThings, isPlace, isThing, type Span } from './pair-places.ts';
import { isOpening } from './speaker-habit.ts';

const denials = /^(no|didn't|don't)$/;
/** The tokens at which new statements begin inside a stretch without stops. */
export function softStarts(
  tokens: readonly Token[],
  from: number,
  to: number,
  phrases: readonly Phrase[],
  placeFirst: boolean,
): number[] {
  const placed = phrases.filter(isPlace);
  const things = groupThings(tokens, phrases, placed);
  const places = groupPlaces(tokens, placed);
  const openings = new Set(
    phrases.filter((phrase) => isThing(phrase) && isOpening(phrase, phrases)).map((phrase) => phrase.from),
  );
  const found = things.filter((thing) => !openings.has(thing.from));
  const arranged = arrange(tokens, found, places, placeFirst).given;
  const given = things.map((thing) => (openings.has(thing.from) ? -1 : (arranged[found.indexOf(thing)] ?? -1)));
  const starts = new Set<number>();
  for (let index = 1; index < things.length; index += 1) {
    if (given[index] === given[index - 1] && given[index] !== -1) continue;
    const thing = things[index]!;
    const before = things[index - 1]!;
    const place = given[index] === -1 ? undefined : places[given[index]!];
    const previousPlace = given[index - 1] === -1 ? undefined : places[given[index - 1]!];
    const floor = Math.max(before.to, previousPlace && previousPlace.from < thing.from ? previousPlace.to : 0);
    const opensAtPlace = place !== undefined && place.from < thing.from;
    const at = opensAtPlace ? place.from : thing.from;
    starts.add(clauseStart(tokens, floor, Math.max(at, floor), phrases));
  }
  const turningPoints = new Set(
    phrases
      .filter((phrase) => phrase.family === 'camera' && /^(pull-back|next-run|same-access|summary)$/.test(phrase.cue))
      .map((phrase) => phrase.from),
  );
  const thingStarts = new Set(things.map((thing) => thing.from));
  let hasThing = false;
  for (let at = from; at < to; at += 1) {
    if (starts.has(at)) hasThing = false;
    const opens =
      breaksAt(tokens, at) ||
      (denials.test(tokens[at]?.text ?? '') &&
        !placed.some((place) => place.from === at + 1) &&
        phrases.some((phrase) => phrase.family === 'thing' && phrase.from > at && phrase.from <= at + 3));
    if (turningPoints.has(at)) {
      starts.add(clauseStart(tokens, Math.max(from, at - 4), at, phrases));
      hasThing = false;
    }
    if (opens && hasThing && !isHeld(things, places, given, at)) {
      starts.add(at);
      hasThing = false;
    }
    // Silence between two statements, where it tears no thing from its place.
    if (pausesAt(tokens, at) && !isHeld(things, places, given, at)) {
      starts.add(at);
      hasThing = false;
    }
    if (thingStarts.has(at)) hasThing = true;
  }
  for (const at of itemStarts(tokens, phrases)) starts.add(at);
  // Where a run is announced the announcement is one statement.
  for (const stretch of runTalk(tokens, from, to, phrases)) {
    for (const start of [...starts]) if (start > stretch.from && start < stretch.to) starts.delete(start);
    starts.add(stretch.from).add(stretch.to);
  }
  return [...starts].filter((start) => start > from && start < to && !isTornOff(tokens, start)).sort((a, b) => a - b);
}

/** What is done to an item that was dictated before. */
const amends = /^(strike|amend|amending|amendment|correct|correction|correcting|delete|change|revise|revising)$/;

/** "Item 12 at 40 feet …": each dictated item is a statement. */
const itemStarts = (tokens: readonly Token[], phrases: readonly Phrase[]): number[] =>
  phrases
    .filter(
      (phrase) =>
        phrase.family === 'count' &&
        /^(item|entry|observation|finding)$/.test(tokens[phrase.from - 1]?.text ?? '') &&
        !/^(on|of|for|to|see|with|as|under|from|the|that|this|same)$/.test(tokens[phrase.from - 2]?.text ?? ''),
    )
    .map(({ from }) => (amends.test(tokens[from - 2]?.text ?? '') ? from - 2 : from - 1));

/** "Coming in through | a wye": no statement ends at a word that leads to the next. */
function isTornOff(tokens: readonly Token[], start: number): boolean {
  const before = tokens[start - 1];
  if (before === undefined || before.breakAfter !== 'none') return false;
  if (/^(into|of|the|a|an|with|our|your|my)$/.test(before.text)) return true;
  // "The tub | coming in on a tee": it goes on to say by what.
  const goesOn =
    /^(coming|tying|draining|dumping|hooking|dropping|feeding|emptying) (in|into|off|down) ?(through|on|via|by|with|at|to)? (a|an|the)\b/;
  if (goesOn.test(textOf(tokens, start, start + 4))) return true;
  return /^(through|in|on|at|to|by|from)$/.test(before.text) && /^(a|an|the|our|your)$/.test(tokens[start]?.text ?? '');
}

/** Whether a thing and its place stand on both sides of a token. */
function isHeld(things: readonly Span[], places: readonly Span[], given: readonly number[], at: number): boolean {
  return things.some((thing, index) => {
    const place = given[index] === -1 ? undefined : places[given[index]!];
    return place !== undefined && ((place.to <= at && thing.from >= at) || (thing.to <= at && place.from >= at));
  });
}
