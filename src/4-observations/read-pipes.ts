/**
 * What the pipe is, and where it turns into another: from material words, nominal sizes and the verbs between them.
 * "Goes to clay at 16" is a material change; "it's clay from here on" and "we're in clay now" say what the pipe is.
 */
import type { MaterialName } from '../../shared/vocabulary/materials.ts';
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import type { SentenceClaims } from './claim.ts';
import { addItem, newEvidence } from './items.ts';
import { placeClaim } from './place-claim.ts';
import { currentRun, type Item, own, type Reading, type RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

const changeVerb =
  /\b(goes|go|going|went|turns|turn|turned|becomes|become|changes|change|changed|changing|switches|switch|switched|transitions|transition|transitioned|transitioning|converts|converted|gives way|gave way|over|meets|tied|ties|tie|quits|quit|stops|stop|ends|end|left off|starts|start|finish|leaves|hands off|swaps|swapped|spliced|drops into|picks up|begins|begin|turning|adapts|adapted|jumps|moves|runs out|takes over|comes off|trades|shifts|flips|cut over|hits|connects|joins|connected|joined|leave|leaving|butts|into|to)\b/;
const firmChange =
  /\b(goes|go|going|went|turns|turned|turning|becomes|become|changes|change|changed|changing|switches|switched|transitions|transition|transitioned|transitioning|converts|gives way|gave way|takes over|quits|quit|swaps|swapped|adapts|hands off|flips|trades|picks up|meets|tied|ties|over to|cut over|runs out|stops|ends|begins|starts|start|where)\b/;
const fromHere =
  /\b(from here|from there|from that point|from this point|from then on|here on|there on|after that|from now on|now we 're|now it 's|and now|again|we 're in|i 'm in|we are in|in here|back in|back to|back into|after it|the rest|rest of the way|on out|past that|onward|beyond)\b/;
const definite = /^(the|this|that|your|our|these|those|of|in|any|like|with|no|not|for|than|or|was|were)$/;
const notPipes =
  /^(cleanout|cap|plug|stack|vent|riser|fitting|guy|days|one|line was|ever|everywhere|was|came|always|never|lasts|lasted|tends|usually|doesn't|does|don't|house|houses|pipe ever|couplings|coupling|tee|wye|elbow|bend|sleeve|band|trap|tap|patch|repair|splice|insert|cover|lid|shards|pieces|chunks|dust|shavings|soil|ground|dirt|rusts|scales|cracks|breaks|rots|joint|joints|flange)$/;

/** How near a cue must stand to bear on a material, in tokens. */
const NEAR_TOKENS = 12;

type MaterialPhrase = PhraseOf<'material'>;

function isStated(reading: Reading, phrase: MaterialPhrase): boolean {
  const { tokens } = reading.phrases;
  const before = tokens[phrase.from - 1];
  const two = tokens[phrase.from - 2];
  const isJoinedBefore = before !== undefined && before.breakAfter === 'none';
  const after = (tokens[phrase.to - 1]?.breakAfter ?? 'stop') === 'none' ? (tokens[phrase.to]?.text ?? '') : '';
  if (notPipes.test(after)) return false;
  if (!isJoinedBefore) return true;
  if (before.text === 'in' || before.text === 'of')
    return /^('re|'m|are|am|is|here|now|back|start|off|length|piece|run)$/.test(two?.text ?? '');
  return !definite.test(before.text);
}

const distinct = (materials: readonly MaterialPhrase[]): MaterialPhrase[] =>
  materials.filter((phrase, index) => materials.findIndex((other) => other.material === phrase.material) === index);

/** Reads the pipe statements of a sentence, if any. */
export function readPipes(reading: Reading, sentence: Sentence, found: SentenceClaims, isRunTalk: boolean): boolean {
  const run = currentRun(reading);
  if (!run || reading.isSummary || sentence.isQuestion) return false;
  const all = phrasesOf(sentence.phrases, 'material').filter((phrase) => phrase.material !== 'liner');
  const diameters = phrasesOf(sentence.phrases, 'diameter');
  if (all.length === 0 && diameters.length === 0) return false;
  const first = all[0] ?? diameters[0]!;
  const cues = phrasesOf(sentence.phrases, 'assertion')
    .filter((phrase) => Math.abs(phrase.from - first.from) <= NEAR_TOKENS)
    .map((phrase) => phrase.cue.axis);
  const places = phrasesOf(sentence.phrases, 'distance');
  const isElsewhere =
    cues.some((axis) => axis === 'past' || axis === 'elsewhere' || axis === 'planned') && places.length === 0;
  if (
    isElsewhere ||
    (cues.includes('general') && places.length === 0 && run.material !== null && !fromHere.test(sentence.text))
  )
    return false;
  if (run.way === 'back' && places.length === 0) return false;
  const denied = deniedMaterials(sentence, all);
  const materials = distinct(all.filter((phrase) => !denied.has(phrase)));
  const pair = changePair(reading, sentence, run, materials, all);
  if (pair) return addChange(reading, sentence, run, pair, diameters, found);
  const stated = materials.filter((phrase) => isStated(reading, phrase));
  const material = lastStated(stated);
  if (material) return addPipe(reading, sentence, run, material, diameters, found, isRunTalk);
  if (diameters.length > 0 && materials.length === 0) return addDiameter(reading, sentence, run, diameters, found);
  return false;
}

/** "not clay", "no, that's not PVC": materials that are named to be ruled out. */
function deniedMaterials(sentence: Sentence, materials: readonly MaterialPhrase[]): Set<MaterialPhrase> {
  const denying = phrasesOf(sentence.phrases, 'assertion').filter(
    (cue) => cue.cue.axis === 'denied' && cue.cue.reaches === 'forward',
  );
  return new Set(
    materials.filter((phrase) =>
      denying.some((cue) => cue.to <= phrase.from && phrase.from - cue.to <= 2 && cue.rule !== 'no'),
    ),
  );
}

const lastStated = (stated: readonly MaterialPhrase[]): MaterialPhrase | null => stated.at(-1) ?? null;

interface Pair {
  readonly fromMaterial: MaterialName | null;
  readonly toMaterial: MaterialName;
  readonly phrases: readonly MaterialPhrase[];
}

function changePair(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  materials: readonly MaterialPhrase[],
  all: readonly MaterialPhrase[],
): Pair | null {
  const { tokens } = reading.phrases;
  const hasChangeWord = sentence.phrases.some(
    (phrase) => phrase.family === 'thing' && phrase.kind === 'material-change',
  );
  if (materials.length >= 2) {
    const [first, second] = [materials[0]!, materials[1]!];
    const between = tokens
      .slice(first.to, second.from)
      .map((token) => token.text)
      .join(' ');
    const after = tokens
      .slice(second.to, Math.min(sentence.to, second.to + 6))
      .map((token) => token.text)
      .join(' ');
    const before = tokens
      .slice(sentence.from, first.from)
      .map((token) => token.text)
      .join(' ');
    const isChange =
      changeVerb.test(between) ||
      hasChangeWord ||
      firmChange.test(before) ||
      (/\band\b/.test(between) && firmChange.test(after));
    if (isChange && !/\b(not|isn't|instead of|rather than|or)\b/.test(between)) {
      // "plastic, and before that clay", "tied to the old clay with PVC": order of words is the order of the pipe.
      const known = run.material;
      const isTold = reading.items.some(
        (item) =>
          item.run === run.n &&
          !item.isWithdrawn &&
          item.kind === 'material-change' &&
          item.fields.toMaterial === second.material &&
          sentence.index - item.sentence <= 4,
      );
      const isReversed = !isTold && known !== null && second.material === known && first.material !== known;
      const [from, to] = isReversed ? [second, first] : [first, second];
      return { fromMaterial: from.material, toMaterial: to.material, phrases: materials };
    }
    return null;
  }
  const only = materials[0];
  if (!only || run.material === null || run.material === only.material) return null;
  const before = tokens
    .slice(Math.max(sentence.from, only.from - 12), only.from)
    .map((token) => token.text)
    .join(' ');
  const after = tokens
    .slice(only.to, Math.min(sentence.to, only.to + 5))
    .map((token) => token.text)
    .join(' ');
  const goesTo =
    /\b(goes|go|going|went|turns|turned|turning|changes|changed|changing|switches|switched|transitions|transition|converts|becomes|become|over|gives way|adapts|swaps|cut over|flips|ties|tied|tie|turn|change|switch|shifts|moves|jumps)[\w' ]{0,32}$/.test(
      before,
    ) && !/\bgoing (up|down|out)$/.test(before);
  const startsHere =
    /^(starts|begins|picks up|takes over|start|begin|now starts)\b/.test(after) ||
    /\b(start|starts|begins)$/.test(before);
  if (goesTo || hasChangeWord || (startsHere && all.length === 1))
    return { fromMaterial: run.material, toMaterial: only.material, phrases: [only] };
  return null;
}

function placeOf(
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
  const claim = {
    kind: 'pipe' as const,
    source: 'word' as const,
    rule: '',
    ...anchor,
    things: [anchor],
    respelled: [],
    place: nearest,
    relative: nearest ? null : relative,
    isRelativeNearer: nearest === null,
    fields: {},
    count: 1,
    placeTokens: null,
    isRejected: false,
  };
  return { ...placeClaim(reading, claim, sentence), tokens: nearest ? gap(nearest) : null };
}

function remember(reading: Reading, item: Item, sentence: Sentence): void {
  if (item.at !== 0) reading.lastValue = { item, field: 'at', sentence: sentence.index };
  reading.focus = [...(reading.focusSentence === sentence.index ? reading.focus : []), item];
  reading.focusSentence = sentence.index;
}

function addChange(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  pair: Pair,
  diameters: readonly PhraseOf<'diameter'>[],
  found: SentenceClaims,
): boolean {
  const from = pair.phrases[0]!.from;
  const to = pair.phrases.at(-1)!.to;
  const placing = placeOf(reading, sentence, found, { from, to });
  const known = reading.items.find(
    (item) =>
      item.run === run.n &&
      !item.isWithdrawn &&
      item.kind === 'material-change' &&
      item.fields.toMaterial === pair.toMaterial &&
      (placing.basis !== 'spoken' || item.at === null || placing.at === null || Math.abs(item.at - placing.at) <= 1.1),
  );
  if (known) {
    known.again.push({ from: sentence.from, to: sentence.to });
    own(reading, sentence.from, sentence.to, { sort: 'item', item: known, isAgain: true });
    return true;
  }
  if (
    run.material === null &&
    placing.at !== null &&
    placing.at > 0 &&
    pair.fromMaterial !== null &&
    /\bfirst\b/.test(sentence.text)
  ) {
    addItem(reading, sentence, {
      kind: 'pipe',
      from,
      to,
      at: 0,
      basis: 'spoken',
      fields: { material: pair.fromMaterial },
      evidence: newEvidence(sentence, { source: 'computed', rule: '<material> for the first <distance>' }),
    });
  }
  const size = diameters.at(-1) ?? null;
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
      notes: placing.isGuess ? ['place guessed'] : [],
    }),
    respelled: pair.phrases.flatMap((phrase) => (phrase.respelled ? [phrase.respelled] : [])),
  });
  run.material = pair.toMaterial;
  run.diameterIn = null;
  remember(reading, item, sentence);
  own(reading, from, to, { sort: 'item', item, isAgain: false });
  if (size !== null) addSizeOfNewPipe(reading, sentence, run, item, size.inches);
  return true;
}

