/** Turns a way from something named before ("three feet past the tee", "same spot", "halfway between them") into feet. */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Claim } from './claim.ts';
import type { Placing } from './placing.ts';
import { type Item, liveItems, type Reading, type RunState } from './reading.ts';
import { sentenceAt } from './sentence.ts';
import { stem } from './shared-words.ts';

const ofStretch = /\b(stretch|section|length|few feet|all through|all along)\b/;

export function resolveRelative(
  reading: Reading,
  run: RunState,
  phrase: PhraseOf<'relative'>,
  claim: Claim | null,
): Placing | null {
  const { relative } = phrase;
  const make = (at: number, isGuess: boolean): Placing => ({
    at: Math.round(at * 1000) / 1000,
    to: null,
    basis: 'relative',
    rule: phrase.rule,
    sentencesBack: 0,
    isGuess,
  });
  if (relative.shape === 'same') {
    // "Thirty four, a hole, and a void behind it": the place said in the same breath.
    if (claim?.place && claim.place.from < phrase.from)
      return { ...make(claim.place.distance.feet, false), basis: 'spoken', rule: claim.place.rule };
    const feet = reading.pending?.feet ?? reading.focus.at(-1)?.at ?? null;
    const last = reading.focus.at(-1);
    // "Scale with it, same stretch.": both ends are the same.
    const to = ofStretch.test(phrase.rule) && last?.at === feet ? last.fields.to : null;
    return feet === null ? null : { ...make(feet, false), to, basis: 'nearby' };
  }
  if (relative.anchor === null) {
    const known = reading.steps.get(phrase.from);
    if (known !== undefined) return make(known, false);
    const base = basePlace(reading, run, phrase);
    const feet = relative.feet ?? 0;
    const isFromOpening = isAlongLine(reading.phrases.tokens, phrase) && feet > base;
    reading.steps.set(phrase.from, isFromOpening ? feet : base + feet);
    return isFromOpening ? make(feet, base > 0) : make(base + feet, false);
  }
  const anchors = anchorPlaces(reading, run, relative.anchor, claim);
  if (relative.shape === 'between' && anchors.length >= 2)
    return make((anchors[0]!.feet + anchors[1]!.feet) / 2, false);
  if (relative.shape === 'between') {
    const two = lastTwo(reading, run);
    const isThem = /^(them|the two|those|these|both|that)\b/.test(
      textOf(reading.phrases.tokens, relative.anchor.from, relative.anchor.to),
    );
    return two && isThem ? make((two[0] + two[1]) / 2, false) : null;
  }
  const anchorWords = textOf(reading.phrases.tokens, relative.anchor.from, relative.anchor.to);
  const meansLast =
    anchorWords === '' || /^(it|that|this|there)\b/.test(anchorWords) || / (it|that|this)$/.test(phrase.rule);
  if (relative.shape === 'middle' || relative.shape === 'start' || relative.shape === 'end') {
    const anchor = anchors[0] ?? (meansLast ? lastStretch(reading, run) : null);
    if (!anchor || anchor.toFeet === null) return null;
    const { feet, toFeet } = anchor;
    return make({ start: feet, end: toFeet, middle: (feet + toFeet) / 2 }[relative.shape], false);
  }
  if (relative.shape === 'inside') {
    const named = liveItems(reading, run.n).find(
      (item) => item.at !== null && item.kind.split('-').some((word) => anchorWords.split(' ').includes(word)),
    );
    const feet = anchors[0]?.feet ?? named?.at ?? (meansLast ? lastStretch(reading, run)?.feet : undefined);
    return make((feet ?? basePlace(reading, run, phrase)) + (relative.feet ?? 0), feet === undefined);
  }
  const anchor = anchors[0];
  // "Six feet from the cleanout": the opening the camera went in by is where the counter begins.
  const isFromAccess =
    anchor === undefined && relative.feet !== null && relative.feet >= 0 && isAccess(run, anchorWords);
  if (isFromAccess) return make(relative.feet ?? 0, false);
  if (anchor === undefined)
    return relative.feet === null ? null : make(basePlace(reading, run, phrase) + relative.feet, true);
  const base = (relative.feet ?? 0) > 0 && anchor.toFeet !== null ? anchor.toFeet : anchor.feet;
  // On the way upstream "before" and "past" still count along the camera's way.
  return make(base + (relative.feet ?? 0), false);
}

/** "Thirty feet down the line", "nine feet down": counted from the opening where it lies beyond all that was seen. */
const isAlongLine = (tokens: readonly Token[], { from, to }: PhraseOf<'relative'>): boolean =>
  /^(down|along|up|out|in) the (line|pipe)|^\S+ (feet|foot) down$/.test(textOf(tokens, to - 3, to)) &&
  !/^(another|more|further|next)$/.test(tokens[from - 1]?.text ?? '');

/** The two different places that were last given to things. */
function lastTwo(reading: Reading, run: RunState): [number, number] | null {
  const places = liveItems(reading, run.n).flatMap((item) => (item.at === null ? [] : [item.at]));
  const last = places.at(-1);
  const other = places.findLast((feet) => feet !== last);
  return last === undefined || other === undefined ? null : [other, last];
}

