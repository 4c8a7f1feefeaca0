/** Text in SVG: escaped, and short enough for the room it has. */

import { printableText } from '../printable.ts';

/** The fonts that come with the report; a viewer without them takes its own. */
export const fontFamily = "'Atkinson Hyperlegible', 'DejaVu Sans', sans-serif";

/** Wider than the average letter of the font, so that what is taken to fit does fit. */
const widthPerLetter = 0.58;

export function escapeXml(text: string): string {
  return printableText(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

export function estimatedWidth(text: string, fontSize: number): number {
  return text.length * fontSize * widthPerLetter;
}

/** The first wording that fits; the last one when none does. */
export function firstThatFits(wordings: readonly string[], room: number, fontSize: number): string {
  return wordings.find((wording) => estimatedWidth(wording, fontSize) <= room) ?? wordings.at(-1)!;
}

/** Breaks running text into lines of at most `room`. */
export function linesOf(text: string, room: number, fontSize: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && estimatedWidth(`${last} ${word}`, fontSize) <= room)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

export function text(x: number, y: number, content: string, attributes = ''): string {
  return `<text x="${round(x)}" y="${round(y)}"${attributes ? ` ${attributes}` : ''}>${escapeXml(content)}</text>`;
}

export function round(value: number): number {
  return Math.round(value * 100) / 100;
}
