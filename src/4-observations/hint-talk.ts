/**
 * Reads every sentence by itself, as if all of it were meant: what it may name, and every value it says. Nothing here
 * is believed; it is what a person is offered in review, where the draft took something else or nothing from the talk.
 * In: the words of a talk. Out: one hint for each sentence that says anything, in order of time.
 */
import type { FindingHint, TalkHint, ValueHint } from '../../shared/schemas/hint.ts';
import type { Words } from '../../shared/schemas/word.ts';
import type { AttributeName } from '../../shared/vocabulary/attributes.ts';
import { findPhrases } from '../3-phrases/find-phrases.ts';
import { numbersWithin } from '../3-phrases/number/numbers-within.ts';
import type { NumberPhrase } from '../3-phrases/number/read-number.ts';
import { type Phrase, phrasesOf } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';
import { heardBetween } from './account.ts';
import { assertClaim } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { givenBy } from './phrase-value.ts';
import { readClaims } from './read-claims.ts';
import type { Fields } from './reading.ts';
import { cutSentences, type Sentence } from './sentence.ts';

/** A place said further back than this, in sentences, says nothing about what is named now. */
const CARRY_SENTENCES = 4;

/** What earlier sentences leave behind: the place said last, and the material. */
interface Carried {
  place: { feet: number; sentence: number } | null;
  material: string | null;
}

export function hintTalk(words: Words): TalkHint[] {
  const found = findPhrases(words.words);
  const { tokens, numbers } = found;
  const carried: Carried = { place: null, material: null };
  return cutSentences(found).flatMap((sentence) => {
    const hear = (from: number, to: number) => heardBetween(words.words, tokens, from, to);
    const heard = hear(sentence.from, sentence.to);
    const values = hintValues(sentence, tokens, numbers);
    const findings = hintFindings(sentence, tokens, values, carried).map(
      ({ from, to, ...finding }): FindingHint => ({ ...finding, heard: hear(from, to) }),
    );
    return findings.length + values.length === 0 ? [] : [{ heard, findings, values }];
  });
}

type Bare = Omit<FindingHint, 'heard'>;
/** With the tokens it stands in. */
type Found = Bare & { from: number; to: number };

function hintFindings(
  sentence: Sentence,
  tokens: readonly Token[],
  values: readonly ValueHint[],
  carried: Carried,
): Found[] {
  const { claims, loose } = readClaims(sentence, tokens);
  const places = phrasesOf(sentence.phrases, 'distance');
  const before = carried.place && sentence.index - carried.place.sentence <= CARRY_SENTENCES ? carried.place : null;
  const named = claims
    .filter(({ kind }) => kind !== 'material-change')
    .map((claim) => ({
      ...hintOf(claim, claims, sentence, tokens, before?.feet ?? null),
      ...partOf(claim, claims, sentence, tokens),
    }));
  const pipe = hintPipe(sentence, claims, carried);
  const free = places.filter((place) => !claims.some((claim) => claim.place === place));
  const unnamed = !pipe && (free.length > 0 || loose.length > 0);
  const number = values.find(({ field }) => field === 'number')?.value as number | undefined;
  const last = places.at(-1);
  if (last) carried.place = { feet: last.distance.toFeet ?? last.distance.feet, sentence: sentence.index };
  const { from, to } = sentence;
  return [
    ...named,
    ...(pipe ? [{ ...pipe, from, to }] : []),
    ...(unnamed
      ? [{ ...hintUnnamed(free.length > 0 ? free : places, loose, number ?? null, before?.feet ?? null), from, to }]
      : []),
  ];
}

/** Where several things are named, each has the words from its name, or the place before it, up to the next. */
function partOf(
  claim: Claim,
  claims: readonly Claim[],
  { from, to }: Sentence,
  tokens: readonly Token[],
): { from: number; to: number } {
  const starts = claims.map(({ from: name, place }, index) => {
    const last = claims[index - 1]?.to ?? from;
    const start = place && place.from >= last ? Math.min(name, place.from) : name;
    return start > last && /^(at|from|about|around|a|an|the)$/.test(tokens[start - 1]?.text ?? '') ? start - 1 : start;
  });
  const index = claims.indexOf(claim);
  return { from: index === 0 ? from : starts[index]!, to: Math.max(starts[index + 1] ?? to, claim.to) };
}

function hintOf(
  claim: Claim,
  claims: readonly Claim[],
  sentence: Sentence,
  tokens: readonly Token[],
  before: number | null,
): Bare {
  const offset = claim.relative?.relative;
  const isReckoned = offset !== undefined && offset.feet !== null && offset.anchor === null && before !== null;
  const { to, ...rest } = claim.fields;
  const end = to ?? claim.place?.distance.toFeet ?? null;
  const at = claim.place?.distance.feet ?? (isReckoned ? before + (offset.feet ?? 0) : before);
  const { isHedged, isDenied, aside } = assertClaim(claim, claims, sentence, tokens);
  return {
    kind: claim.kind,
    status: isHedged ? 'suspected' : 'present',
    at,
    isPlaced: claim.place !== null || isReckoned,
    isMeant: !isDenied && aside === null && !sentence.isQuestion,
    values: { ...withoutNothing(rest), ...(end !== null && end !== at ? { to: end } : {}) },
  };
}

