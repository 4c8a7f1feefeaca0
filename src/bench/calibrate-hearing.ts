/**
 * Fits the curve from the recogniser's own probabilities to the share of words that are right, and draws how well it holds.
 *
 * npm run calibrate -- FOLDER... : each folder holds NAME.vtt (what was said) and NAME.words.json (what was heard, with
 * `settings.isCalibrated` false, so that the probabilities are the recogniser's own).
 * Writes src/2-words/calibration.ts and docs/hearing-reliability.svg. The figures and the plot are of words that took no
 * part in the fit: every file is judged by a curve fitted on the others.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Words } from '../../shared/schemas/word.ts';
import { apply, type CalibrationCurve, witnesses } from '../2-words/calibrate.ts';
import { readCues } from '../2-words/read-transcript.ts';
import { calibrationError } from './describe-hearing.ts';
import { scoreHearing } from './score-hearing.ts';
import { solveEquations } from './solve-equations.ts';

type Claim = readonly [number, boolean];
interface Point {
  readonly own: number;
  readonly around: number;
  readonly isRight: boolean;
}

const folders = process.argv.slice(2);
if (folders.length === 0) {
  console.error('Name at least one folder with NAME.vtt and NAME.words.json.');
  process.exit(2);
}
const files = folders.flatMap(readPoints);
const all = files.flat();
const asSaid = all.map((point): Claim => [1 / (1 + Math.exp(-point.own)), point.isRight]);
const heldOut = files.flatMap((own, index) => {
  const others = fit(files.filter((_, other) => other !== index).flat());
  return own.map((point): Claim => [apply(point, others), point.isRight]);
});
const curve = fit(all);
const before = calibrationError(asSaid);
const after = calibrationError(heldOut);
const rightShare = all.filter(({ isRight }) => isRight).length / all.length;
console.log(`${all.length} words of ${files.length} narrations, ${(100 * rightShare).toFixed(1)} % right`);
console.log(
  `expected calibration error: ${before.toFixed(3)} as the recogniser says, ${after.toFixed(3)} after the curve (held out)`,
);
writeFileSync(
  'src/2-words/calibration.ts',
  `/**
 * The fitted curve from the recogniser's own word probability to one that means what it says.
 * Written by \`npm run calibrate\` (src/bench/calibrate-hearing.ts); do not edit by hand.
 */
export const calibration = {
  offset: ${curve.offset.toFixed(4)},
  own: ${curve.own.toFixed(4)},
  around: ${curve.around.toFixed(4)},
  fittedOn:
    '${all.length} words of ${files.length} narrations in synthetic voices; expected calibration error ${before.toFixed(3)} before, ${after.toFixed(3)} after, held out',
} as const;
`,
);
writeFileSync('docs/hearing-reliability.svg', draw(asSaid, heldOut));

/** What the curve is made of, for each heard word of each file, and whether the word was right. */
function readPoints(folder: string): Point[][] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.words.json'))
    .sort()
    .map((name) => {
      const words = (JSON.parse(readFileSync(path.join(folder, name), 'utf8')) as Words).words;
      const lines = readCues(readFileSync(path.join(folder, name.replace('.words.json', '.vtt')), 'utf8'));
      const seen = witnesses(words);
      // The scorer hands back probabilities: a word's number in its place says which word it was.
      const numbered = words.map((word, index) => ({ ...word, probability: index }));
      return scoreHearing(lines, numbered).claims.map(([index, isRight]) => ({ ...seen[index]!, isRight }));
    });
}

/** Logistic regression by Newton's method: offset, own, around. */
function fit(points: readonly Point[]): CalibrationCurve {
  let weights = [0, 1, 0];
  for (let round = 0; round < 25; round++) {
    const rows = [0, 1, 2].map(() => [1e-6, 1e-6, 1e-6, 0]);
    for (const { own, around, isRight } of points) {
      const x = [1, own, around];
      const p = 1 / (1 + Math.exp(-(weights[0]! + weights[1]! * own + weights[2]! * around)));
      for (let i = 0; i < 3; i++) {
        for (let j = 0; j < 3; j++) rows[i]![j]! += p * (1 - p) * x[i]! * x[j]!;
        rows[i]![3]! += ((isRight ? 1 : 0) - p) * x[i]!;
      }
    }
    const change = solveEquations(rows);
    weights = weights.map((weight, index) => weight + change[index]!);
  }
  return { offset: weights[0]!, own: weights[1]!, around: weights[2]! };
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
