/** A material or a size stated of the pipe: the first of the run, a correction of what was said, or a new pipe. */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import {
  addChange,
  addPipeItem,
  addSizeOfNewPipe,
  correctChange,
  fillDiameter,
  isPlaced,
  placeOf,
  takesBack,
} from './add-pipe.ts';
import { endsAfter, fromHere, saysIs } from './change-words.ts';
import { sizeKinds } from './kind-roles.ts';
import type { MaterialPhrase } from './pipe-words.ts';
import type { SentenceClaims } from './read-claims.ts';
import { own, type Reading, type RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

const saysWhatItIs =
  / (it 's|it is|that 's|we 're|becomes|now|here|must be|is|we 've got|you 've got|you got|we have|you have|there 's|then|after|below|past|beyond|behind|outside) /;
const isShort = (sentence: Sentence): boolean => sentence.to - sentence.from <= SHORT_TOKENS;

/** "It's concrete from now on": the material turns here, though no verb says so; "lead pipe from here" says what the pipe is. */
const turnsHere = /^(?!.*\bpipe\b).*\bfrom (here|there|now)( on)?\b(?! (on )?out)/;

/** "Sorry, PVC." is no longer than this. */
const TAKEN_BACK_TOKENS = 6;
/** A statement of a pipe and its place alone is no longer than this. */
const SHORT_TOKENS = 8;

export function addPipe(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  material: MaterialPhrase,
  diameters: readonly PhraseOf<'diameter'>[],
  found: SentenceClaims,
  isRunTalk: boolean,
): boolean {
  const size = diameters.at(-1)?.inches ?? null;
  const isFirst = run.material === null && run.diameterIn === null;
  const focused = reading.focus.at(-1);
  const isFresh =
    focused !== undefined &&
    (focused.kind === 'pipe' || focused.kind === 'material-change') &&
    sentence.index - reading.focusSentence <= 4;
  const allPlaces = phrasesOf(sentence.phrases, 'distance').filter((phrase) => phrase.distance.feet > 0);
  const starts = allPlaces.filter((phrase) => phrase.distance.isEnd !== true);
  const places = starts.length > 0 ? starts : allPlaces;
  const isFragment = sentence.to - sentence.from <= 5;
  // "Four inch clay. PVC at twenty two feet." is another pipe, not the first one put right.
  const isPlacedAnew =
    run.material !== null &&
    run.material !== material.material &&
    reading.isCorrecting === null &&
    sentence.to - sentence.from <= SHORT_TOKENS &&
    starts.length > 0 &&
    !/\b(first|for|no|sorry|actually)\b/.test(sentence.text);
  // "Forty one. The clay is done. It's PVC.": a place was said since, so this is no correction of the first pipe.
  const isEnding = endsAfter.test(textOf(reading.phrases.tokens, material.to, Math.min(sentence.to, material.to + 4)));
  if (isEnding && run.material === material.material) return false;
  const isBesidePlace =
    run.material !== null &&
    run.material !== material.material &&
    reading.isCorrecting === null &&
    reading.pending !== null &&
    reading.pending.feet > 0 &&
    reading.pending.sentence > reading.focusSentence;
  // A correction or a repeat of what was just said of the pipe.
  if (
    isFresh &&
    focused.kind === 'pipe' &&
    (places.length === 0 || focused.at === 0) &&
    !isPlacedAnew &&
    !isBesidePlace &&
    !/\b(now|from here|from there|from that)\b/.test(sentence.text) &&
    (focused.fields.material === null ||
      focused.fields.material === material.material ||
      reading.isCorrecting !== null ||
      isFragment ||
      /\b(no|sorry|actually|so)\b/.test(sentence.text))
  ) {
    if (focused.fields.material !== material.material && focused.fields.material !== null)
      focused.corrected.push({ field: 'material', was: focused.fields.material, from: sentence.from, to: sentence.to });
    focused.fields.material = material.material;
    run.material = material.material;
    if (size !== null) {
      focused.fields.diameterIn = size;
      run.diameterIn = size;
    }
    reading.focusSentence = sentence.index;
    own(reading, sentence.from, sentence.to, { sort: 'item', item: focused, isAgain: false });
    return true;
  }
  // "Clay to ABS at eighteen. Sorry, PVC."
  if (
    isFresh &&
    focused.kind === 'material-change' &&
    focused.fields.fromMaterial !== material.material &&
    takesBack(sentence) &&
    sentence.to - sentence.from <= TAKEN_BACK_TOKENS
  ) {
    correctChange(focused, run, sentence, material.material);
    own(reading, sentence.from, sentence.to, { sort: 'item', item: focused, isAgain: true });
    return true;
  }
  if (
    isFresh &&
    focused.kind === 'material-change' &&
    focused.fields.toMaterial === material.material &&
    places.length === 0
  ) {
    if (size !== null) addSizeOfNewPipe(reading, sentence, run, focused, size);
    else own(reading, sentence.from, sentence.to, { sort: 'item', item: focused, isAgain: true });
    return true;
  }
  if (isFirst) {
    const place = places[0] ?? null;
    const spansFirst =
      /\b(first|for)\b/.test(sentence.text) ||
      isRunTalk ||
      (place !== null && place.from > material.to && run.furthest === 0);
    const at =
      place === null || spansFirst || (run.furthest === 0 && !fromHere.test(sentence.text) && place.distance.feet < 1)
        ? 0
        : place.distance.feet;
    const isLate = run.furthest > 3 && place === null && !spansFirst;
    addPipeItem(
      reading,
      sentence,
      run,
      material,
      size,
      isLate ? 0 : at,
      place !== null && at > 0 ? 'spoken' : 'track',
      isLate ? 'first pipe named late' : '<pipe> at the start',
      0,
      isLate,
    );
    return true;
  }
  if (run.material === material.material && (size === null || size === run.diameterIn || run.diameterIn === null))
    return run.diameterIn === null && size !== null && fillDiameter(reading, run, size);
  const saysFromHere = fromHere.test(sentence.text);
  const hasPlace = isPlaced(reading, sentence);
  const isPatched =
    found.claims.some((claim) => claim.kind === 'patch') ||
    (focused?.kind === 'patch' && sentence.index - reading.focusSentence <= 2);
  const saysNew =
    isPlacedAnew ||
    saysFromHere ||
    (hasPlace
      ? isShort(sentence) || saysWhatItIs.test(` ${sentence.text} `)
      : saysIs.test(textOf(reading.phrases.tokens, Math.max(sentence.from, material.from - 8), material.from)));
  if (!saysNew || (isPatched && !saysFromHere)) return false;
  // Another pipe, with a place, is where it changes.
  const isPieced = found.claims.some(({ kind }) => kind === 'coupling' || kind === 'patch');
  const saysTurn =
    !saysFromHere || turnsHere.test(sentence.text) || (size === null && !isPieced && !/\bpipe\b/.test(sentence.text));
  if (saysTurn && run.material !== null && run.material !== material.material)
    return addChange(
      reading,
      sentence,
      run,
      { fromMaterial: run.material, toMaterial: material.material, phrases: [material] },
      diameters,
      found,
    );
  const placing = placeOf(reading, sentence, found, { from: material.from, to: material.to });
  addPipeItem(
    reading,
    sentence,
    run,
    material,
    size,
    placing.at,
    placing.basis,
    placing.rule,
    placing.sentencesBack,
    placing.isGuess,
  );
  return true;
}

export function addDiameter(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  diameters: readonly PhraseOf<'diameter'>[],
  found: SentenceClaims,
): boolean {
  const size = diameters.at(-1)!;
  const focused = reading.focus.at(-1);
  // "Four inch. Well, is it three? It's three. Three inch."
  const isBare = sentence.to - sentence.from <= SHORT_TOKENS / 2 && found.claims.length === 0;
  const isFresh = focused !== undefined && sentence.index - reading.focusSentence <= (isBare ? 3 : 2);
  const isElsewhere =
    reading.isCorrecting === null &&
    run.diameterIn !== null &&
    phrasesOf(sentence.phrases, 'distance').some((place) => place.distance.feet > (focused?.at ?? 0));
  // Where a fitting that changes the size is named, the sizes are those of its two ends.
  if (found.claims.some((claim) => sizeKinds.has(claim.kind)) && !fromHere.test(sentence.text)) return false;
  if (isFresh && focused.kind === 'pipe' && !isElsewhere) {
    if (focused.fields.diameterIn !== null && focused.fields.diameterIn !== size.inches)
      focused.corrected.push({ field: 'diameterIn', was: focused.fields.diameterIn, from: size.from, to: size.to });
    focused.fields.diameterIn = size.inches;
    run.diameterIn = size.inches;
    reading.focusSentence = sentence.index;
    own(reading, size.from, size.to, { sort: 'item', item: focused, isAgain: false });
    return true;
  }
  if (isFresh && focused.kind === 'material-change' && found.claims.length === 0) {
    addSizeOfNewPipe(reading, sentence, run, focused, size.inches);
    return true;
  }
  if (run.material === null && run.diameterIn === null && !run.hasFindings) {
    addPipeItem(reading, sentence, run, null, size.inches, 0, 'track', '<pipe> at the start', 0, false);
    return true;
  }
  const saysNew =
    fromHere.test(sentence.text) ||
    /\b(goes|steps|bumps|opens|necks|down to|up to|becomes|now|pipe is|pipe from)\b/.test(sentence.text);
  if (!saysNew || run.diameterIn === size.inches) return false;
  const placing = placeOf(reading, sentence, found, { from: size.from, to: size.to });
  addPipeItem(
    reading,
    sentence,
    run,
    null,
    size.inches,
    placing.at,
    placing.basis,
    placing.rule,
    placing.sentencesBack,
    placing.isGuess,
  );
  return true;
}