/** A material or a size alone says what the pipe is; two materials, or another one than before, where it turns. */
function hintPipe(sentence: Sentence, claims: readonly Claim[], carried: Carried): Bare | null {
  const materials = phrasesOf(sentence.phrases, 'material')
    .map(({ material }) => material)
    // A liner is a thing in the pipe before it is a pipe.
    .filter((material) => material !== 'liner')
    .filter((material, index, all) => material !== all[index - 1]);
  const diameter = phrasesOf(sentence.phrases, 'diameter')[0]?.inches ?? null;
  const isSaidToChange = claims.some(({ kind }) => kind === 'material-change');
  const isAside = claims.length > 0 && materials.length < 2 && diameter === null;
  if (!isSaidToChange && (materials.length === 0 || isAside)) return null;
  const at = phrasesOf(sentence.phrases, 'distance')[0]?.distance.feet ?? null;
  const from = materials.at(-2) ?? carried.material;
  const to = materials.at(-1);
  carried.material = to ?? carried.material;
  const isChange = isSaidToChange || (from !== null && to !== undefined && from !== to);
  return isChange
    ? {
        kind: 'material-change',
        status: 'present',
        at: at ?? carried.place?.feet ?? null,
        isPlaced: at !== null,
        isMeant: !sentence.isQuestion,
        values: { ...(from ? { fromMaterial: from } : {}), ...(to ? { toMaterial: to } : {}) },
      }
    : {
        kind: 'pipe',
        status: 'present',
        at: at ?? carried.place?.feet ?? 0,
        isPlaced: at !== null,
        isMeant: !sentence.isQuestion,
        values: { ...(to ? { material: to } : {}), ...(diameter ? { diameterIn: diameter } : {}) },
      };
}

/** A place, a side, a size that belongs to something whose name was not understood. */
function hintUnnamed(
  free: readonly Phrase[],
  loose: readonly Phrase[],
  number: number | null,
  before: number | null,
): Bare {
  const place = phrasesOf(free, 'distance')[0]?.distance ?? null;
  const values: Partial<Record<AttributeName, string | number>> = {};
  for (const { field, value } of loose.flatMap(valuesOf)) {
    if (field !== 'kind' && field !== 'distance' && field !== 'number') values[field] ??= value;
  }
  if (place?.toFeet) values.to = place.toFeet;
  const own = place?.feet ?? number;
  return { kind: null, status: 'present', at: own ?? before, isPlaced: own !== null, isMeant: true, values };
}

function hintValues(sentence: Sentence, tokens: readonly Token[], numbers: readonly NumberPhrase[]): ValueHint[] {
  const used = sentence.phrases.filter((phrase) => phrase.family !== 'thing' && valuesOf(phrase).length > 0);
  const unused = numbersWithin(numbers, sentence.from, sentence.to).filter(
    (number) =>
      // "The first one", "no one": a lone small word is hardly ever a measure.
      (number.value > 1 || /\d/.test(tokens[number.from]?.text ?? '')) &&
      !used.some((phrase) => phrase.from < number.to && number.from < phrase.to),
  );
  return [
    ...sentence.phrases.flatMap(valuesOf),
    ...unused.map(({ value }): ValueHint => ({ field: 'number', value })),
    ...(/\d/.test(sentence.text) ? tornNumbers(sentence.text) : []),
  ];
}

/** Numbers that were printed into a word ("at31"), and parts of one that were printed as two numbers ("1,2 inches"). */
function tornNumbers(text: string): ValueHint[] {
  const glued = [...text.matchAll(/[a-z](\d+(?:\.\d+)?)/g)].map((match) => Number(match[1]));
  const torn = [...text.matchAll(/\b(\d)(?:, ?| )(\d)\b/g)].flatMap(([, first, second]) => {
    const part = Number(first) / Number(second);
    return [Number(`${first}${second}`), ...(part < 1 ? [part] : [])];
  });
  const whole = text.replaceAll(/\b(\d),? (\d)\b/g, '$1$2').replaceAll(/ to(?=\d)/g, ' to ');
  const [, from, to] = /\b(\d+(?:\.\d+)?) to (\d+(?:\.\d+)?)\b/.exec(whole) ?? [];
  const isStretch = from !== undefined && Number(from) < Number(to) && whole !== text;
  return [
    ...(isStretch ? [{ field: 'distance' as const, value: Number(from), to: Number(to) }] : []),
    ...[...glued, ...torn].map((value) => ({ field: 'number' as const, value })),
  ];
}

/** The values a phrase says. */
function valuesOf(phrase: Phrase): ValueHint[] {
  switch (phrase.family) {
    case 'thing':
      return [{ field: 'kind', value: phrase.kind }];
    case 'material':
      return [{ field: 'material', value: phrase.material }];
    case 'distance': {
      const { feet, toFeet, alsoFeet } = phrase.distance;
      const single = [feet, ...(toFeet === null ? [] : [toFeet]), ...(alsoFeet ?? [])];
      return [
        ...(toFeet === null ? [] : [{ field: 'distance' as const, value: feet, to: toFeet }]),
        ...single.map((value) => ({ field: 'distance' as const, value })),
      ];
    }
    case 'share':
      // A bare "half" may be half the pipe or half an inch.
      return [
        { field: 'percent', value: phrase.percent },
        ...(phrase.isBare ? [{ field: 'inches' as const, value: phrase.percent / 100 }] : []),
      ];
    default: {
      const given = givenBy(phrase);
      return given === null ? [] : [given];
    }
  }
}

const withoutNothing = (fields: Partial<Fields>): FindingHint['values'] =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, value]) =>
      value === null || value === undefined || name === 'clockTo' ? [] : [[name, value]],
    ),
  );
