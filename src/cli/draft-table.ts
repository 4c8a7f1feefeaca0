/**
 * A draft as plain text for a tired person: first what needs a look and why, then each run in order of distance,
 * then what was said not to be there, what could not be placed, and what was set aside.
 */
import type { Aside, Draft, Flag, Heard } from '../../shared/schemas/draft.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { reasonSentences } from '../../shared/vocabulary/review-reasons.ts';
import { shortDetails, shortName, shortPlace, shortTime } from '../../shared/wording/short.ts';
import type { Effects } from './effects.ts';
import { type Paper, runTables, runTitle } from './run-tables.ts';
import { wrap } from './wrap.ts';

export function draftTable(draft: Draft, options: { folder: string; reviewWith: string; effects: Effects }): string {
  const paper: Paper = { columns: options.effects.columns, style: options.effects.style };
  const blocks = [
    head(draft, paper),
    flaggedBlock(draft, paper),
    ...runTables(draft, paper),
    tail(draft, paper),
    footer(draft, options, paper),
  ];
  return blocks.filter((block) => block !== '').join('\n\n');
}

function head(draft: Draft, { columns, style }: Paper): string {
  const address = draft.site.address?.value;
  const open = countToLookAt(draft);
  const title = address === undefined ? draft.recording.file : `${address} (${draft.recording.file})`;
  const counts = [
    shortTime(draft.recording.seconds),
    count(draft.runs.length, 'run'),
    count(draft.observations.length, 'observation'),
    open === 0 ? 'nothing flagged' : `${open} to look at`,
  ].join(', ');
  const lines = [...wrap(title, columns).map((line) => style('bold', line)), ...wrap(counts, columns)];
  if (draft.observations.length === 0)
    lines.push('', ...wrap('The talk names no findings: the draft is empty.', columns));
  return lines.join('\n');
}

function countToLookAt(draft: Draft): number {
  const isFlagged = (item: { review: Flag[] }) => item.review.length > 0;
  return (
    draft.observations.filter(isFlagged).length +
    draft.runs.filter(isFlagged).length +
    Object.values(draft.site).filter(isFlagged).length +
    draft.unplaced.length
  );
}

function flaggedBlock(draft: Draft, paper: Paper): string {
  const lines = [
    ...Object.entries(draft.site).flatMap(([field, said]) =>
      flagLines(`${field}: ${said.value}`, said.heard, said.review, paper),
    ),
    ...draft.runs.flatMap((run) => flagLines(runTitle(run, draft), run.heard, run.review, paper)),
    ...draft.observations.flatMap((o) => {
      const details = shortDetails(o);
      const title = `Run ${o.run}, ${shortPlace(o, draft.unit)}: ${shortName(o)}${details && `, ${details}`}`;
      return flagLines(title, o.heard, o.review, paper);
    }),
    ...draft.unplaced.flatMap((aside) => [
      `  ${paper.style('bold', 'Could not be placed')}`,
      ...wrap(aside.why, paper.columns, '    - ', '      '),
      ...quoted(aside.heard, paper, '    '),
    ]),
  ];
  return lines.length === 0 ? '' : [paper.style('bold', 'LOOK AT THESE FIRST'), ...lines].join('\n');
}

function flagLines(title: string, heard: Heard | null, review: Flag[], paper: Paper): string[] {
  if (review.length === 0) return [];
  return [
    ...wrap(title, paper.columns, '  ', '    ').map((line) => paper.style('bold', line)),
    ...review.flatMap((flag) => wrap(sayFlag(flag), paper.columns, '    - ', '      ')),
    ...(heard === null ? [] : quoted(heard, paper, '    ')),
  ];
}

function sayFlag(flag: Flag): string {
  const offers = flag.offers?.map((offer) => offer.label) ?? [];
  const text = flag.detail ?? reasonSentences[flag.reason];
  return offers.length === 0 ? text : `${text} (${offers.join(' or ')}?)`;
}

function quoted(heard: Heard, paper: Paper, indent: string): string[] {
  const time = shortTime(heard.start);
  if (heard.text === '') return [`${indent}${time} to ${shortTime(heard.end)}`];
  const hang = ' '.repeat(indent.length + time.length + 3);
  return wrap(`"${heard.text}"`, paper.columns, `${indent}${time}  `, hang).map((line) => paper.style('dim', line));
}

function tail(draft: Draft, paper: Paper): string {
  const lines: string[] = [];
  for (const run of draft.runs) {
    const names = new Set(draft.absent.filter((absent) => absent.run === run.n).map((absent) => pluralOf(absent.kind)));
    if (names.size > 0)
      lines.push(...wrap(`Said not to be there, run ${run.n}: ${[...names].join(', ')}`, paper.columns, '', '  '));
  }
  if (draft.setAside.length > 0) {
    lines.push(...wrap(`Set aside as no finding: ${sayAsides(draft.setAside)}`, paper.columns, '', '  '));
  }
  return lines.join('\n');
}

function sayAsides(asides: Aside[]): string {
  const seconds = asides.reduce((sum, aside) => sum + aside.heard.end - aside.heard.start, 0);
  const counts = new Map<string, number>();
  for (const aside of asides) counts.set(aside.why, (counts.get(aside.why) ?? 0) + 1);
  const list = [...counts].sort((a, b) => b[1] - a[1]).map(([why, times]) => `${why} ${times}`);
  return `${count(asides.length, 'stretch', 'stretches')} of talk, ${shortTime(seconds)} in all (${list.join(', ')})`;
}

function footer(draft: Draft, { folder, reviewWith }: { folder: string; reviewWith: string }, paper: Paper): string {
  const written = wrap(`Written: words.json and draft.json in ${folder}`, paper.columns, '', '  ');
  if (draft.observations.length + draft.unplaced.length === 0) return written.join('\n');
  const caution = 'This is a draft: check it against the recording before anyone relies on it.';
  // The command stays on one line, however long, so that it can be copied.
  return [...written, ...wrap(caution, paper.columns, '', '  '), `Next: ${reviewWith}`].join('\n');
}

function pluralOf(name: string): string {
  return kinds.find((kind) => kind.name === name)?.plural ?? name;
}

function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}
