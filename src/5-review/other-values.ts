/**
 * Other values an observation might have: those said in its own words first, then in the sentences beside them, then
 * numbers that sound like its own, and what is usual for what was not said. Pure. Only fields that its kind takes, and only values it has not.
 */
import type { PlainValue } from '../../shared/schemas/decision.ts';
import type { Heard } from '../../shared/schemas/draft.ts';
import type { TalkHint, ValueHint } from '../../shared/schemas/hint.ts';
import type { ReviewedObservation } from '../../shared/schemas/reviewed.ts';
import { attributeTitles } from '../../shared/vocabulary/attribute-titles.ts';
import { attributeNames } from '../../shared/vocabulary/attributes.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { soundsLikeNumber } from '../../shared/vocabulary/sounds-like-number.ts';

export interface OtherValue {
  readonly field: string;
  readonly value: PlainValue;
  readonly to?: number;
  readonly isUsual?: boolean;
}

/** How far, in seconds, a sentence may stand from the words of a finding and still be about it. */
const nearSeconds = 6;
const mostOfOneField = 4;
const slackSeconds = 0.06;
/** Sizes that an unexplained number could be, in inches. */
const likelyInches = 6;

type Span = Pick<Heard, 'start' | 'end'>;

/** Whether two stretches share talk; word times and stretch times are rounded apart a little. */
export function overlaps(a: Span, b: Span): boolean {
  return a.start < b.end - slackSeconds && b.start < a.end - slackSeconds;
}

export function otherValues(o: ReviewedObservation, hints: readonly TalkHint[]): OtherValue[] {
  const own = hints.filter(({ heard }) => overlaps(o.heard, heard));
  const later = hints.filter((hint) => !own.includes(hint) && o.again.some((again) => overlaps(again, hint.heard)));
  const takes: readonly string[] = kinds.find(({ name }) => name === o.kind)?.takes ?? [];
  const all: OtherValue[] = [
    ...own.flatMap((hint) => valuesIn(hint, o, takes)),
    ...emptied(o),
    ...[...besides(o, own, hints), ...later].flatMap((hint) =>
      valuesIn(hint, o, takes).filter(({ field }) => field !== 'kind'),
    ),
    ...soundingLike(o.at).map((value) => ({ field: 'at', value })),
    ...soundingLike(o.to).map((value) => ({ field: 'to', value })),
    ...attributeNames
      .filter((name) => takes.includes(name) && o[name] === null)
      .flatMap((field) => (attributeTitles[field].usual ?? []).map((value) => ({ field, value, isUsual: true }))),
  ];
  const fresh = all.filter(
    ({ field, value, to }, index) =>
      ((o[field as 'at'] ?? null) !== value || (to !== undefined && o.to !== to)) &&
      all.findIndex((other) => other.field === field && other.value === value && other.to === to) === index,
  );
  // Room for every field: many numbers near are no reason to offer nothing else.
  return fresh.filter((one) => fresh.filter(({ field }) => field === one.field).indexOf(one) < mostOfOneField);
}

/** The sentences after and before its own, up to one that names something else or stands too far off. */
function besides(o: ReviewedObservation, own: readonly TalkHint[], hints: readonly TalkHint[]): TalkHint[] {
  const first = own[0] ? hints.indexOf(own[0]) : hints.findIndex(({ heard }) => heard.start >= o.heard.start);
  const last = own[0] ? hints.indexOf(own.at(-1)!) : first - 1;
  const isOwn = (hint: TalkHint) =>
    hint.heard.start - o.heard.end <= nearSeconds &&
    o.heard.start - hint.heard.end <= nearSeconds &&
    hint.findings.every(({ kind }) => kind === null || kind === o.kind);
  const upTo = (list: readonly TalkHint[]) => {
    const stop = list.findIndex((hint) => !isOwn(hint));
    return stop === -1 ? list : list.slice(0, stop);
  };
  return [...upTo(hints.slice(last + 1)), ...upTo(hints.slice(0, Math.max(0, first)).reverse())];
}

/** None of what was perhaps said of something else: its attributes, and a distance that was not said with it. */
function emptied(o: ReviewedObservation): OtherValue[] {
  const filled: string[] = attributeNames.filter((name) => o[name] !== null);
  const isGuessed = o.at !== null && o.atBasis !== null && o.atBasis !== 'spoken';
  return [...filled, ...(isGuessed ? ['at'] : [])].map((field) => ({ field, value: null }));
}

function valuesIn(hint: TalkHint, o: ReviewedObservation, takes: readonly string[]): OtherValue[] {
  const same = hint.findings.filter(({ kind }) => kind === o.kind);
  const whole = same.flatMap((finding): OtherValue[] => [
    ...(finding.at === null ? [] : [{ field: 'at', value: finding.at }]),
    ...Object.entries(finding.values).map(([field, value]) => ({ field, value })),
  ]);
  return [...whole, ...hint.values.flatMap((value) => fieldsOf(value, o, takes))].filter(
    ({ field }) => field === 'at' || field === 'kind' || takes.includes(field),
  );
}

/** Which fields of this observation a value could fill. */
function fieldsOf({ field, value, to }: ValueHint, o: ReviewedObservation, takes: readonly string[]): OtherValue[] {
  switch (field) {
    case 'distance': {
      if (to !== undefined) return takes.includes('to') ? [{ field: 'at', value, to }] : [];
      const isAfter = o.at !== null && typeof value === 'number' && value > o.at;
      return [{ field: 'at', value }, ...(isAfter ? [{ field: 'to', value }] : [])];
    }
    case 'inches':
      return [{ field: takes.includes('inches') ? 'inches' : 'diameterIn', value }];
    case 'number':
      return [
        ...(typeof value === 'number' && value >= 1 ? fieldsOf({ field: 'distance', value }, o, takes) : []),
        ...(['inches', 'diameterIn'] as const)
          .filter(() => typeof value === 'number' && value <= likelyInches)
          .map((name) => ({ field: name, value })),
        ...(typeof value === 'number' && value < 1 ? [{ field: 'percent', value: Math.round(value * 100) }] : []),
        ...(['percent', 'angleDeg', 'clock'] as const)
          .filter((name) => isLikely(name, value))
          .map((name) => ({ field: name, value })),
      ];
    case 'material':
      return ['material', 'fromMaterial', 'toMaterial']
        .filter((name) => takes.includes(name))
        .map((name) => ({ field: name, value }));
    default:
      return [{ field, value }];
  }
}

function isLikely(name: 'percent' | 'angleDeg' | 'clock', value: string | number): boolean {
  const least = name === 'clock' ? 1 : 5;
  return Number(value) >= least && Number(value) <= (attributeTitles[name].max ?? 0) && Number.isInteger(Number(value));
}

/** "Fourteen" and "forty", "fifteen" and "fifty" are easily taken for one another. */
function soundingLike(feet: number | null): number[] {
  const alike = Number.isInteger(feet) ? soundsLikeNumber(String(feet)) : null;
  return alike === null ? [] : [Number(alike)];
}
