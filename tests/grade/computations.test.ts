import { describe, expect, it } from 'vitest';
import { slopeTable } from '../../shared/vocabulary/grading/slopes.ts';
import { correctedDistance, counterPlusMinusFeet, placeOf } from '../../src/6-grade/distances.ts';
import { fallByCode, leastSlope } from '../../src/6-grade/fall-by-code.ts';
import { trueBore } from '../../src/6-grade/pipe-here.ts';
import { deflectionPercent, ovalityPercent } from '../../src/6-grade/roundness.ts';
import { backwaterReach, heldWater, waterDepth } from '../../src/6-grade/water.ts';
import { gradeDraft } from './make-draft.ts';

describe('true inside diameters', () => {
  // ASTM A74 as printed in a pipe maker's care guide; ASTM D2665 from outside diameter less two walls (both second
  // hand): 3 in OD 88.70 to 89.10 mm, wall 5.49; 4 in 114.07 to 114.53, 6.02; 6 in 168.00 to 168.56, 7.11.
  it.each([
    ['cast-iron', 3, 2.96],
    ['cast-iron', 4, 3.94],
    ['cast-iron', 6, 5.94],
    ['pvc', 3, (88.9 - 2 * 5.49) / 25.4],
    ['pvc', 4, (114.3 - 2 * 6.02) / 25.4],
    ['pvc', 6, (168.28 - 2 * 7.11) / 25.4],
  ] as const)('of %s %i in', (material, nominalIn, insideIn) => {
    expect(trueBore(material, nominalIn)!.insideIn).toBeCloseTo(insideIn, 2);
  });

  it('fall back on the nominal size and say so', () => {
    expect(trueBore('clay', 6)).toEqual({ insideIn: 6, source: expect.stringContaining('nominal size') });
    expect(trueBore('pvc', null)).toBeNull();
  });
});

describe('fall by code', () => {
  // Chicago Plumbing Code table 18-29-704.1, the same sizes as IPC table 704.1: 2½ in or less ¼ in/ft; 3 to 6 in ⅛;
  // 8 in or larger 1/16 (2.08 %, 1.04 %, 0.52 %).
  it.each([
    [1.5, 1 / 4, 2.08],
    [2.5, 1 / 4, 2.08],
    [3, 1 / 8, 1.04],
    [4, 1 / 8, 1.04],
    [6, 1 / 8, 1.04],
    [8, 1 / 16, 0.52],
    [12, 1 / 16, 0.52],
  ])('of a %f in drain is %f in/ft', (nominalIn, inchesPerFoot, percent) => {
    expect(leastSlope(nominalIn, slopeTable)).toBe(inchesPerFoot);
    const { results } = fallByCode(nominalIn, 40, slopeTable);
    expect(results[0]!.value).toBe(inchesPerFoot * 40);
    expect(results[1]!.value).toBeCloseTo(percent, 2);
  });
});

describe('standing water', () => {
  it('stands back by depth over slope', () => {
    // Geometry: 1 in on ¼ in/ft reaches 4 ft, on ⅛ in/ft 8 ft.
    expect(backwaterReach(1, 1 / 4, '').results[0]!.value).toBe(4);
    expect(backwaterReach(1, 1 / 8, '').results[0]!.value).toBe(8);
  });

  it('of a quarter of the diameter fills 19.6 percent of the area, of half of it half', () => {
    const share = (percent: number) =>
      waterDepth(null, percent, {
        material: null,
        nominalIn: null,
        insideIn: null,
        insideSource: null,
      })!.computation!.results.find((r) => r.name === 'share of the area')!.value;
    expect(share(25)).toBeCloseTo(19.55, 2);
    expect(share(50)).toBeCloseTo(50, 10);
  });

  it('held in a full pipe is its volume', () => {
    // 10 ft of 4 in bore: π/4 · 4² · 120 in³ = 1508 in³ = 6.528 US gal = 24.71 L (231 in³ to the gallon).
    const { results } = heldWater(10, 4, 4);
    expect(results.find((r) => r.name === 'high' && r.unit === 'gal')!.value).toBeCloseTo(6.528, 3);
    expect(results.find((r) => r.name === 'high' && r.unit === 'L')!.value).toBeCloseTo(24.71, 2);
  });

  it('that deepens evenly to half of the pipe holds the mean of the segment, which has a closed form', () => {
    // ∫A dx up to half depth is the first moment of a half disc about its diameter, 1/(3π) of the full area; the mean
    // over that half is twice this.
    const { results } = heldWater(10, 2, 4);
    const full = ((Math.PI / 4) * 16 * 120) / 231;
    expect(results[0]!.value / full).toBeCloseTo(2 / (3 * Math.PI), 4);
  });

  it('shows every input with where it came from', () => {
    const graded = gradeDraft({
      observations: [
        { kind: 'pipe', at: 0, material: 'cast-iron', diameterIn: 4 },
        { kind: 'belly', at: 20, to: 30, inches: 2 },
      ],
    });
    const names = graded.findings[1]!.computations.map((c) => c.name);
    expect(names).toEqual(['standing water', 'water held', 'how far the water stands back']);
    for (const computation of graded.findings[1]!.computations)
      for (const input of computation.inputs) expect(input.source).not.toBe('');
  });
});

describe('distances', () => {
  it('are counted from the entry, the reading kept beside', () => {
    // Pre-set footage rule (Sunny Isles Beach 02762 section 3.2): riser 3.5 ft, reading 41.2, distance 37.7.
    const place = placeOf(41.2, { startFeet: 0, entryFeet: 3.5, feetPerUnit: 1 }, 'spoken');
    expect(place).toEqual({ counterFeet: 41.2, feet: 37.7, plusMinusFeet: 1, basis: 'spoken' });
    expect(correctedDistance(place, 3.5)!.results[0]!.value).toBe(37.7);
  });

  it('are never negative', () => {
    expect(placeOf(2, { startFeet: 0, entryFeet: 3.5, feetPerUnit: 1 }, 'spoken').feet).toBeNull();
  });

  it('carry the larger of half a percent and one foot', () => {
    // Sunny Isles Beach 02762 section 3.2: ±0.5 % of the length or 1 ft, whichever is greater.
    expect(counterPlusMinusFeet(50)).toBe(1);
    expect(counterPlusMinusFeet(200)).toBe(1);
    expect(counterPlusMinusFeet(300)).toBe(1.5);
  });

  it('that were worked out add their own doubt', () => {
    expect(placeOf(30, { startFeet: 0, entryFeet: 0, feetPerUnit: 1 }, 'track', 2).plusMinusFeet).toBe(3);
  });

  it('of a metric job are turned into feet', () => {
    const graded = gradeDraft({
      unit: 'm',
      runs: [{ end: { at: 20, reason: 'main' } }],
      observations: [{ kind: 'crack', at: 3.048 }],
    });
    expect(graded.findings[0]!.at!.feet).toBeCloseTo(10, 6);
    expect(graded.runs[0]!.reachedFeet).toBeCloseTo(65.617, 3);
  });
});

describe('roundness', () => {
  it('follows the published forms', () => {
    // Uni-Bell as restated by a trade page: 100·(ID − height)/ID. ASTM F1216 X1.1 (section from memory): both forms.
    expect(deflectionPercent(4, 3.7)).toBeCloseTo(7.5, 10);
    expect(ovalityPercent(3.8, 4.2)).toBeCloseTo(5, 10);
  });
});
