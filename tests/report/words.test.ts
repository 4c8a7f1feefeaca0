import { describe, expect, it } from 'vitest';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { composeReport } from '../../src/7-report/compose-report.ts';
import { count, list, oneOf, plural, several } from '../../src/7-report/wording/counting.ts';
import { inchSize, length, reading, volumeRange } from '../../src/7-report/wording/lengths.ts';
import { atPlace, clockWords } from '../../src/7-report/wording/places.ts';
import { type DraftInput, gradeDraft } from '../grade/make-draft.ts';

const short = (input: DraftInput) => composeReport(gradeDraft(input), { stills: [], signed: null }).short;
const kind = (name: string) => kinds.find((k) => k.name === name)!;

describe('lengths', () => {
  it.each([
    [0, '0 ft'],
    [0.5, '6 in'],
    [19, '19 ft'],
    [19.5, '19 ft 6 in'],
    [19.99, '20 ft'],
    [46.8, '46 ft 10 in'],
  ])('%f ft is %s', (feet, words) => {
    expect(length(feet, 'feet')).toBe(words);
  });

  it('are metres when asked', () => {
    expect(length(10, 'meters')).toBe('3.0 m');
    expect(inchSize(2, 'meters')).toBe('51 mm (2 in)');
    expect(volumeRange(1, 2, 'meters')).toBe('3.8 to 7.6 L');
  });

  it('of the counter stay as the counter shows them', () => {
    expect(reading(41.25, 'ft')).toBe('41.25 ft');
    expect(reading(3.048 / 0.3048, 'm')).toBe('3.05 m');
  });
});

describe('singular and plural', () => {
  it.each([
    ['belly', 'a belly', 'two bellies'],
    ['open-joint', 'an open joint', 'two open joints'],
    ['offset-joint', 'an offset joint', 'two offset joints'],
    ['roots', 'roots', 'roots in two places'],
    ['grease', 'grease', 'grease in two places'],
    ['main-connection', 'a connection to the public main', 'two connections to the public main'],
  ])('%s', (name, one, two) => {
    expect([oneOf(kind(name)), several(kind(name), 2)]).toEqual([one, two]);
  });

  it('counts in words up to ten', () => {
    expect([count(1), count(10), count(11)]).toEqual(['one', 'ten', '11']);
    expect([plural(1, 'run', 'runs'), plural(2, 'run', 'runs')]).toEqual(['one run', 'two runs']);
    expect([list([]), list(['a']), list(['a', 'b', 'c'])]).toEqual(['', 'a', 'a, b and c']);
  });
});

describe('places', () => {
  const place = { counterFeet: 22, feet: 22, plusMinusFeet: 1, basis: 'spoken' } as const;

  it('say how sure they are', () => {
    expect(atPlace(place, null, 'feet')).toBe('at 22 ft');
    expect(atPlace(place, { ...place, feet: 30 }, 'feet')).toBe('from 22 ft to 30 ft');
    expect(atPlace({ ...place, basis: 'track' }, null, 'feet')).toBe('at about 22 ft');
    expect(atPlace(null, null, 'feet')).toBe('at a place whose distance was not said');
    expect(atPlace({ ...place, feet: null }, null, 'feet')).toBe('in the riser, before the pipe');
  });

  it('on the clock', () => {
    expect(clockWords({ clock: 9, clockTo: 3, position: null })).toBe('from 9 to 3 o’clock');
    expect(clockWords({ clock: 11, clockTo: null, position: 'top' })).toBe('11 o’clock');
    expect(clockWords({ clock: null, clockTo: null, position: 'all-around' })).toBe('all around');
    expect(clockWords({ clock: null, clockTo: null, position: null })).toBe('');
  });
});

describe('three sentences for a buyer', () => {
  it('of a sound line', () => {
    expect(short({ observations: [{ kind: 'main-connection', at: 60 }] })).toEqual([
      'The camera went 60 ft downstream from the front cleanout, and it reached the public main.',
      'No defect was noted in the part that was seen.',
      'Nothing that was seen calls for repair.',
    ]);
  });

  it('of one defect', () => {
    expect(short({ observations: [{ kind: 'hole', at: 9 }] }).slice(1)).toEqual([
      'It showed one thing, severe: a hole at 9 ft.',
      'Have a licensed plumber or sewer contractor price the repair of the hole at 9 ft.',
    ]);
  });

  it('of several', () => {
    const observations = [
      { kind: 'roots', at: 23, percent: 10 },
      { kind: 'belly', at: 34, to: 41, percent: 30 },
      { kind: 'collapse', at: 55 },
      { kind: 'crack', at: 50, status: 'suspected' },
    ] as const;
    expect(short({ observations, runs: [{ end: { at: 55, reason: 'stopped' } }] })).toEqual([
      'The camera went 55 ft downstream from the front cleanout, and it was stopped before it saw the public main.',
      'It showed four things of note, one severe, one moderate, one minor and one only suspected; the severe one is a collapse at 55 ft.',
      'Have a licensed plumber or sewer contractor deal at once with the collapse at 55 ft.',
    ]);
  });

  it('of several runs say in which', () => {
    const input: DraftInput = {
      runs: [{}, { direction: 'upstream', end: { at: 20, reason: 'end-of-line' } }],
      observations: [
        { kind: 'crack', at: 10, run: 2 },
        { kind: 'stopped', at: 20, run: 2 },
      ],
    };
    expect(short(input)).toEqual([
      'The camera was put in twice and went 80 ft altogether, and it reached the public main.',
      'It showed one thing, moderate: a crack at 10 ft in run 2.',
      'No repair is advised now; have the line looked at again in one to two years, and have the part that was not seen looked at.',
    ]);
  });

  it('never claim that a tank or main was reached unless it is on record', () => {
    const [sentence] = short({ runs: [{ end: null }], observations: [{ kind: 'wye', at: 12 }] });
    expect(sentence).toBe(
      'The camera went 12 ft downstream from the front cleanout, and reaching the public main is not on record.',
    );
  });

  it('of nothing at all', () => {
    expect(short({ runs: [] })).toEqual([
      'No run of the camera is on record.',
      'Nothing can be said of the condition of the line.',
      'Have the line inspected before relying on this report.',
    ]);
  });
});

describe('the vocabulary of the report', () => {
  it.each(kinds.map((k) => [k.name, k] as const))('explains %s in full sentences', (_name, { report, title }) => {
    expect(report.meaning).toMatch(/^[A-Z].*\.$/);
    expect(report.next).toMatch(/^[A-Z].*\.$/);
    expect(report.glossary).toMatch(/^[A-Z][^:]*: [a-z].*\.$/);
    expect(title).toMatch(/^[A-Z]/);
  });
});
