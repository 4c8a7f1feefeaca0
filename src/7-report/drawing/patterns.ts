/**
 * How each material is drawn: a line pattern of our own that still differs in black and white, always with its name
 * beside it. Each entry is the inside of an SVG pattern tile of `size` by `size` units on white.
 */
import type { MaterialName } from '../../../shared/vocabulary/materials.ts';

export interface Pattern {
  readonly size: number;
  readonly content: string;
}

const line = (d: string, width = 1) => `<path d="${d}" stroke="#222" stroke-width="${width}" fill="none"/>`;
const dot = (x: number, y: number, r: number) => `<circle cx="${x}" cy="${y}" r="${r}" fill="#222"/>`;

export const patterns: Readonly<Record<MaterialName, Pattern>> = {
  pvc: { size: 12, content: line('M0 6H12', 0.8) },
  abs: { size: 4, content: line('M0 2H4', 1.2) },
  'cast-iron': { size: 7, content: line('M-1 8L8 -1M-1 1L1 -1M6 8L8 6', 1.1) },
  clay: { size: 10, content: line('M0 0.5H10M5 0.5V10', 1) },
  concrete: { size: 9, content: dot(2, 2, 1) + dot(6.5, 6.5, 1.4) },
  'asbestos-cement': { size: 8, content: line('M-1 9L9 -1M-1 -1L9 9', 0.9) },
  'bituminous-fiber': { size: 10, content: line('M0 5Q2.5 1 5 5T10 5', 1.1) },
  'ductile-iron': { size: 5, content: line('M2.5 0V5', 1.1) },
  galvanized: { size: 7, content: line('M-1 -1L8 8M-1 6L1 8M6 -1L8 1', 1.1) },
  copper: { size: 8, content: line('M0 4H8M4 0V8', 0.8) },
  lead: { size: 6, content: dot(3, 3, 1.7) },
  hdpe: { size: 10, content: line('M0 3H10M0 5H10', 0.8) },
  liner: { size: 12, content: line('M0 9L6 3L12 9', 1) },
};

/** A pattern as SVG, under an id of its own. */
export function patternMarkup(name: MaterialName, id: string): string {
  const { size, content } = patterns[name];
  return `<pattern id="${id}" width="${size}" height="${size}" patternUnits="userSpaceOnUse"><rect width="${size}" height="${size}" fill="#fff"/>${content}</pattern>`;
}
