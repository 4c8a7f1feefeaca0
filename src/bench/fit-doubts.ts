/**
 * Fits what each sign of doubt weighs, and writes src/4-observations/close/close-weights.ts.
 *
 * npm run weigh -- FOLDER... [--pull 30] [--dry] : each folder holds NAME.vtt and NAME.gold.json of talk that the close reader was not
 * taught from. The weights that stand are moved only as far as the findings are worth it; the greater the pull, the less. Prints for
 * several thresholds how much is looked at and what is wrong unseen, by the weights that stand and, every talk judged by
 * weights fitted on the others, by the new ones. The threshold itself is left to choose by hand.
 */
import { writeFileSync } from 'node:fs';
import { CLOSE_THRESHOLD, closeBias, closeWeights } from '../4-observations/close/close-weights.ts';
import { weighFeatures } from '../4-observations/weigh-features.ts';
import { type DoubtCase, readDoubtCases } from './doubt-cases.ts';
import { solveEquations } from './solve-equations.ts';

type Weights = Readonly<Record<string, number>>;

const FOLDS = 6;
const STEPS = 12;
/** Signs seen less often keep the weight they have. */
const SEEN_OFTEN = 8;
/** The name under which the bias is fitted among the weights. */
const BIAS = 'bias';
const WEIGHTS_FILE = 'src/4-observations/close/close-weights.ts';
const standing: Weights = { ...closeWeights, [BIAS]: closeBias };

const args = process.argv.slice(2);
const pull = args.includes('--pull') ? Number(args[args.indexOf('--pull') + 1]) : 30;
const folders = args.filter((arg, at) => !arg.startsWith('--') && args[at - 1] !== '--pull');
if (folders.length === 0 || !(pull > 0)) {
  console.error('Name at least one folder with NAME.vtt and NAME.gold.json: npm run weigh -- FOLDER [--pull 30]');
  process.exit(2);
}
const cases: DoubtCase[] = [];
for (const folder of folders) cases.push(...(await readDoubtCases(folder)));
const talks = [...new Set(cases.map(({ talk }) => talk))];
const foldOf = new Map(talks.map((talk, at) => [talk, at % FOLDS]));
const byOthers = Array.from({ length: FOLDS }, (_, fold) => fit(cases.filter(({ talk }) => foldOf.get(talk) !== fold)));
const wrong = cases.filter(({ isWrong }) => isWrong).length;
console.log(`${cases.length} findings of ${talks.length} narrations, ${wrong} of them wrong`);
console.log('threshold   as it stands: looked at, wrong unseen   fitted on others: looked at, wrong unseen');
for (const threshold of [0.03, 0.04, 0.05, 0.06, 0.07, 0.08, 0.1, 0.12, 0.15]) {
  const before = outcome(threshold, () => standing);
  const after = outcome(threshold, ({ talk }) => byOthers[foldOf.get(talk)!]!);
  console.log(`${threshold.toFixed(2)}        ${before}      ${after}`);
}
if (!args.includes('--dry')) writeWeights(fit(cases));

function outcome(threshold: number, weightsFor: (each: DoubtCase) => Weights): string {
  const unseen = cases.filter((each) => !each.isFirm && doubtOf(each, weightsFor(each)) <= threshold);
  const percent = (part: number, whole: number) => ((100 * part) / Math.max(1, whole)).toFixed(1).padStart(5);
  const silent = unseen.filter(({ isWrong }) => isWrong).length;
  return `${percent(cases.length - unseen.length, cases.length)} ${percent(silent, unseen.length)} (${silent})`;
}

function doubtOf({ features }: DoubtCase, weights: Weights): number {
  return weighFeatures(features, weights, weights[BIAS]!);
}

/** Logistic regression by Newton's method, held to the weights that stand as if by springs. */
function fit(taught: readonly DoubtCase[]): Weights {
  const seen = new Map<string, number>();
  for (const { features } of taught)
    for (const [name, value] of Object.entries(features)) if (value !== 0) seen.set(name, (seen.get(name) ?? 0) + 1);
  const names = [
    BIAS,
    ...[...seen]
      .filter(([, count]) => count >= SEEN_OFTEN)
      .map(([name]) => name)
      .sort(),
  ];
  const rows = taught.map(({ features }) => names.map((name) => (name === BIAS ? 1 : (features[name] ?? 0))));
  const rest = taught.map(({ features }) =>
    Object.entries(features).reduce(
      (sum, [name, value]) => sum + (names.includes(name) ? 0 : (standing[name] ?? 0) * value),
      0,
    ),
  );
  const start = names.map((name) => standing[name] ?? 0);
  let weights = [...start];
  for (let step = 0; step < STEPS; step += 1) {
    const system = names.map((_, i) => [
      ...names.map((__, j) => (i === j ? pull : 0)),
      pull * (start[i]! - weights[i]!),
    ]);
    for (const [at, row] of rows.entries()) {
      const sum = row.reduce((total, value, i) => total + value * weights[i]!, rest[at]!);
      const chance = 1 / (1 + Math.exp(-sum));
      const used = row.flatMap((value, i) => (value === 0 ? [] : [i]));
      for (const i of used) {
        for (const j of used) system[i]![j]! += chance * (1 - chance) * row[i]! * row[j]!;
        system[i]![names.length]! += ((taught[at]!.isWrong ? 1 : 0) - chance) * row[i]!;
      }
    }
    const change = solveEquations(system);
    weights = weights.map((weight, i) => weight + change[i]!);
  }
  return { ...standing, ...Object.fromEntries(names.map((name, i) => [name, Math.round(weights[i]! * 1000) / 1000])) };
}

function writeWeights({ [BIAS]: bias, ...weights }: Weights): void {
  const lines = Object.entries(weights)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, weight]) => `  '${name}': ${weight},`);
  writeFileSync(
    WEIGHTS_FILE,
    `// biome-ignore-all lint/suspicious/noApproximativeNumericConstant: fitted weights are no constants of nature.
/**
 * What each of the close features weighs: a logistic model of "this item is wrong in some field", fitted step by step on talk that the
 * close reader was not taught from. A positive weight speaks for doubt. Written by \`npm run weigh\` (src/bench/fit-doubts.ts), last on
 * ${cases.length} findings of ${talks.length} narrations with a pull of ${pull}; the threshold is chosen by hand.
 */
export const closeBias = ${bias};

/** From this doubt on an item has to be looked at: of those below, one to three in a hundred were wrong on talk the fit had not seen. */
export const CLOSE_THRESHOLD = ${CLOSE_THRESHOLD};

export const closeWeights: Readonly<Record<string, number>> = {
${lines.join('\n')}
};
`,
  );
}
