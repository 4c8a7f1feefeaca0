import { describe, expect, it } from 'vitest';
import {
  areaShare,
  depthShareForArea,
  flowShare,
  fullVelocityFeetPerSecond,
  hydraulicRadiusShare,
  surfaceWidthShare,
  velocityShare,
  wettedPerimeterShare,
} from '../../src/6-grade/circular-segment.ts';
import { areaTable, hydraulicRadiusTable, surfaceWidthTable } from './partial-flow-table.ts';

describe('partly filled round pipe', () => {
  // US EPA, circular tables of the agency's hydraulic model (USEPA/Stormwater-Management-Model, src/solver/xsect.dat):
  // 51 points, depth in steps of 0.02. The first radius there is a floor against division by nought, not a value.
  it.each(areaTable.map((area, step) => [step / 50, area, hydraulicRadiusTable[step]!, surfaceWidthTable[step]!]))(
    'agrees with the EPA table at depth %f',
    (depth, area, radius, width) => {
      expect(Math.abs(areaShare(depth) - area)).toBeLessThanOrEqual(0.0015);
      if (depth > 0) expect(Math.abs(hydraulicRadiusShare(depth) - radius)).toBeLessThanOrEqual(0.0015);
      expect(Math.abs(surfaceWidthShare(depth) - width)).toBeLessThanOrEqual(0.0015);
    },
  );

  // Encyclopaedia Britannica, 11th edition, vol. 14, "Hydraulics" section 111: depth κ·r, hydraulic mean depth μ·r,
  // area ν·r². The rows κ .05 and .10 are misprinted there and left out.
  it.each([
    [0.5, 0.293, 0.614],
    [0.7, 0.387, 0.979],
    [0.8, 0.429, 1.175],
    [1.0, 0.5, 1.571],
  ])('agrees with the Britannica row κ %f', (depthOverRadius, meanDepth, area) => {
    const depth = depthOverRadius / 2;
    expect(Math.abs((hydraulicRadiusShare(depth) * 0.5) / meanDepth - 1)).toBeLessThan(0.002);
    expect(Math.abs((areaShare(depth) * Math.PI) / area - 1)).toBeLessThan(0.002);
  });

  // Fair, Geyer and Okun, example 13.4: 8 in pipe 0.3 full, n .013, 2.5 ft/s full, .873 ft³/s full.
  it('gives the answers of the textbook for an 8 inch sewer 0.3 full', () => {
    expect(areaShare(0.3)).toBeCloseTo(0.252, 3);
    expect(hydraulicRadiusShare(0.3)).toBeCloseTo(0.684, 3);
    expect(velocityShare(0.3)).toBeCloseTo(0.776, 3);
    expect(flowShare(0.3)).toBeCloseTo(0.196, 3);
    expect(velocityShare(0.3) * 2.5).toBeCloseTo(1.94, 2);
    expect(flowShare(0.3) * 0.873).toBeCloseTo(0.171, 3);
    // Its self-cleaning slope at that depth: 1.46 × 5.20 ‰ = 7.6 ‰, that is 5.20 / (R/Rf).
    expect(5.2 / hydraulicRadiusShare(0.3)).toBeCloseTo(7.6, 1);
  });

  // Environmental Engineering (Weiner and Matthews, authors from memory), example 8.1: 8 in cast iron, 1 in 500.
  it('gives the velocity and flow of the textbook for a full 8 inch sewer at 1 in 500, within 1 percent', () => {
    const velocity = fullVelocityFeetPerSecond(8 / 12, 1 / 500, 0.013);
    expect(Math.abs(velocity / 1.54 - 1)).toBeLessThan(0.01);
    expect(Math.abs((velocity * (Math.PI / 4) * (8 / 12) ** 2) / 0.54 - 1)).toBeLessThan(0.01);
  });

  // Fair, Geyer and Okun, example 13.1: 12 in, n .013, slope .00405 (the book rounds .46/n, hence 1 percent).
  it('gives the velocity and flow of the textbook for a full 12 inch sewer, within 1 percent', () => {
    const velocity = fullVelocityFeetPerSecond(1, 0.00405, 0.013);
    expect(Math.abs(velocity / 2.89 - 1)).toBeLessThan(0.01);
    expect(Math.abs((velocity * Math.PI) / 4 / 2.25 - 1)).toBeLessThan(0.01);
  });

  it('has its greatest flow short of full, as handbooks say (0.81 and 0.94, from memory)', () => {
    const depths = Array.from({ length: 1001 }, (_, n) => n / 1000);
    const deepest = (of: (depth: number) => number) => depths.reduce((a, b) => (of(b) > of(a) ? b : a));
    expect(deepest(velocityShare)).toBeCloseTo(0.813, 2);
    expect(deepest(flowShare)).toBeCloseTo(0.938, 2);
  });

  it('goes from share of area back to depth', () => {
    for (const depth of [0.01, 0.1, 0.25, 0.5, 0.77, 0.99]) {
      expect(depthShareForArea(areaShare(depth))).toBeCloseTo(depth, 6);
    }
    expect(wettedPerimeterShare(0.5)).toBeCloseTo(0.5, 12);
  });
});
