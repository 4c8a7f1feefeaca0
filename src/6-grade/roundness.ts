/** How far a pipe is out of round, in percent. All lengths in one unit. */

/** Deflection: 100 · (inside diameter − height) ÷ inside diameter. Source: Uni-Bell as restated by a trade page. */
export function deflectionPercent(insideDiameter: number, height: number): number {
  return (100 * (insideDiameter - height)) / insideDiameter;
}

/** Ovality of ASTM F1216 X1.1 (section from memory): the larger of the two forms that glossaries give. */
export function ovalityPercent(smallest: number, largest: number): number {
  const mean = (smallest + largest) / 2;
  return Math.max((100 * (mean - smallest)) / mean, (100 * (largest - mean)) / mean);
}
