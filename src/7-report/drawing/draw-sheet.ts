/**
 * One sheet of the line drawing as SVG. The pipe stands in the middle with its materials as line patterns; fittings
 * and limits are named on its left, defects on its right; the scale is at the left edge. Shapes carry the meaning
 * (square fitting, diamond defect, bar limit), never colour alone. Marks are laid out by `layoutLine`.
 */
import { materialTitle, titleWords } from '../wording/descriptions.ts';
import { inchSize, type Units } from '../wording/lengths.ts';
import { legendMarkup } from './draw-legend.ts';
import { marks } from './draw-marks.ts';
import { patternMarkup } from './patterns.ts';
import { fontSize, leftColumn, pipe, rightColumn, scaleX, sheetWidth } from './sheet-geometry.ts';
import { isOnSheet, type Sheet, type Strip } from './strips.ts';
import { estimatedWidth, fontFamily, linesOf, round, text } from './svg-text.ts';

const metersPerFoot = 0.3048;

export interface SheetOptions {
  /** Height of the strip itself, in units. */
  readonly stripHeight: number;
  readonly units: Units;
  /** Sets the ids of one drawing apart from those of another on the same page. */
  readonly idPrefix: string;
}

export function drawSheet(strip: Strip, sheet: Sheet, options: SheetOptions): { svg: string; height: number } {
  const { stripHeight, units, idPrefix } = options;
  const top = 58;
  const unitsPerFoot = stripHeight / (sheet.toFeet - sheet.fromFeet);
  const y = (feet: number) =>
    top + (Math.min(Math.max(feet, sheet.fromFeet), sheet.toFeet) - sheet.fromFeet) * unitsPerFoot;
  const items = strip.items.filter((item) => isOnSheet(item, sheet, strip));
  const used = [
    ...new Set(
      strip.stretches.filter((s) => s.toFeet > sheet.fromFeet && s.fromFeet < sheet.toFeet).map((s) => s.material),
    ),
  ];
  const named = used.filter((name) => name !== null);
  const parts: string[] = [
    `<defs>${named.map((name) => patternMarkup(name, `${idPrefix}-${name}`)).join('')}</defs>`,
    scale(strip, sheet, y, unitsPerFoot, units),
    pipeBody(strip, sheet, y, idPrefix, units),
    headings(strip, sheet, top, stripHeight, units),
    ...(['left', 'right'] as const).map((side) =>
      marks(
        items.filter((i) => i.side === side),
        side,
        sheet,
        top,
        stripHeight,
        y,
        units,
      ),
    ),
    entry(strip, sheet, y),
  ];
  let bottom = top + stripHeight + 34;
  const legend = legendMarkup(named, used.includes(null), bottom, idPrefix);
  parts.push(legend.markup);
  bottom = legend.bottom;
  if (strip.withoutDistance.length > 0 && sheet.fromFeet === 0) {
    const sentence = `Not on the drawing, for want of a distance: ${strip.withoutDistance
      .map(({ finding, number }) => `${number === null ? '' : `No. ${number} `}${titleWords(finding)}`)
      .join(', ')}.`;
    for (const line of linesOf(sentence, sheetWidth - 20, fontSize)) {
      parts.push(text(10, bottom + 12, line));
      bottom += 17;
    }
  }
  const height = Math.ceil(bottom + 8);
  return {
    height,
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${sheetWidth} ${height}" width="${sheetWidth}" height="${height}" font-family="${fontFamily}" font-size="${fontSize}" fill="#111">${parts.join('')}</svg>`,
  };
}

function scale(strip: Strip, sheet: Sheet, y: (feet: number) => number, unitsPerFoot: number, units: Units): string {
  const perUnit = units === 'meters' ? 1 / metersPerFoot : 1;
  const step = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500].find((s) => s * perUnit * unitsPerFoot >= 34) ?? 1000;
  const out = [
    `<path d="M${scaleX} ${round(y(sheet.fromFeet))}V${round(y(sheet.toFeet))}" stroke="#111" fill="none"/>`,
  ];
  const first = Math.ceil((sheet.fromFeet - strip.accessFeet) / perUnit / step - 1e-9);
  const last = Math.floor((sheet.toFeet - strip.accessFeet) / perUnit / step + 1e-9);
  for (let n = first; n <= last; n += 1) {
    const at = round(y(strip.accessFeet + n * step * perUnit));
    out.push(`<path d="M${scaleX - 5} ${at}H${scaleX}" stroke="#111"/>`);
    out.push(text(scaleX - 8, at + 4, String(Math.abs(n * step)), 'text-anchor="end" font-size="11.5"'));
  }
  return out.join('');
}

