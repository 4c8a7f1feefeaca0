/** `summary.txt`: a short plain text to paste into a larger inspection report. */
import type { Report } from '../../../shared/schemas/report.ts';

const columns = 76;

export function summaryText(report: Report): string {
  const date = report.facts.find((fact) => fact.label === 'Date')!.value;
  const inspector = report.facts.find((fact) => fact.label === 'Inspector')!.value;
  const parts: string[][] = [
    report.draftNotice === null ? [] : [report.draftNotice.toUpperCase()],
    [
      `${report.title}, ${report.address.replace(/^Address not/, 'address not')}`,
      `Date: ${date}. Inspector: ${inspector}.`,
    ],
    report.short,
    report.openItems.length === 0
      ? []
      : [
          `${report.openItems.length} ${report.openItems.length === 1 ? 'item has' : 'items have'} not been settled and ${report.openItems.length === 1 ? 'is' : 'are'} not counted.`,
        ],
    report.next.map((group) => `${group.title}: ${placesOf(group).join('; ')}.`),
    report.notInspected.length === 0
      ? []
      : [`Not inspected: ${report.notInspected.map(({ what }) => what).join('; ')}.`],
    [report.ownership[0]!],
    [
      'The full report has the limits of this inspection, the cautions and the sources of each grade. Local codes and licensed trades prevail.',
    ],
    report.signature.slice(0, 1),
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.map((line) => wrapped(line)).join('\n'))
    .join('\n\n')}\n`;
}

function placesOf(group: Report['next'][number]): string[] {
  return group.trades.flatMap((trade) => trade.steps.flatMap((step) => step.where));
}

/** Lines of at most `columns`. */
function wrapped(text: string): string {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= columns) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.join('\n');
}
