/** What is printed: the table, the tree and the progress line, at every width. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Draft, draftSchema } from '../../shared/schemas/draft.ts';
import { kindNames } from '../../shared/vocabulary/kinds/index.ts';
import { materialNames } from '../../shared/vocabulary/materials.ts';
import { draftTable } from '../../src/cli/draft-table.ts';
import type { Effects } from '../../src/cli/effects.ts';
import { folderFor } from '../../src/cli/inspection-folder.ts';
import { progressLine } from '../../src/cli/progress-line.ts';
import { wrap } from '../../src/cli/wrap.ts';

/** Effects that only record; `clock` is moved by the test. */
function recorded(columns: number, noteIsTerminal = false) {
  const notes: string[] = [];
  const clock = { seconds: 0 };
  const effects: Effects = {
    print: () => {},
    note: (text) => void notes.push(text),
    style: (_format, text) => text,
    noteIsTerminal,
    columns,
    program: 'lineword',
    nowSeconds: () => clock.seconds,
    interruptible: (work) => work(new AbortController().signal),
  };
  return { effects, notes, clock };
}

const heard = { start: 61.2, end: 66, text: 'twenty three feet, roots at the joint' };
const plain = { schema: 'lineword/draft@1', recording: { file: 'elm.m4a', sha256: '0', seconds: 90 } } as const;
const empty = { ...plain, runs: [], observations: [], absent: [], unplaced: [], setAside: [] };
const run = { n: 1, access: 'front cleanout', direction: 'downstream', heard, end: { at: 52, reason: 'main' } };

function table(draft: object, columns = 80): string {
  return draftTable(draftSchema.parse(draft), {
    folder: 'elm',
    reviewWith: 'lineword review elm',
    effects: recorded(columns).effects,
  });
}