function pipeBody(strip: Strip, sheet: Sheet, y: (feet: number) => number, idPrefix: string, units: Units): string {
  const width = pipe.right - pipe.left;
  const out: string[] = [];
  for (const s of strip.stretches) {
    const [from, to] = [y(s.fromFeet), y(s.toFeet)];
    if (to - from < 0.5) continue;
    const fill = s.material === null ? '#fff' : `url(#${idPrefix}-${s.material})`;
    out.push(
      `<rect x="${pipe.left}" y="${round(from)}" width="${width}" height="${round(to - from)}" fill="${fill}" stroke="#111" stroke-width="0.8"/>`,
    );
    const name = [
      s.nominalIn === null ? '' : inchSize(s.nominalIn, units),
      s.material === null ? 'not said' : materialTitle(s.material),
    ]
      .filter(Boolean)
      .join(' ');
    const room = estimatedWidth(name, 11) + 10;
    if (to - from < room) continue;
    const middle = round((from + to) / 2);
    const x = (pipe.left + pipe.right) / 2;
    out.push(
      `<rect x="${x - 8}" y="${round(middle - room / 2)}" width="16" height="${round(room)}" fill="#fff"/>`,
      `<text x="${x}" y="${middle}" transform="rotate(-90 ${x} ${middle})" text-anchor="middle" dy="3.8" font-size="11">${name}</text>`,
    );
  }
  const [from, to] = [round(y(sheet.fromFeet)), round(y(sheet.toFeet))];
  out.push(`<path d="M${pipe.left} ${from}V${to}M${pipe.right} ${from}V${to}" stroke="#111" stroke-width="1.8"/>`);
  return out.join('');
}

function headings(strip: Strip, sheet: Sheet, top: number, stripHeight: number, units: Units): string {
  const out = [
    text(leftColumn.labelEnd, 16, 'Fittings and limits', 'text-anchor="end" font-weight="700"'),
    text(rightColumn.labelStart, 16, 'Defects, with their numbers', 'font-weight="700"'),
    text(scaleX - 34, 16, `Distance, ${units === 'meters' ? 'm' : 'ft'}`, 'font-weight="700"'),
  ];
  const access = strip.runs[0]?.access ?? null;
  const isAccessTop = strip.accessFeet === 0;
  const ends = (feet: number) => strip.ends.find((end) => Math.abs(end.feet - feet) < 0.01)?.run;
  const endText = (feet: number) => {
    const run = ends(feet);
    return run?.end
      ? `end of run ${run.n}: ${run.end.reason === 'stopped' ? 'camera stopped' : run.end.reason.replaceAll('-', ' ')}`
      : '';
  };
  const middle = (pipe.left + pipe.right) / 2;
  const isFirst = sheet.fromFeet === 0;
  const isLast = sheet.toFeet >= strip.lengthFeet;
  const topText = !isFirst ? 'from the sheet before' : isAccessTop ? `access: ${access ?? 'not stated'}` : endText(0);
  const bottomText = !isLast
    ? 'to the next sheet'
    : strip.accessFeet >= strip.lengthFeet - 1 && !strip.runs.some((r) => r.direction !== 'upstream')
      ? `access: ${access ?? 'not stated'}`
      : endText(strip.lengthFeet);
  const fit = (content: string) => linesOf(content, sheetWidth - 40, fontSize)[0]!;
  if (topText) out.push(text(middle, top - 12, fit(topText), 'text-anchor="middle" font-style="italic"'));
  if (bottomText)
    out.push(text(middle, top + stripHeight + 19, fit(bottomText), 'text-anchor="middle" font-style="italic"'));
  if (strip.isFlowKnown && isFirst) {
    out.push(
      `<path d="M${scaleX} ${top - 34}v15m-4 -6l4 7l4 -7" stroke="#111" fill="none" stroke-width="1.3"/>`,
      text(scaleX + 9, top - 22, 'flow', 'font-style="italic"'),
    );
  }
  return out.join('');
}

function entry(strip: Strip, sheet: Sheet, y: (feet: number) => number): string {
  const isInside = strip.accessFeet > sheet.fromFeet && strip.accessFeet < sheet.toFeet;
  if (!isInside || strip.runs.length < 2) return '';
  const at = round(y(strip.accessFeet));
  const lines = linesOf(
    `access: ${strip.runs[0]!.access ?? 'not stated'}`,
    leftColumn.labelEnd - leftColumn.roomStart,
    fontSize,
  );
  const label = lines.map((line, index) =>
    text(
      leftColumn.labelEnd,
      at - 5 - (lines.length - 1 - index) * (fontSize + 2),
      line,
      'text-anchor="end" font-style="italic"',
    ),
  );
  return `<path d="M${pipe.left - 16} ${at}H${pipe.right + 16}" stroke="#111" stroke-width="2.2"/>${label.join('')}`;
}
