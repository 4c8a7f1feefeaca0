/** Each run in words: where it began and ended, how much of it was seen, what the pipe is made of, what it passed. */
import type { Finding, Graded, GradedRun } from '../../shared/schemas/grade.ts';
import type { Report } from '../../shared/schemas/report.ts';
import { shortTime } from '../../shared/wording/short.ts';
import { computationWords, partWords } from './compose-findings.ts';
import { canBeDrawn } from './drawing/strips.ts';
import { capital, kindNamed } from './wording/counting.ts';
import { detailWords, materialTitle } from './wording/descriptions.ts';
import { inchSize, length, reading, type Units } from './wording/lengths.ts';
import { clockWords, placeWords } from './wording/places.ts';

const endWords = {
  main: 'at the public main',
  tank: 'at the septic tank',
  manhole: 'at a manhole',
  'end-of-line': 'at the upper end of the line',
  stopped: 'where the camera could go no farther',
  vent: 'at a vent',
  cleanout: 'at a cleanout',
  other: 'at a place that is no end of the line',
} as const;

/** What the report prints lengths in: as asked, else as the counter counted. */
export function unitsOf(graded: Graded): Units {
  return graded.inspection.units ?? (graded.counterUnit === 'm' ? 'meters' : 'feet');
}

const notDrawn = 'It cannot be drawn to scale without a distance.';

export function runTitle(run: GradedRun): string {
  const from = run.access === null ? 'access not stated' : `from the ${run.access}`;
  return `Run ${run.n}, ${from}${run.direction === null ? '' : `, ${run.direction}`}`;
}

export function runInWords(run: GradedRun, graded: Graded, units: Units): Report['runs'][number] {
  const own = graded.findings.filter((f) => f.run === run.n && f.reviewState !== 'open');
  return {
    number: run.n,
    title: runTitle(run),
    sentences: [
      lengthSentence(run, graded, units),
      pipeSentence(run, units),
      fallSentence(run, units),
      ...(canBeDrawn(run, graded) ? [] : [notDrawn]),
    ].filter(Boolean),
    computations: run.computations.map((computation) => computationWords(computation, units)),
    fittings: own.filter((f) => f.group === 'fitting').map((f) => fittingRow(f, units)),
  };
}

function lengthSentence(run: GradedRun, graded: Graded, units: Units): string {
  const end = run.end === null ? 'How it ended was not said' : `It ended ${endWords[run.end.reason]}`;
  if (run.reachedFeet === null) return `${end}; no distance was said, so the length inspected is not known.`;
  const plusMinus = `${length(run.reachedFeet, units)}, plus or minus ${length(run.reachedPlusMinusFeet!, units)}`;
  const counter =
    run.entryOffsetFeet === null
      ? ''
      : ` (the counter read ${reading(run.reachedFeet + run.entryOffsetFeet, graded.counterUnit)}, less ${reading(run.entryOffsetFeet, graded.counterUnit)} to where the camera entered the pipe)`;
  const seen =
    run.seenFeet === null
      ? '; how much of that could not be seen was not said'
      : run.seenFeet < run.reachedFeet
        ? `, of which ${length(run.seenFeet, units)} could be seen`
        : '';
  return `${end}, ${plusMinus} from where the camera entered${counter}${seen}.`;
}

function pipeSentence(run: GradedRun, units: Units): string {
  const known = run.stretches.filter((s) => s.material !== null || s.nominalIn !== null);
  if (known.length === 0) return 'What the pipe is made of was not said.';
  const parts = run.stretches.map((s) => {
    const size = s.nominalIn === null ? '' : `${inchSize(s.nominalIn, units)} `;
    const material = s.material === null ? 'pipe of a material not said' : materialTitle(s.material);
    const share =
      run.stretches.length > 1 ? `, ${Math.round(((s.toFeet - s.fromFeet) / run.reachedFeet!) * 100)} % of it` : '';
    return `${size}${material} from ${length(s.fromFeet, units)} to ${length(s.toFeet, units)}${share}`;
  });
  return `${capital(parts.join('; '))}.`;
}

/** The fall a code asks for over the whole run; only when every stretch has a size. */
function fallSentence(run: GradedRun, units: Units): string {
  const falls = run.computations.filter((c) => c.name === 'least fall by code');
  if (falls.length === 0 || falls.length < run.stretches.length) return '';
  const inches = falls.reduce((sum, c) => sum + c.results[0]!.value, 0);
  const source = falls[0]!.inputs.find((input) => input.unit === 'in/ft')!.source;
  return `New pipe of ${run.stretches.length === 1 ? 'this size' : 'these sizes'} must fall at least ${inchSize(Math.round(inches * 10) / 10, units)} over that length (${source}); a camera does not measure slope.`;
}

function fittingRow(f: Finding, units: Units): Report['runs'][number]['fittings'][number] {
  const title = kindNamed(f.kind).title;
  const details = [detailWords(f, units), clockWords(f), f.angleDeg === null ? '' : `${f.angleDeg}°`];
  return {
    place: capital(placeWords(f.at, f.to, units)),
    what: f.status === 'suspected' ? `Possible ${title.toLowerCase()}` : title,
    details: [...details.filter(Boolean), f.part === 'not-stated' ? '' : partWords(f)].filter(Boolean).join('; '),
    time: shortTime(f.heard.start),
  };
}