describe('the table', () => {
  it('says so when the talk holds no finding', () => {
    expect(table(empty)).toContain('The talk names no findings: the draft is empty.');
  });

  it('puts what needs a look first, with the reason in words and what may be meant instead', () => {
    const unsure = { id: 'a', run: 1, kind: 'roots', status: 'present', heard, confidence: 0.6, at: 23 };
    const flags = [
      { reason: 'distance-jumps', offers: [15, 50].map((value) => ({ value, label: `${value} ft` })) },
      { reason: 'word-unsure', detail: 'heard "routes", taken as roots' },
    ];
    const sure = { ...unsure, id: 'b', kind: 'wye', at: 8, review: [] };
    const text = table({ ...empty, runs: [run], observations: [sure, { ...unsure, review: flags }] });
    const lines = text.split('\n');
    expect(lines[1]).toBe('1:30, 1 run, 2 observations, 1 to look at');
    expect(lines[3]).toBe('LOOK AT THESE FIRST');
    expect(lines[4]).toBe('  Run 1, 23 ft: Roots');
    expect(lines[5]).toContain('does not fit where the camera was (15 ft or 50 ft?)');
    expect(lines[6]).toBe('    - heard "routes", taken as roots');
    expect(lines[7]).toBe('    1:01  "twenty three feet, roots at the joint"');
    expect(text).toMatch(/^! +23 ft {2}Roots/m);
    expect(text).toMatch(/^ +8 ft {2}Wye/m);
    expect(text.indexOf('  8 ft')).toBeLessThan(text.indexOf(' 23 ft  Roots'));
  });

  it('names the runs, what was denied and what was set aside', () => {
    const text = table({
      ...empty,
      runs: [run, { ...run, n: 2, access: null, direction: null, end: null }],
      absent: [
        { run: 1, kind: 'break', heard },
        { run: 1, kind: 'collapse', heard },
      ],
      setAside: [
        { heard: { ...heard, end: 65 }, why: 'chat' },
        { heard, why: 'chat' },
      ],
    });
    expect(text).toContain('Run 1: front cleanout, downstream, ends at 52 ft (main)');
    expect(text).toContain('Run 2: access not said, direction not said');
    expect(text).toMatch(/Said not to be there, run 1: breaks, collapses/);
    expect(text).toContain('2 stretches of talk, 0:08 in all (chat 2)');
  });

  const short = fc
    .string({ unit: fc.constantFrom('a', 'b', ' ', 'é', '"'), maxLength: 60 })
    .map((s) => s.trim() || 'x');
  const feet = fc.option(fc.double({ min: 0, max: 300, noNaN: true }));
  const anyHeard = fc.record({ start: fc.nat(9000), end: fc.nat(9000), text: short });
  const words = (text: string) => text.split(/\s+/).every((word) => word.length < 20);
  const observation = fc.record({
    id: fc.constant('o'),
    run: fc.integer({ min: 1, max: 2 }),
    kind: fc.constantFrom(...kindNames),
    status: fc.constantFrom('present', 'suspected'),
    at: feet,
    to: feet,
    material: fc.option(fc.constantFrom(...materialNames)),
    percent: fc.option(fc.nat(100)),
    heard: anyHeard,
    again: fc.array(anyHeard, { maxLength: 3 }),
    confidence: fc.constant(0.5),
    review: fc.array(fc.record({ reason: fc.constantFrom('hedged', 'distance-missing'), detail: short }), {
      maxLength: 2,
    }),
  });
  const drafts = fc
    .record({
      observations: fc.array(observation, { maxLength: 6 }),
      unplaced: fc.array(fc.record({ heard: anyHeard, why: short })),
    })
    .map((some) => draftSchema.parse({ ...empty, runs: [run, { ...run, n: 2 }], ...some }) satisfies Draft);

  it('keeps to the width and shows every observation, whatever the draft', () => {
    fc.assert(
      fc.property(drafts, fc.constantFrom(60, 80, 110), (draft, columns) => {
        const text = draftTable(draft, {
          folder: 'elm',
          reviewWith: 'lineword review elm',
          effects: recorded(columns).effects,
        });
        for (const line of text.split('\n').filter(words)) expect(line.length, line).toBeLessThanOrEqual(columns);
        const rows = text.split('\n').filter((line) => /^[ !] +(\?|(about )?[\d.–]+ ft) {2}/.test(line));
        expect(rows).toHaveLength(draft.observations.length);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

describe('progress', () => {
  it('prints a line a tenth of the way when nobody watches, with the time left', () => {
    const { effects, notes, clock } = recorded(80);
    const line = progressLine('Listening', effects);
    for (let done = 0; done <= 600; done += 10) {
      clock.seconds = done / 10;
      line.update(done, 600);
    }
    line.end();
    expect(notes).toHaveLength(11);
    expect(notes[0]).toBe('Listening: 0:00 of 10:00\n');
    expect(notes[5]).toBe('Listening: 5:00 of 10:00, about 30 s left\n');
    expect(notes[10]).toBe('Listening: 10:00 of 10:00\n');
  });

  it('does not count what an earlier run did as speed of this one', () => {
    const { effects, notes, clock } = recorded(80);
    const line = progressLine('Listening', effects);
    line.update(0, 4000);
    line.update(3000, 4000);
    clock.seconds = 100;
    line.update(3500, 4000);
    expect(notes.at(-1)).toBe('Listening: 58:20 of 1:06:40, about 2 min left\n');
  });

  it('redraws one line on a terminal and clears it', () => {
    const { effects, notes } = recorded(80, true);
    const line = progressLine('Listening', effects);
    line.update(0, 60);
    line.update(30, 60);
    line.end();
    expect(notes.join('')).toBe('\rListening: 0:00 of 1:00\rListening: 0:30 of 1:00\r                       \r');
  });
});

describe('small things', () => {
  it('puts results beside the recording, in a folder named after it', () => {
    expect(folderFor('/a/elm.m4a')).toBe('/a/elm');
    expect(folderFor('/a/elm.court.mp3')).toBe('/a/elm.court');
    expect(folderFor('/a/REC0001')).toBe('/a/REC0001-lineword');
    expect(folderFor('/a/elm/words.json')).toBe('/a/elm');
  });

  it('wraps at spaces and keeps a long path whole', () => {
    expect(wrap('one two three', 9, '- ', '  ')).toEqual(['- one two', '  three']);
    expect(wrap('see /a/very/long/path now', 10)).toEqual(['see', '/a/very/long/path', 'now']);
    expect(wrap('', 10)).toEqual([]);
  });
});