/** A size said of the pipe after a change is a pipe of its own beside the change. */
function addSizeOfNewPipe(reading: Reading, sentence: Sentence, run: RunState, change: Item, inches: number): void {
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
      notes: change.evidence.notes.includes('place guessed') ? ['place guessed'] : [],
    }),
  });
  run.diameterIn = inches;
  remember(reading, item, sentence);
  own(reading, item.from, item.to, { sort: 'item', item, isAgain: false });
}

function addPipe(
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
  // A correction or a repeat of what was just said of the pipe.
  if (
    isFresh &&
    focused.kind === 'pipe' &&
    (places.length === 0 || focused.at === 0) &&
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
  const isSame = run.material === material.material && (size === null || size === run.diameterIn);
  const saysNew =
    fromHere.test(sentence.text) ||
    /\b(it 's|it is|we 're|becomes|now|here|must be|and it 's|is)\b/.test(sentence.text);
  if (isSame || !saysNew) {
    if (run.material === material.material && size !== null && run.diameterIn === null)
      return fillDiameter(reading, run, size);
    return false;
  }
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

function addPipeItem(
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
      notes: isGuess ? ['place guessed'] : [],
    }),
    respelled: material?.respelled ? [material.respelled] : [],
  });
  if (material) run.material = material.material;
  if (size !== null || material) run.diameterIn = size;
  remember(reading, item, sentence);
  own(reading, item.from, item.to, { sort: 'item', item, isAgain: false });
}

function fillDiameter(reading: Reading, run: RunState, size: number): boolean {
  const pipe = reading.items.findLast((item) => item.run === run.n && !item.isWithdrawn && item.kind === 'pipe');
  if (!pipe || pipe.fields.diameterIn !== null) return false;
  pipe.fields.diameterIn = size;
  run.diameterIn = size;
  return true;
}

function addDiameter(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  diameters: readonly PhraseOf<'diameter'>[],
  found: SentenceClaims,
): boolean {
  const size = diameters.at(-1)!;
  const focused = reading.focus.at(-1);
  const isFresh = focused !== undefined && sentence.index - reading.focusSentence <= 2;
  if (isFresh && focused.kind === 'pipe') {
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
