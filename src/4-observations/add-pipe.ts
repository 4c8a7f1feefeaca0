/** Adds what is said of the pipe: a change, a pipe from here on, a size. */
import type { MaterialName } from '../../shared/vocabulary/materials.ts';
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { type Claim, newClaim } from './claim.ts';
import { addItem, newEvidence } from './items.ts';
import { opensRun, turnOfOpening } from './opening-stretch.ts';
import type { MaterialPhrase, Pair } from './pipe-words.ts';
import { placeClaim } from './place-claim.ts';
import type { SentenceClaims } from './read-claims.ts';
import { type Item, isPlaceGuessed, own, PLACE_GUESSED, type Reading, type RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** A place said earlier than this, in sentences, is not that of a pipe named without one. */
const PLACED_SENTENCES = 3;

/** Whether the talk gives a place for what the sentence says of the pipe. */
export function isPlaced(reading: Reading, sentence: Sentence): boolean {
  return (
    phrasesOf(sentence.phrases, 'distance').some((place) => place.distance.feet > 0) ||
    phrasesOf(sentence.phrases, 'relative').some((place) => place.relative.feet !== null) ||
    (reading.pending !== null && sentence.index - reading.pending.sentence <= PLACED_SENTENCES)
  );
}

/** A claim that the pipe is what the words at an anchor say. */
export const pipeClaim = (anchor: { from: number; to: number }, place: PhraseOf<'distance'> | null): Claim => ({
  ...newClaim('pipe', '', anchor),
  place,
  isRelativeNearer: place === null,
});

export function placeOf(
  reading: Reading,
  sentence: Sentence,
  found: SentenceClaims,
  anchor: { from: number; to: number },
): ReturnType<typeof placeClaim> & { tokens: number | null } {
  const all = phrasesOf(sentence.phrases, 'distance');
  const starts = all.filter((phrase) => phrase.distance.isEnd !== true);
  const places = starts.length > 0 ? starts : all;
  const gap = (phrase: { from: number; to: number }): number =>
    phrase.to <= anchor.from ? anchor.from - phrase.to : Math.max(0, phrase.from - anchor.to) + 0.5;
  const nearest = [...places].sort((a, b) => gap(a) - gap(b))[0] ?? null;
  const claimed = found.claims.find((claim) => claim.place !== null || claim.relative !== null);
  const relative = phrasesOf(sentence.phrases, 'relative')[0] ?? claimed?.relative ?? null;
  const claim = { ...pipeClaim(anchor, nearest), relative: nearest ? null : relative };
  return { ...placeClaim(reading, claim, sentence), tokens: nearest ? gap(nearest) : null };
}

function remember(reading: Reading, item: Item, sentence: Sentence): void {
  if (item.at !== 0) reading.lastValue = { item, field: 'at', sentence: sentence.index };
  reading.focus = [...(reading.focusSentence === sentence.index ? reading.focus : []), item];
  reading.focusSentence = sentence.index;
}

export function addChange(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  pair: Pair,
  diameters: readonly PhraseOf<'diameter'>[],
  found: SentenceClaims,
): boolean {
  const from = pair.phrases[0]!.from;
  const to = pair.phrases.at(-1)!.to;
  const told = placeOf(reading, sentence, found, { from, to });
  const turn = turnOfOpening(run, sentence, told.at);
  const placing =
    turn === null
      ? told
      : { ...told, at: turn, basis: 'spoken' as const, rule: 'where the first pipe ends', isGuess: false };
  const known = reading.items.find(
    (item) =>
      item.run === run.n &&
      !item.isWithdrawn &&
      item.kind === 'material-change' &&
      item.fields.toMaterial === pair.toMaterial &&
      (placing.basis !== 'spoken' || item.at === null || placing.at === null || Math.abs(item.at - placing.at) <= 1.1),
  );
  if (known) {
    // "Cast iron to clay, at six, actually."
    const isAnew = phrasesOf(sentence.phrases, 'correction').length > 0 && sentence.index - known.sentence <= 3;
    if (isAnew && placing.basis === 'spoken' && placing.at !== null && known.at !== null && placing.at !== known.at) {
      known.corrected.push({ field: 'at', was: known.at, from: sentence.from, to: sentence.to });
      known.at = placing.at;
      known.evidence.notes.push('weak correction of at');
    }
    known.again.push({ from: sentence.from, to: sentence.to });
    own(reading, sentence.from, sentence.to, { sort: 'item', item: known, isAgain: true });
    return true;
  }
  const misread = changeMisread(reading, sentence, run, pair, placing.at);
  if (misread) {
    correctChange(misread, run, sentence, pair.toMaterial);
    misread.again.push({ from: sentence.from, to: sentence.to });
    own(reading, sentence.from, sentence.to, { sort: 'item', item: misread, isAgain: true });
    return true;
  }
  const size = diameters.at(-1) ?? null;
  const isOpening = opensRun(run, sentence) && placing.at !== null && placing.at > 0 && pair.fromMaterial !== null;
  // "Clay for seven feet, four inch, then cast iron": a size said before what comes then is of the first.
  const isSizeOfFirst = isOpening && size !== null && size.to <= pair.phrases.at(-1)!.from;
  if (isOpening)
    addItem(reading, sentence, {
      kind: 'pipe',
      from,
      to,
      at: 0,
      basis: 'spoken',
      fields: { material: pair.fromMaterial, ...(isSizeOfFirst ? { diameterIn: size.inches } : {}) },
      evidence: newEvidence(sentence, { source: 'computed', rule: '<material> for the first <distance>' }),
    });
  const item = addItem(reading, sentence, {
    kind: 'material-change',
    from,
    to,
    at: placing.at,
    basis: placing.basis,
    fields: {
      fromMaterial: pair.fromMaterial,
      toMaterial: pair.toMaterial,
    },
    evidence: newEvidence(sentence, {
      rule: '<material> to <material>',
      placeRule: placing.rule,
      placeTokens: placing.tokens,
      placeSentences: placing.sentencesBack,
      placesInSentence: phrasesOf(sentence.phrases, 'distance').length,
      isOnWayBack: run.way === 'back',
      isRespelled: pair.phrases.some((phrase) => phrase.respelled !== undefined),
      notes: placing.isGuess ? [PLACE_GUESSED] : [],
    }),
    respelled: pair.phrases.flatMap((phrase) => (phrase.respelled ? [phrase.respelled] : [])),
  });
  run.material = pair.toMaterial;
  run.diameterIn = null;
  remember(reading, item, sentence);
  own(reading, from, to, { sort: 'item', item, isAgain: false });
  if (size !== null && !isSizeOfFirst) addSizeOfNewPipe(reading, sentence, run, item, size.inches);
  return true;
}

/** "No, that's ABS.", with no place of its own. */
export const takesBack = (sentence: Sentence): boolean =>
  /\b(actually|sorry|rather)$|^(no|nope|wait|sorry|correction|actually|hang on|hold on|scratch that|well no|i mean|i meant)\b/.test(
    sentence.text,
  ) && phrasesOf(sentence.phrases, 'distance').length === 0;

/** The pipe turned into another material than was said first. */
export function correctChange(change: Item, run: RunState, { from, to }: Sentence, material: MaterialName): void {
  change.corrected.push({ field: 'toMaterial', was: change.fields.toMaterial, from, to });
  change.fields.toMaterial = material;
  run.material = material;
}

/** So many sentences on, a change may be told anew with another material. */
const ANEW_SENTENCES = 3;

/** "Clay to ABS. No, too smooth. Clay to PVC.": at one place the pipe changes once. */
function changeMisread(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  pair: Pair,
  at: number | null,
): Item | undefined {
  const last = reading.items.findLast(
    (item) => item.run === run.n && !item.isWithdrawn && item.kind === 'material-change',
  );
  const isSame =
    last !== undefined &&
    last.at === at &&
    (last.fields.fromMaterial === pair.fromMaterial ||
      (last.fields.toMaterial === pair.fromMaterial && takesBack(sentence))) &&
    sentence.index - last.sentence <= ANEW_SENTENCES;
  return isSame ? last : undefined;
}

/** A size said of the pipe after a change is a pipe of its own beside the change. */
export function addSizeOfNewPipe(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  change: Item,
  inches: number,
): void {
  const material = change.fields.toMaterial;
  const size = phrasesOf(sentence.phrases, 'diameter').at(-1);
  const item = addItem(reading, sentence, {
    kind: 'pipe',
    from: size?.from ?? change.from,
    to: size?.to ?? change.to,
    at: change.at,
    basis: change.basis,
    fields: { material, diameterIn: inches },
    evidence: newEvidence(sentence, {
      rule: '<size> of the new pipe',
      placeRule: change.evidence.placeRule,
      placeSentences: sentence.index - change.sentence,
      notes: isPlaceGuessed(change) ? [PLACE_GUESSED] : [],
    }),
  });
  run.diameterIn = inches;
  remember(reading, item, sentence);
  own(reading, item.from, item.to, { sort: 'item', item, isAgain: false });
}

export function addPipeItem(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  material: MaterialPhrase | null,
  size: number | null,
  at: number | null,
  basis: Item['basis'],
  rule: string,
  sentencesBack: number,
  isGuess: boolean,
): void {
  const span = material ?? phrasesOf(sentence.phrases, 'diameter')[0];
  const item = addItem(reading, sentence, {
    kind: 'pipe',
    from: span?.from ?? sentence.from,
    to: span?.to ?? sentence.to,
    at,
    basis,
    fields: { material: material?.material ?? null, diameterIn: size },
    evidence: newEvidence(sentence, {
      rule: '<pipe>',
      placeRule: rule,
      placeSentences: sentencesBack,
      placesInSentence: phrasesOf(sentence.phrases, 'distance').length,
      isOnWayBack: run.way === 'back',
      isRespelled: material?.respelled !== undefined,
      notes: isGuess ? [PLACE_GUESSED] : [],
    }),
    respelled: material?.respelled ? [material.respelled] : [],
  });
  if (material) run.material = material.material;
  if (size !== null || material) run.diameterIn = size;
  remember(reading, item, sentence);
  own(reading, item.from, item.to, { sort: 'item', item, isAgain: false });
}

export function fillDiameter(reading: Reading, run: RunState, size: number): boolean {
  const pipe = reading.items.findLast((item) => item.run === run.n && !item.isWithdrawn && item.kind === 'pipe');
  if (!pipe || pipe.fields.diameterIn !== null) return false;
  pipe.fields.diameterIn = size;
  run.diameterIn = size;
  return true;
}
