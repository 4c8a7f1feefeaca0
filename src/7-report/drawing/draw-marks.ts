/**
 * The marks of one side of a sheet with their labels. Shapes carry the meaning (square fitting, diamond defect, bar
 * limit), never colour alone; a diamond fills with the severity, a suspicion or an open item is dashed.
 */
import { layoutLine } from '../../../shared/drawing/line-layout.ts';
import type { Finding } from '../../../shared/schemas/grade.ts';
import { titleWords } from '../wording/descriptions.ts';
import type { Units } from '../wording/lengths.ts';
import { clockWords, placeWords } from '../wording/places.ts';
import { fontSize, labelGap, leftColumn, pipe, rightColumn, sheetWidth } from './sheet-geometry.ts';
import type { Sheet, StripItem } from './strips.ts';
import { estimatedWidth, firstThatFits, round, text } from './svg-text.ts';

/** Stretches that overlap are drawn beside each other, this far apart. */
const laneWidth = 7;

export function marks(
  items: readonly StripItem[],
  side: 'left' | 'right',
  sheet: Sheet,
  top: number,
  stripHeight: number,
  y: (feet: number) => number,
  units: Units,
): string {
  if (items.length === 0) return '';
  const range = sheet.toFeet - sheet.fromFeet;
  const byId = new Map(items.map((item) => [item.finding.id, item]));
  const layout = layoutLine(
    { n: 1, access: null, direction: null, heard: null, end: { at: range, reason: 'other' }, review: [] },
    items.map((item) => observationFor(item, sheet)),
    { length: stripHeight, labelGap, tickGap: labelGap },
  );
  const out: string[] = [];
  for (const mark of layout.marks) {
    const item = byId.get(mark.id)!;
    const at = round(top + mark.along);
    const labelY = round(top + mark.labelAlong);
    const edge = side === 'left' ? pipe.left : pipe.right;
    const out1 = side === 'left' ? -1 : 1;
    if (item.toFeet !== null) {
      const laneX = edge + out1 * (8 + Math.min(mark.lane, 4) * laneWidth);
      const [from, to] = [
        round(y(Math.min(item.fromFeet, item.toFeet))),
        round(y(Math.max(item.fromFeet, item.toFeet))),
      ];
      out.push(
        `<path d="M${edge} ${from}H${laneX}V${to}H${edge}" stroke="#111" stroke-width="1.6" fill="none"${item.finding.status === 'suspected' ? ' stroke-dasharray="3 2"' : ''}/>`,
      );
    }
    const leader =
      side === 'left'
        ? `M${edge - 6} ${at}L${edge - 20} ${at}L${leftColumn.leaderEnd} ${labelY}`
        : `M${edge + 6} ${at}L${edge + 22} ${at}L${rightColumn.leaderStart} ${labelY}`;
    out.push(`<path d="${leader}" stroke="#777" stroke-width="0.7" fill="none"/>`, shape(item.finding, edge, at));
    out.push(label(item, side, labelY + 4.3, units));
  }
  return out.join('');
}

/** A diamond fills with the severity; a suspicion is dashed and an open item hollow with a question mark. */
function shape(f: Finding, x: number, at: number): string {
  const isSure = f.status === 'present' && f.reviewState !== 'open';
  if (f.group === 'limit')
    return `<path d="M${pipe.left - 5} ${at}H${pipe.right + 5}" stroke="#111" stroke-width="4"/>`;
  if (f.group === 'fitting')
    return `<rect x="${x - 4.5}" y="${at - 4.5}" width="9" height="9" fill="#fff" stroke="#111" stroke-width="1.5"${isSure ? '' : ' stroke-dasharray="2 2"'}/>`;
  const diamond = `<path d="M${x} ${at - 6.5}L${x + 6.5} ${at}L${x} ${at + 6.5}L${x - 6.5} ${at}Z" fill="${f.grade?.severity === 'severe' ? '#111' : '#fff'}" stroke="#111" stroke-width="1.5"${isSure ? '' : ' stroke-dasharray="2 2"'}/>`;
  return f.grade?.severity === 'moderate'
    ? `${diamond}<path d="M${x} ${at - 6.5}L${x + 6.5} ${at}L${x} ${at + 6.5}Z" fill="#111"/>`
    : diamond;
}

function label(item: StripItem, side: 'left' | 'right', y: number, units: Units): string {
  const f = item.finding;
  const title = `${titleWords(f)}${f.reviewState === 'open' ? ' (open)' : ''}`;
  const place = f.at === null ? '' : placeWords(f.at, f.to, units);
  const start = f.at === null ? '' : placeWords(f.at, null, units);
  if (side === 'left') {
    const where = clockWords(f);
    const wordings = [
      `${title}, ${place}${where ? `, ${where}` : ''}`,
      `${title}, ${place}`,
      `${title}, ${start}`,
      title,
    ];
    return text(
      leftColumn.labelEnd,
      y,
      firstThatFits(wordings, leftColumn.labelEnd - leftColumn.roomStart, fontSize),
      'text-anchor="end"',
    );
  }
  const number = item.number === null ? '' : `${item.number}  `;
  const severity = f.grade?.severity ? `, ${f.grade.severity}` : '';
  const wordings = [`${title}, ${place}${severity}`, `${title}, ${start}${severity}`, `${title}${severity}`, title];
  const room = sheetWidth - rightColumn.labelStart - estimatedWidth(number, fontSize);
  return `<text x="${rightColumn.labelStart}" y="${round(y)}"><tspan font-weight="700">${number.trim()}</tspan><tspan dx="${number ? 5 : 0}">${text(0, 0, firstThatFits(wordings, room, fontSize)).replace(/^<text[^>]*>|<\/text>$/g, '')}</tspan></text>`;
}

/** What the shared layout needs to know of an item: where it begins and ends on this sheet. */
function observationFor(item: StripItem, sheet: Sheet): Parameters<typeof layoutLine>[1][number] {
  const f = item.finding;
  const within = (feet: number) => Math.min(Math.max(feet, sheet.fromFeet), sheet.toFeet) - sheet.fromFeet;
  return {
    ...f,
    run: 1,
    at: within(item.fromFeet),
    to: item.toFeet === null ? null : within(item.toFeet),
    atBasis: null,
    confidence: 1,
  };
}
