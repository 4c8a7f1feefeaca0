import { describe, expect, test } from 'vitest';
import { draw, drawSize, listeningResult, upperBound95 } from '../../src/5-review/silent-errors.ts';

describe('the upper 95 % bound', () => {
  test('is that of Clopper and Pearson', () => {
    // Zero wrong has a closed form: 1 - 0.05^(1/n). The "rule of three" (Hanley & Lippman-Hand, JAMA 1983) is 3/n.
    for (const count of [1, 3, 10, 100, 300, 1000]) {
      expect(upperBound95(0, count)).toBeCloseTo(1 - 0.05 ** (1 / count), 9);
    }
    expect(upperBound95(0, 1000) * 1000).toBeCloseTo(3, 1);
    // All but none right also has one: the bound on n - 1 wrong of n is (0.95)^(1/n).
    expect(upperBound95(9, 10)).toBeCloseTo(0.95 ** (1 / 10), 9);
    expect(upperBound95(5, 5)).toBe(1);
    // Exact Poisson-like values by an independent sum over the binomial (checked with the beta quantile, scipy 1.x: from memory).
    expect(upperBound95(1, 100)).toBeCloseTo(0.0466, 4);
    expect(upperBound95(5, 100)).toBeCloseTo(0.1023, 4);
  });
  test('gives the 5 % it promises', () => {
    const binomial = (k: number, n: number, p: number) => {
      let choose = 1;
      for (let i = 1; i <= k; i++) choose = (choose * (n - k + i)) / i;
      return choose * p ** k * (1 - p) ** (n - k);
    };
    for (const [wrong, count] of [
      [1, 12],
      [2, 19],
      [4, 30],
    ] as const) {
      const p = upperBound95(wrong, count);
      let sum = 0;
      for (let k = 0; k <= wrong; k++) sum += binomial(k, count, p);
      expect(sum).toBeCloseTo(0.05, 9);
    }
  });
  test('nothing listened to says nothing', () => {
    expect(listeningResult(4, 0, 0)).toMatchObject({ share: null, upper95: null });
  });
});

describe('the draw', () => {
  const keys = Array.from({ length: 400 }, (_, i) => `observation|roots|${i}|roots at ${i}|0`);
  test('is the same whatever the order, and another for another recording', () => {
    const one = draw('a', keys, 20);
    expect(draw('a', [...keys].reverse(), 20)).toEqual(one);
    expect(draw('b', keys, 20)).not.toEqual(one);
  });
  test('favours no item: over many recordings each comes up about as often', () => {
    const counts = new Map<string, number>();
    for (let seed = 0; seed < 2000; seed++) {
      for (const key of draw(`recording ${seed}`, keys.slice(0, 20), 5)) counts.set(key, (counts.get(key) ?? 0) + 1);
    }
    // 500 expected, standard deviation 19: five of them either way.
    expect(Math.min(...counts.values())).toBeGreaterThan(400);
    expect(Math.max(...counts.values())).toBeLessThan(600);
    expect(counts.size).toBe(20);
  });
  test('grows with the square root', () => {
    expect([0, 2, 3, 9, 10, 25, 400].map(drawSize)).toEqual([0, 2, 3, 3, 4, 5, 20]);
  });
});
