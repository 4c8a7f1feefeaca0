/**
 * One sheet of the line drawing as SVG. The pipe stands in the middle with its materials as line patterns; fittings
 * and limits are named on its left, defects on its right; the scale is at the left edge. Shapes carry the meaning
 * (square fitting, diamond defect, bar limit), never colour alone. Marks are laid out by `layoutLine`.
 */
import { layoutLine } from '../../../shared/drawing/line-layout.ts';
import type { Finding } from '../../../shared/schemas/grade.ts';
import type { MaterialName } from '../../../shared/vocabulary/materials.ts';
import { materialTitle, titleWords } from '../wording/descriptions.ts';
import { inchSize, type Units } from '../wording/lengths.ts';
import { clockWords, placeWords } from '../wording/places.ts';
import { patternMarkup } from './patterns.ts';
import { isOnSheet, type Sheet, type Strip, type StripItem } from './strips.ts';
import { estimatedWidth, firstThatFits, fontFamily, linesOf, round, text } from './svg-text.ts';

export const sheetWidth = 680;
export const labelGap = 17;
const fontSize = 12.5;
const pipe = { left: 318, right: 346 };
const left = { labelEnd: 270, leaderEnd: 276, roomStart: 54 };
const right = { labelStart: 396, leaderStart: 390 };
const scaleX = 44;
const laneWidth = 7;
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
    text(left.labelEnd, 16, 'Fittings and limits', 'text-anchor="end" font-weight="700"'),
    text(right.labelStart, 16, 'Defects, with their numbers', 'font-weight="700"'),
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
  return `<path d="M${pipe.left - 16} ${at}H${pipe.right + 16}" stroke="#111" stroke-width="2.2"/>${text(left.labelEnd, at - 5, `access: ${strip.runs[0]!.access ?? 'not stated'}`, 'text-anchor="end" font-style="italic"')}`;
}

function marks(
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
        ? `M${edge - 6} ${at}L${edge - 20} ${at}L${left.leaderEnd} ${labelY}`
        : `M${edge + 6} ${at}L${edge + 22} ${at}L${right.leaderStart} ${labelY}`;
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
      left.labelEnd,
      y,
      firstThatFits(wordings, left.labelEnd - left.roomStart, fontSize),
      'text-anchor="end"',
    );
  }
  const number = item.number === null ? '' : `${item.number}  `;
  const severity = f.grade?.severity ? `, ${f.grade.severity}` : '';
  const wordings = [`${title}, ${place}${severity}`, `${title}, ${start}${severity}`, `${title}${severity}`, title];
  const room = sheetWidth - right.labelStart - estimatedWidth(number, fontSize);
  return `<text x="${right.labelStart}" y="${round(y)}"><tspan font-weight="700">${number.trim()}</tspan><tspan dx="${number ? 5 : 0}">${text(0, 0, firstThatFits(wordings, room, fontSize)).replace(/^<text[^>]*>|<\/text>$/g, '')}</tspan></text>`;
}

function legendMarkup(
  named: readonly MaterialName[],
  hasUnsaid: boolean,
  y: number,
  idPrefix: string,
): { markup: string; bottom: number } {
  const entries: { swatch: string; title: string }[] = [
    ...named.map((name) => ({
      swatch: `<rect width="22" height="12" fill="url(#${idPrefix}-${name})" stroke="#111" stroke-width="0.8"/>`,
      title: materialTitle(name),
    })),
    ...(hasUnsaid
      ? [
          {
            swatch: '<rect width="22" height="12" fill="#fff" stroke="#111" stroke-width="0.8"/>',
            title: 'material not said',
          },
        ]
      : []),
    {
      swatch: '<rect x="6" y="1.5" width="9" height="9" fill="#fff" stroke="#111" stroke-width="1.5"/>',
      title: 'fitting',
    },
    { swatch: '<path d="M0 6H22" stroke="#111" stroke-width="4"/>', title: 'limit of the inspection' },
    {
      swatch: '<path d="M11 -0.5L17.5 6L11 12.5L4.5 6Z" fill="#fff" stroke="#111" stroke-width="1.5"/>',
      title: 'minor or not graded',
    },
    {
      swatch:
        '<path d="M11 -0.5L17.5 6L11 12.5L4.5 6Z" fill="#fff" stroke="#111" stroke-width="1.5"/><path d="M11 -0.5L17.5 6L11 12.5Z" fill="#111"/>',
      title: 'moderate',
    },
    {
      swatch: '<path d="M11 -0.5L17.5 6L11 12.5L4.5 6Z" fill="#111" stroke="#111" stroke-width="1.5"/>',
      title: 'severe',
    },
    {
      swatch:
        '<path d="M11 -0.5L17.5 6L11 12.5L4.5 6Z" fill="#fff" stroke="#111" stroke-width="1.5" stroke-dasharray="2 2"/>',
      title: 'suspected or open',
    },
  ];
  let x = 10;
  let rowY = y;
  const out: string[] = [];
  for (const { swatch, title } of entries) {
    const width = 30 + estimatedWidth(title, fontSize) + 12;
    if (x + width > sheetWidth) {
      x = 10;
      rowY += 20;
    }
    out.push(`<g transform="translate(${round(x)} ${round(rowY)})">${swatch}${text(29, 10.5, title)}</g>`);
    x += width;
  }
  return { markup: out.join(''), bottom: rowY + 24 };
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
