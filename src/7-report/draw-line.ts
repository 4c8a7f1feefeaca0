/** The line drawing of an inspection: one sheet for each run, or for two runs that go both ways from one access. */
import type { Graded } from '../../shared/schemas/grade.ts';
import type { Drawing } from '../../shared/schemas/report.ts';
import { type NumberedFinding, numberedFindings } from './compose-findings.ts';
import { runTitle, unitsOf } from './compose-runs.ts';
import { drawSheet } from './drawing/draw-sheet.ts';
import { labelGap, sheetWidth } from './drawing/sheet-geometry.ts';
import { isOnSheet, type Sheet, type Strip, sheetsOf, stripsOf } from './drawing/strips.ts';
import { list, plural } from './wording/counting.ts';
import { titleWords } from './wording/descriptions.ts';
import { length, type Units } from './wording/lengths.ts';
import { placeWords } from './wording/places.ts';

/** The tallest strip that leaves room for a title and the legend on a page. */
const tallest = 720;
const unitsPerFoot = 9;
/** A drawing with its title must fit a page. */
const tallestPoints = 620;
/** A sheet is printed 7 inches wide. */
const pointsPerUnit = (7 * 72) / sheetWidth;

export function drawLines(graded: Graded, numbered: readonly NumberedFinding[], units: Units): Drawing[] {
  const strips = stripsOf(graded, numbered);
  return strips.flatMap((strip, stripIndex) => {
    const sheets = sheetsOf(strip, Math.floor(tallest / labelGap));
    return sheets.map((sheet, sheetIndex) => {
      const wanted = Math.max((sheet.toFeet - sheet.fromFeet) * unitsPerFoot, 200);
      // Labels that share one foot cannot be cut apart; the strip is then as long as they need and printed smaller.
      const needed = (mostLabels(strip, sheet) + 1) * labelGap;
      const { svg, height } = drawSheet(strip, sheet, {
        stripHeight: Math.max(Math.min(tallest, wanted), needed),
        units,
        idPrefix: `d${stripIndex + 1}s${sheetIndex + 1}`,
      });
      const part = sheets.length === 1 ? '' : `, sheet ${sheetIndex + 1} of ${sheets.length}`;
      return {
        title: `${strip.runs.map(runTitle).join('; ')}${part}`,
        alt: describe(strip, units),
        svg,
        widthPoints: sheetWidth * pointsPerUnit * Math.min(1, tallestPoints / (height * pointsPerUnit)),
        heightPoints: Math.min(tallestPoints, height * pointsPerUnit),
      };
    });
  });
}

function mostLabels(strip: Strip, sheet: Sheet): number {
  const inside = strip.items.filter((item) => isOnSheet(item, sheet, strip));
  return Math.max(...(['left', 'right'] as const).map((side) => inside.filter((item) => item.side === side).length));
}

/** The drawing of a graded inspection in the units of its report. */
export function drawInspection(graded: Graded): Drawing[] {
  return drawLines(graded, numberedFindings(graded), unitsOf(graded));
}

/** The same in words, for whoever cannot see the drawing. */
function describe(strip: Strip, units: Units): string {
  const marks = strip.items.map(({ finding, number }) => {
    const place = placeWords(finding.at, finding.to, units);
    return `${number === null ? '' : `No. ${number} `}${titleWords(finding)} ${place}`;
  });
  const reach = length(strip.lengthFeet, units);
  return `Drawing to scale of ${list(strip.runs.map((run) => `run ${run.n}`))}, ${reach} of pipe with ${plural(marks.length, 'mark', 'marks')}${marks.length === 0 ? '' : `: ${marks.join('; ')}`}.`;
}
