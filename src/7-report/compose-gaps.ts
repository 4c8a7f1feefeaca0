/** What was looked for and not seen, and what could not be inspected and why. */
import type { Graded } from '../../shared/schemas/grade.ts';
import type { Report } from '../../shared/schemas/report.ts';
import { shortTime } from '../../shared/wording/short.ts';
import { noRun } from './standing-text.ts';
import { capital, kindNamed, list, lowerTitle } from './wording/counting.ts';
import { length, type Units } from './wording/lengths.ts';
import { atPlace } from './wording/places.ts';

/**
 * A denial holds for where it was said. When the same kind was found elsewhere in the run the sentence says so, so that
 * nobody reads "no roots" into a line that has some.
 */
export function lookedForNotSeen(graded: Graded): string[] {
  const isOneRun = graded.runs.length === 1;
  return graded.runs.flatMap((run) => {
    const denied = graded.absent.filter((absent) => absent.run === run.n);
    const isFound = (kind: string) => graded.findings.some((f) => f.run === run.n && f.kind === kind);
    const names = [...new Set(denied.map((absent) => absent.kind))];
    const clear = names.filter((name) => !isFound(name)).map((name) => namesMany(name));
    const sentences =
      clear.length === 0
        ? []
        : [
            `${isOneRun ? 'In' : `In run ${run.n}, in`} the part that was seen, the inspector noted no ${list(clear).replace(/ and /g, ' and no ')}.`,
          ];
    for (const name of names.filter(isFound)) {
      const times = denied.filter((absent) => absent.kind === name).map((absent) => shortTime(absent.heard.start));
      sentences.push(
        `${isOneRun ? '' : `Run ${run.n}: `}${capital(namesMany(name))}: said not to be there at ${list(times)} of the recording, but found elsewhere in the run; see the findings.`,
      );
    }
    return sentences;
  });
}

function namesMany(name: string): string {
  const { plural } = kindNamed(name);
  return plural;
}

export function couldNotInspect(graded: Graded, units: Units): Report['notInspected'] {
  const gaps: Report['notInspected'] = graded.runs.length === 0 ? [{ what: 'The whole line', why: noRun }] : [];
  for (const run of graded.runs) {
    const label = graded.runs.length === 1 ? '' : `Run ${run.n}: `;
    for (const gap of run.notSeen) {
      const isBeyond = run.reachedFeet !== null && gap.toFeet === null && gap.fromFeet >= run.reachedFeet;
      const what = isBeyond
        ? `beyond ${length(gap.fromFeet, units)}`
        : gap.toFeet === null
          ? `from ${length(gap.fromFeet, units)}, how far was not said`
          : `from ${length(gap.fromFeet, units)} to ${length(gap.toFeet, units)}`;
      gaps.push({ what: capital(`${label}${what}`), why: reasonFor(graded, run.n, gap.why) });
    }
    if (run.reachedFeet === null)
      gaps.push({ what: `${label}the length of this run`, why: 'No distance was said for it.' });
  }
  for (const f of graded.findings) {
    if (f.group !== 'limit' || f.reviewState === 'open') continue;
    const isCovered = f.at !== null && graded.runs.some((run) => run.n === f.run && run.notSeen.length > 0);
    if (isCovered) continue;
    const place = f.at === null ? '' : ` ${atPlace(f.at, f.to, units)}`;
    const doubt = f.status === 'suspected' ? 'perhaps: ' : '';
    gaps.push({
      what: capital(`${doubt}${lowerTitle(kindNamed(f.kind))}${place}`),
      why: said(f.heard.text, f.heard.start),
    });
  }
  return gaps;
}

/** The words in which the hindrance was told, so that the reason is the inspector's own. */
function reasonFor(graded: Graded, run: number, why: string): string {
  const told = graded.findings.find(
    (f) => f.run === run && f.reviewState !== 'open' && kindNamed(f.kind).title === why,
  );
  return told === undefined ? `${why}.` : `${why}. ${said(told.heard.text, told.heard.start)}`;
}

function said(text: string, seconds: number): string {
  return text === '' ? `Said at ${shortTime(seconds)}.` : `“${text}” (${shortTime(seconds)})`;
}
