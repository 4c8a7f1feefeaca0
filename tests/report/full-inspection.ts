/** An invented inspection with something of everything, for the tests of the report. */
import type { Draft } from '../../shared/schemas/draft.ts';
import type { Graded } from '../../shared/schemas/grade.ts';
import type { Inspection } from '../../shared/schemas/inspection.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { type DraftInput, gradeDraft } from '../grade/make-draft.ts';

const flag = { reason: 'distance-unsure', about: 'at', detail: 'heard "41", could be "42"' } as const;

export const fullDraft: DraftInput = {
  file: 'plover-lane.mp4',
  site: { address: '7 Plover Lane', year_built: 1938 },
  runs: [
    { access: 'front two-way cleanout', end: { at: 48, reason: 'stopped' } },
    { access: 'front two-way cleanout', direction: 'upstream', end: { at: 31, reason: 'end-of-line' } },
  ],
  observations: [
    { kind: 'pipe', at: 3.5, material: 'cast-iron', diameterIn: 4 },
    { kind: 'material-change', at: 19.5, fromMaterial: 'cast-iron', toMaterial: 'clay' },
    { kind: 'pipe', at: 19.5, material: 'clay', diameterIn: 6 },
    { kind: 'roots', at: 23, clock: 11, percent: 25 },
    { kind: 'wye', at: 26, clock: 3, serves: 'laundry' },
    { kind: 'debris', at: 29, degree: 'light', inches: 1, position: 'bottom' },
    { kind: 'belly', at: 34, to: 41, inches: 3 },
    { kind: 'crack', at: 43, position: 'top', status: 'suspected' },
    { kind: 'offset-joint', at: 46, inches: 0.5 },
    { kind: 'intrusion', at: 47, review: [flag] },
    { kind: 'stopped', at: 48 },
    { kind: 'not-reached', at: 48 },
    { kind: 'no-access', at: null, atBasis: null },
    { kind: 'pipe', at: 0, run: 2, material: 'asbestos-cement', diameterIn: 4 },
    { kind: 'cleanout', at: 12, run: 2 },
    { kind: 'hole', at: null, atBasis: null, run: 2 },
    { kind: 'end-of-line', at: 31, run: 2 },
  ],
  absent: [
    { run: 1, kind: 'break', heard: { start: 300, end: 303, text: 'no breaks' } },
    { run: 1, kind: 'roots', heard: { start: 310, end: 313, text: 'no roots at the coupling' } },
  ],
  unplaced: [
    { heard: { start: 400, end: 404, text: 'and that thing there' }, why: 'names a defect, but no run has started' },
  ],
};

export const fullFacts: Partial<Inspection> = {
  property: { address: '7 Plover Lane', client: 'A. Marsh', occupied: true },
  date: '2026-03-04',
  startTime: '9:40',
  inspector: { name: 'R. Vance', company: 'Vance Sewer Inspection', license: 'SI-0417', contact: 'vance@example.org' },
  conditions: { weather: 'dry, 52 °F', waterRun: 'ten minutes at the tub', cleaned: 'no' },
  equipment: 'push camera, 200 ft reel, 512 Hz sonde',
  ownerPart: { endsAt: 'property-line', statedBy: 'the city sewer office' },
  runs: [{ n: 1, compass: 'southeast corner of the front yard', entryOffset: 3.5, ownerEndsAt: 40 }],
};

export function fullInspection(facts: Partial<Inspection> = {}): Graded {
  return gradeDraft(fullDraft, { ...fullFacts, ...facts });
}

/** A run of this many feet with this many marks spread over it, of every kind of defect and some fittings. */
export function crowdedDraft(marks: number, feet: number): DraftInput {
  const defects = kinds.filter((kind) => kind.group === 'defect').map((kind) => kind.name);
  const fittings = ['wye', 'tee', 'coupling', 'bend', 'cleanout'] as const;
  const degrees = ['light', 'moderate', 'heavy', null] as const;
  const observations = Array.from({ length: marks }, (_, index): Partial<Draft['observations'][number]> => {
    const at = Math.round((index + 1) * (feet / (marks + 1)) * 2) / 2;
    return {
      kind: index % 4 === 3 ? fittings[index % fittings.length]! : defects[index % defects.length]!,
      at,
      to: index % 11 === 0 ? at + 3 : null,
      clock: (index % 12) + 1,
      degree: degrees[index % 4]!,
    };
  });
  return {
    runs: [{ end: { at: feet, reason: 'main' } }],
    observations: [
      { kind: 'pipe', at: 0, material: 'clay', diameterIn: 6 },
      ...(observations as NonNullable<DraftInput['observations']>),
      { kind: 'main-connection', at: feet },
    ],
  };
}
