/**
 * What the number keys take at an item. Pure. First what its flags offer, then things its words name that are no
 * finding yet, then other values that were said in or beside its words. Nine at most; each is shown before it is taken.
 */
import type { PlainValue } from '../../shared/schemas/decision.ts';
import type { Flag, Heard } from '../../shared/schemas/draft.ts';
import type { FindingHint, TalkHint } from '../../shared/schemas/hint.ts';
import type { Reviewed, ReviewedObservation } from '../../shared/schemas/reviewed.ts';
import { otherValues, overlaps } from './other-values.ts';
import type { QueueItem } from './queue.ts';
import { runAt } from './run-at.ts';

export type Choice =
  | {
      readonly what: 'value';
      readonly field: string;
      readonly value: PlainValue;
      /** The end of the stretch, when a distance was said with one. */
      readonly to?: number;
      /** The flag it answers; null when nothing doubts the field. */
      readonly flag: Flag | null;
      /** As the draft words it; null when the page has to. */
      readonly label: string | null;
      /** Not said: what things of its kind mostly have. */
      readonly isUsual?: boolean;
    }
  | { readonly what: 'finding'; readonly finding: FindingHint };

export type FindingChoice = Extract<Choice, { what: 'finding' }>;
export type ValueChoice = Extract<Choice, { what: 'value' }>;

const mostChoices = 9;
/** Beside an observation, so that values still find room. */
const mostFindings = 3;
const sameFeet = 0.3;

/** With no item at hand: what was left out. */
export function choicesOf(item: QueueItem | null, reviewed: Reviewed, hints: readonly TalkHint[]): Choice[] {
  if (item === null) return leftOut(reviewed, hints);
  const flags = 'openFlags' in item.item ? item.item.openFlags : [];
  const offered = flags.flatMap((flag) =>
    (flag.offers ?? []).map(
      ({ value, label }): ValueChoice => ({ what: 'value', field: flag.about ?? '', value, flag, label }),
    ),
  );
  if (item.what === 'run' || item.what === 'site') return offered.slice(0, mostChoices);
  const findings = item.heard ? findingsIn(item.heard, reviewed, hints) : [];
  if (item.what !== 'observation') return findings.slice(0, mostChoices);
  const values = otherValues(item.item, hints)
    .filter(
      ({ field, value, to }) => to !== undefined || !offered.some((one) => one.field === field && one.value === value),
    )
    .map((other): ValueChoice => {
      const flag = flags.find(({ about }) => about === other.field) ?? null;
      return { what: 'value', ...other, flag, label: null };
    });
  return [
    ...offered,
    ...values.filter(({ flag }) => flag !== null),
    ...findings.filter(({ finding }) => finding.kind !== null).slice(0, mostFindings),
    ...values.filter(({ flag }) => flag === null),
  ].slice(0, mostChoices);
}

/** The things that a stretch of talk names and that are no finding yet; those without a name last. */
export function findingsIn(
  span: Pick<Heard, 'start' | 'end'>,
  reviewed: Reviewed,
  hints: readonly TalkHint[],
): FindingChoice[] {
  const found = hints
    .filter(({ heard }) => overlaps(heard, span))
    .flatMap(({ findings }) =>
      findings
        .filter((finding) => !isKnown(finding, reviewed))
        .map((finding): FindingChoice => ({ what: 'finding', finding })),
    );
  return [
    ...found.filter(({ finding }) => finding.kind !== null),
    ...found.filter(({ finding }) => finding.kind === null),
  ];
}

/** Things named somewhere in the talk that are no finding: the likeliest, in order of time. */
function leftOut(reviewed: Reviewed, hints: readonly TalkHint[]): FindingChoice[] {
  const all = hints
    .flatMap(({ findings }) => findings)
    .filter((finding) => !isKnown(finding, reviewed))
    // What names the way in belongs to the run.
    .filter(({ heard, isPlaced }) => isPlaced || !reviewed.runs.some((run) => run.heard && overlaps(run.heard, heard)))
    .map((finding) => ({ finding, rank: rankOf(finding) }))
    .filter(({ rank }) => rank !== null);
  all.sort((a, b) => a.rank! - b.rank! || a.finding.heard.start - b.finding.heard.start);
  const likeliest = all.slice(0, mostChoices).map(({ finding }) => finding);
  likeliest.sort((a, b) => a.heard.start - b.heard.start);
  return likeliest.map((finding) => ({ what: 'finding', finding }));
}

/** How likely a hint is a finding that was missed: 0 most; null when it is not worth a look. */
function rankOf({ kind, isPlaced, isMeant, values }: FindingHint): number | null {
  if (kind === null) return !isPlaced ? null : Object.keys(values).length > 0 ? 1 : 3;
  if (isPlaced) return isMeant ? 0 : 2;
  return isMeant ? 4 : null;
}

/** Whether some finding is what the hint means: the same kind at the same place, or in the same words. */
function isKnown(hint: FindingHint, reviewed: Reviewed): boolean {
  const run = runAt(reviewed, hint.heard.start);
  const spokenHere = (o: ReviewedObservation) => [o.heard, ...o.again].some((span) => overlaps(span, hint.heard));
  const isAt = (o: ReviewedObservation) =>
    o.at === null ||
    hint.at === null ||
    Math.abs(o.at - hint.at) <= sameFeet ||
    (o.to !== null && hint.at >= o.at && hint.at <= o.to);
  const isPlacedIn = (o: ReviewedObservation, n: number) => o.at !== null && o.run === n;
  return reviewed.observations.some(
    (o) =>
      isAt(o) &&
      (spokenHere(o) ? o.kind === hint.kind || hint.kind === null : o.kind === hint.kind && isPlacedIn(o, run)),
  );
}