/** What "another five feet" is counted from: the place said before it in the same breath, or the last one given. */
const basePlace = (reading: Reading, run: RunState, phrase: PhraseOf<'relative'>): number => {
  const sentence = sentenceAt(reading.sentences, phrase.from);
  const said = phrasesOf(sentence?.phrases ?? [], 'distance').findLast((place) => place.to <= phrase.from);
  const { latest } = reading;
  if (
    latest &&
    latest.sentence === sentence?.index &&
    latest.run === run.n &&
    latest.at !== null &&
    latest.from < phrase.from
  )
    return latest.fields.to ?? latest.at;
  if (said) return said.distance.toFeet ?? said.distance.feet;
  if (reading.pending) return reading.pending.toFeet ?? reading.pending.feet;
  const last = reading.focus.at(-1);
  return last && last.run === run.n && last.at !== null ? (last.fields.to ?? last.at) : run.here;
};

/** Whether words name the opening the camera went in by. */
const isAccess = (run: RunState, words: string): boolean => {
  const named = words.split(' ').find((word) => !/^(the|my|our|your|this|that|a)$/.test(word));
  const access = run.access?.toLowerCase().split(' ') ?? [];
  return named !== undefined && access.includes(named);
};

interface Anchor {
  readonly feet: number;
  readonly toFeet: number | null;
}

function lastStretch(reading: Reading, run: RunState): Anchor | null {
  const item = liveItems(reading, run.n).findLast((candidate) => candidate.fields.to !== null && candidate.at !== null);
  return item && item.at !== null ? { feet: item.at, toFeet: item.fields.to } : null;
}

function anchorPlaces(
  reading: Reading,
  run: RunState,
  anchor: { from: number; to: number },
  claim: Claim | null,
): Anchor[] {
  const { tokens, phrases } = reading.phrases;
  const inside = phrases.filter((phrase) => phrase.from >= anchor.from && phrase.to <= anchor.to + 1);
  const items = liveItems(reading, run.n).filter((item) => item.at !== null);
  const found: (Anchor & { token: number })[] = [];
  for (const phrase of inside) {
    if (phrase.family === 'distance')
      found.push({ feet: phrase.distance.feet, toFeet: phrase.distance.toFeet, token: phrase.from });
    if (phrase.family === 'material') {
      const begun = items.findLast(
        ({ fields }) => fields.material === phrase.material || fields.toMaterial === phrase.material,
      );
      if (begun && begun.at !== null) found.push({ feet: begun.at, toFeet: null, token: phrase.from });
    }
    if (phrase.family !== 'thing' || (claim && phrase.from === claim.from)) continue;
    const words = tokens.slice(Math.max(anchor.from, phrase.from - 2), phrase.from).map((token) => token.text);
    const item = chooseItem(
      items.filter((candidate) => candidate.kind === phrase.kind),
      words,
    );
    if (item && item.at !== null) found.push({ feet: item.at, toFeet: item.fields.to, token: phrase.from });
  }
  const text = tokens.slice(anchor.from, anchor.to).map((token) => token.text);
  for (const landmark of run.landmarks) {
    const words = landmark.words.split(' ');
    const at = text.findIndex((_, index) => words.every((word, offset) => text[index + offset] === word));
    if (at >= 0) found.push({ feet: landmark.feet, toFeet: null, token: anchor.from + at });
  }
  if (found.length === 0) {
    const item = spokenAs(reading, items, text);
    if (item && item.at !== null) found.push({ feet: item.at, toFeet: item.fields.to, token: anchor.from });
  }
  return found.sort((a, b) => a.token - b.token);
}

const noName =
  /^(the|that|this|those|these|it|them|there|here|a|an|my|our|your|first|second|third|last|one|little|big|old|same|end|start|edge|of|where|was|is|'s|we|i|and|at|to|in|on|from|past|feet|foot|right|left|top|bottom)$/;

/** "Three past that egg": what was spoken of with the same word, though the word names no kind. */
function spokenAs(reading: Reading, items: readonly Item[], words: readonly string[]): Item | undefined {
  const { tokens } = reading.phrases;
  const names = words.filter((word) => word.length > 2 && !noName.test(word)).map(stem);
  if (names.length === 0) return undefined;
  const isNamedIn = (from: number, to: number): boolean =>
    tokens.slice(from, to).some(({ text }) => names.includes(stem(text)));
  return (
    items.findLast((item) => [item, ...item.again].some(({ from, to }) => isNamedIn(from, to))) ??
    // "It's squashed like a football": named in the same breath, not as the thing.
    items.findLast((item) => {
      const said = reading.sentences[item.sentence];
      return said !== undefined && isNamedIn(said.from, said.to);
    })
  );
}

function chooseItem(items: readonly Item[], words: readonly string[]): Item | undefined {
  if (words.includes('first')) return items[0];
  if (words.includes('second')) return items[1];
  if (words.includes('third')) return items[2];
  return items.at(-1);
}
