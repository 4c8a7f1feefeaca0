/** The observations of each run, a row each, along the pipe. All runs share their columns. */
import type { Draft, Observation, Run } from '../../shared/schemas/draft.ts';
import { shortDetails, shortName, shortNumber, shortPlace, shortTime } from '../../shared/wording/short.ts';
import type { Effects } from './effects.ts';
import { wrap } from './wrap.ts';

export interface Paper {
  readonly columns: number;
  readonly style: Effects['style'];
}

interface Row {
  readonly run: number;
  readonly isFlagged: boolean;
  readonly place: string;
  readonly name: string;
  readonly details: string;
  readonly time: string;
}

// With less room than this for the details, a row is set as running text.
const narrowestDetails = 14;

/** A block of lines for each run: its title, then its rows. */
export function runTables(draft: Draft, paper: Paper): string[] {
  const rows = [...draft.observations].sort(byDistance).map((o): Row => rowOf(o, draft));
  const print = rowPrinter(rows, paper);
  return draft.runs.map((run) => {
    const title = wrap(runTitle(run, draft), paper.columns, '', '  ').map((line) => paper.style('bold', line));
    const lines = rows.filter((row) => row.run === run.n).flatMap(print);
    return [...title, ...(lines.length > 0 ? lines : ['  nothing noted'])].join('\n');
  });
}

export function runTitle(run: Run, draft: Draft): string {
  const end = run.end;
  const ending =
    end === null ? '' : `, ends${end.at === null ? '' : ` at ${shortNumber(end.at)} ${draft.unit}`} (${end.reason})`;
  return `Run ${run.n}: ${run.access ?? 'access not said'}, ${run.direction ?? 'direction not said'}${ending}`;
}

function rowOf(observation: Observation, draft: Draft): Row {
  const { heard, again } = observation;
  return {
    run: observation.run,
    isFlagged: observation.review.length > 0,
    place: shortPlace(observation, draft.unit),
    name: shortName(observation),
    details: shortDetails(observation),
    // When it was first said, and how often it was spoken of.
    time: again.length === 0 ? shortTime(heard.start) : `${shortTime(heard.start)} ×${again.length + 1}`,
  };
}

/** How to print a row among `rows`, on this paper. */
function rowPrinter(rows: readonly Row[], { columns, style }: Paper): (row: Row) => string[] {
  const placeWidth = Math.max(6, ...rows.map((row) => row.place.length));
  const nameWidth = Math.max(8, ...rows.map((row) => row.name.length));
  const timeWidth = Math.max(5, ...rows.map((row) => row.time.length));
  const detailsWidth = columns - (placeWidth + nameWidth + timeWidth + 8);
  const mark = (row: Row, line: string) => (row.isFlagged ? style('yellow', line) : line);
  return (row) => {
    const start = `${row.isFlagged ? '!' : ' '} ${row.place.padStart(placeWidth)}  `;
    if (detailsWidth < narrowestDetails) {
      const said = row.details === '' ? row.name : `${row.name}, ${row.details}`;
      const lines = wrap(`${said} (${row.time})`, columns, start, ' '.repeat(start.length));
      return lines.map((line) => mark(row, line));
    }
    const left = `${start}${row.name.padEnd(nameWidth)}  `;
    const [first = '', ...more] = wrap(row.details, detailsWidth);
    const hang = ' '.repeat(left.length);
    const line = `${left}${first.padEnd(detailsWidth)}  ${row.time.padStart(timeWidth)}`;
    return [mark(row, line), ...more.map((rest) => `${hang}${rest}`)];
  };
}

/** Along the pipe; what has no distance keeps its place in the talk, at the end. */
function byDistance(a: Observation, b: Observation): number {
  const along = (a.at ?? Number.POSITIVE_INFINITY) - (b.at ?? Number.POSITIVE_INFINITY);
  // Two without a distance give NaN, which counts as no difference.
  return along || a.heard.start - b.heard.start;
}
