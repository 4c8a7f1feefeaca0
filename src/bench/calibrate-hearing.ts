/**
 * Fits the curve from the recogniser's own probabilities to the share of words that are right, and draws how well it holds.
 *
 * npm run calibrate -- FOLDER... : each folder holds NAME.vtt (what was said) and NAME.words.json (what was heard).
 * Writes src/2-words/calibration.ts and docs/hearing-reliability.svg. The figures and the plot are of words that took no
 * part in the fit: every file is judged by a curve fitted on the others.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Words } from '../../shared/schemas/word.ts';
import { type CalibrationCurve, calibrate } from '../2-words/calibrate.ts';
import { calibration } from '../2-words/calibration.ts';
import { readCues } from '../2-words/read-transcript.ts';
import { calibrationError, scoreHearing } from './score-hearing.ts';

type Claim = readonly [number, boolean];

const folders = process.argv.slice(2);
if (folders.length === 0) {
  console.error('Name at least one folder with NAME.vtt and NAME.words.json.');
  process.exit(2);
}
const files = folders.flatMap(readClaims);
const all = files.flat();
const heldOut = files.flatMap((own, index) => {
  const curve = fit(files.filter((_, other) => other !== index).flat());
  return own.map(([raw, isRight]): Claim => [calibrate(Math.log(raw), curve), isRight]);
});
const curve = fit(all);
const before = calibrationError(all);
const after = calibrationError(heldOut);
console.log(
  `${all.length} words of ${files.length} narrations, ${((100 * all.filter(([, isRight]) => isRight).length) / all.length).toFixed(1)} % right`,
);
console.log(
  `expected calibration error: ${before.toFixed(3)} as the recogniser says, ${after.toFixed(3)} after the curve (held out)`,
);
console.log(`slope ${curve.slope.toFixed(3)}, offset ${curve.offset.toFixed(3)}`);
writeFileSync(
  'src/2-words/calibration.ts',
  `/**
 * The fitted curve from the recogniser's own word probability to one that means what it says.
 * Written by \`npm run calibrate\` (src/bench/calibrate-hearing.ts); do not edit by hand.
 */
export const calibration = {
  slope: ${curve.slope.toFixed(4)},
  offset: ${curve.offset.toFixed(4)},
  fittedOn:
    '${all.length} words of ${files.length} narrations in synthetic voices; expected calibration error ${before.toFixed(3)} before, ${after.toFixed(3)} after, held out',
} as const;
`,
);
writeFileSync('docs/hearing-reliability.svg', draw(all, heldOut));

/** The recogniser's own probability of each word of each file, and whether it was right. */
function readClaims(folder: string): Claim[][] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.words.json'))
    .sort()
    .map((name) => {
      const words = (JSON.parse(readFileSync(path.join(folder, name), 'utf8')) as Words).words;
      const lines = readCues(readFileSync(path.join(folder, name.replace('.words.json', '.vtt')), 'utf8'));
      return scoreHearing(lines, words).claims.map(([probability, isRight]): Claim => [undo(probability), isRight]);
    });
}

/** Takes the curve that is in force out of a probability again. */
function undo(probability: number): number {
  const logit = Math.log(probability / (1 - probability));
  return 1 / (1 + Math.exp(-(logit - calibration.offset) / calibration.slope));
}

/** Platt scaling by Newton's method on the log-likelihood. */
function fit(claims: readonly Claim[]): CalibrationCurve {
  let slope = 1;
  let offset = 0;
  const points = claims.map(([raw, isRight]) => {
    const probability = Math.min(1 - 1e-6, Math.max(1e-6, raw));
    return [Math.log(probability / (1 - probability)), isRight ? 1 : 0] as const;
  });
  for (let round = 0; round < 30; round++) {
    let [g0, g1, h00, h01, h11] = [0, 0, 1e-6, 0, 1e-6];
    for (const [x, y] of points) {
      const p = 1 / (1 + Math.exp(-(slope * x + offset)));
      const w = p * (1 - p);
      g0 += (y - p) * x;
      g1 += y - p;
      h00 += w * x * x;
      h01 += w * x;
      h11 += w;
    }
    const determinant = h00 * h11 - h01 * h01;
    slope += (h11 * g0 - h01 * g1) / determinant;
    offset += (h00 * g1 - h01 * g0) / determinant;
  }
  return { slope, offset };
}

/** Claimed against true share in ten bins: the recogniser's own (rings) and after the curve (dots, size by count). */
function draw(raw: readonly Claim[], fitted: readonly Claim[]): string {
  const at = (claimed: number, right: number) =>
    `cx="${(50 + 300 * claimed).toFixed(1)}" cy="${(320 - 300 * right).toFixed(1)}"`;
  const bins = (claims: readonly Claim[]) =>
    Array.from({ length: 10 }, (_, bin) => claims.filter(([p]) => Math.min(9, Math.floor(p * 10)) === bin))
      .filter((inside) => inside.length >= 10)
      .map((inside) => ({
        claimed: inside.reduce((sum, [p]) => sum + p, 0) / inside.length,
        right: inside.filter(([, isRight]) => isRight).length / inside.length,
        count: inside.length,
      }));
  const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1].map(
    (tick) =>
      `<text x="${50 + 300 * tick}" y="338" text-anchor="middle">${tick}</text><text x="44" y="${324 - 300 * tick}" text-anchor="end">${tick}</text>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 370 370" font-family="sans-serif" font-size="11" role="img" aria-label="Reliability of word probabilities">
<rect width="370" height="370" fill="#fff"/>
<path d="M50 20V320H350M50 320L350 20" fill="none" stroke="#888"/>
${ticks.join('')}
<text x="200" y="358" text-anchor="middle">probability given to a word</text>
<text x="14" y="170" text-anchor="middle" transform="rotate(-90 14 170)">share of those words that were right</text>
${bins(raw)
  .map(({ claimed, right }) => `<circle ${at(claimed, right)} r="4" fill="none" stroke="#b34"/>`)
  .join('')}
${bins(fitted)
  .map(
    ({ claimed, right, count }) =>
      `<circle ${at(claimed, right)} r="${(2 + Math.log10(count)).toFixed(1)}" fill="#146"/>`,
  )
  .join('')}
<text x="60" y="34" fill="#b34">rings: as the recogniser says</text><text x="60" y="48" fill="#146">dots: after the curve, words not used for the fit</text>
</svg>
`;
}
