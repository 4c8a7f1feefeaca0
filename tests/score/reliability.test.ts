/** Calibration, risk against coverage, and the bound on silent errors. */
import { describe, expect, it } from 'vitest';
import { reliabilityOf, upperBound95 } from '../../src/score/reliability.ts';

const claim = (confidence: number, isRight: boolean, isFlagged = false) => ({ confidence, isRight, isFlagged });

describe('upperBound95', () => {
  // One-sided exact (Clopper-Pearson) bounds. Without errors it has a closed form, 1 - 0.05^(1/n);
  // the others were computed with scipy 1.17, beta.ppf(0.95, k + 1, n - k).
  it.each([
    [0, 10, 1 - 0.05 ** (1 / 10)],
    [0, 299, 1 - 0.05 ** (1 / 299)],
    [1, 20, 0.2161062],
    [3, 100, 0.0757108],
    [10, 1000, 0.0169032],
    [5, 5, 1],
  ])('%i errors of %i', (errors, n, bound) => {
    expect(upperBound95(errors, n)).toBeCloseTo(bound, 5);
  });
});

describe('reliabilityOf', () => {
  it('finds no error of calibration where each confidence comes true', () => {
    const claims = Array.from({ length: 10 }, (_, i) => claim(0.9, i > 0));
    const { bins, expectedCalibrationError } = reliabilityOf(claims);
    expect(bins.map((bin) => bin.n)).toEqual([0, 0, 0, 10, 0]);
    expect(expectedCalibrationError).toBeCloseTo(0, 9);
  });

  it('weighs each bin by how many are in it', () => {
    const claims = [claim(0.6, true), claim(0.6, true), claim(0.6, true), claim(1, false)];
    expect(reliabilityOf(claims).expectedCalibrationError).toBeCloseTo((3 * 0.4 + 1) / 4, 9);
  });

  it('has the less risk the surer the wrong ones come last', () => {
    const good = [claim(0.9, true), claim(0.8, true), claim(0.7, true), claim(0.6, false)];
    const bad = [claim(0.9, false), claim(0.8, true), claim(0.7, true), claim(0.6, true)];
    expect(reliabilityOf(good).areaUnderRisk).toBeCloseTo(1 / 16, 9);
    expect(reliabilityOf(bad).areaUnderRisk).toBeCloseTo(4 / 16, 9);
    expect(reliabilityOf(good).risks[0]).toEqual({ coverage: 0.5, risk: 0 });
    expect(reliabilityOf(bad).risks[0]).toEqual({ coverage: 0.5, risk: 0.5 });
  });

  it('counts only what was not flagged as silent', () => {
    const claims = [claim(0.9, false, true), claim(0.9, false), claim(0.9, true)];
    expect(reliabilityOf(claims).silent).toMatchObject({ errors: 1, n: 2 });
  });

  it('has figures for nothing at all', () => {
    expect(reliabilityOf([])).toMatchObject({
      expectedCalibrationError: 0,
      areaUnderRisk: 0,
      silent: { n: 0, upper95: 1 },
    });
  });
});
