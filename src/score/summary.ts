/** Counts to shares, and shares to the table that `npm run score` prints. */
import type { Counts } from './compare.ts';
import type { Reliability } from './reliability.ts';

export interface Summary {
  f1: number;
  precision: number;
  recall: number;
  kindF1: number;
  attributes: number;
  silentWrong: number;
  silentMiss: number;
  review: number;
  absentF1: number;
  runs: number;
  ends: number;
}

export interface Row {
  readonly id: string;
  readonly missing: boolean;
  readonly counts: Counts;
}

export function summarize(c: Counts): Summary {
  return {
    f1: f1(c.hit, c.gold, c.pred),
    precision: ratio(c.hit, c.pred),
    recall: ratio(c.hit, c.gold),
    kindF1: f1(c.kindHit, c.gold, c.pred),
    attributes: ratio(c.attrOk, c.attr),
    silentWrong: ratio(c.silentWrong, c.unflagged),
    silentMiss: ratio(c.silentMiss, c.gold),
    review: ratio(c.flagged + c.unplaced, c.pred + c.unplaced),
    absentF1: f1(c.absHit, c.absGold, c.absPred),
    runs: ratio(c.runsOk, c.runs),
    ends: ratio(c.endsOk, c.ends),
  };
}

export function addUp(rows: readonly Row[]): Counts {
  const [first, ...rest] = rows.map((row) => row.counts);
  const total: Counts = { ...first! };
  for (const counts of rest) for (const key of Object.keys(total) as (keyof Counts)[]) total[key] += counts[key];
  return total;
}

export function scoreTable(rows: readonly Row[]): string {
  const idWidth = Math.max(8, ...rows.map((row) => row.id.length + 1));
  return [
    `${' '.repeat(idWidth)}  F1  prec   rec kindF1 attr  sWrong sMiss review absF1 runs  ends   (percent)`,
    ...rows.map((row) => tableLine(row.id.padEnd(idWidth), row.counts) + (row.missing ? '  no draft' : '')),
    tableLine('all'.padEnd(idWidth), addUp(rows)),
  ].join('\n');
}

export function reliabilityTable(r: Reliability): string {
  const { silent } = r;
  return [
    'confidence        n  given  right   (percent)',
    ...r.bins.map(
      (bin) =>
        `${bin.from.toFixed(2)} - ${bin.to.toFixed(2)}${String(bin.n).padStart(7)}${percent(bin.meanConfidence)} ${percent(bin.shareRight)}`,
    ),
    `expected calibration error ${percent(r.expectedCalibrationError).trim()} %`,
    `wrong among the surest: ${r.risks.map((each) => `${Math.round(100 * each.coverage)} % of them ${percent(each.risk).trim()} %`).join(', ')}`,
    `AUGRC ${percent(r.areaUnderRisk).trim()} %`,
    `silent errors: ${silent.errors} of ${silent.n} unflagged, at most ${percent(silent.upper95).trim()} % (upper 95 % bound)`,
  ].join('\n');
}

function tableLine(id: string, counts: Counts): string {
  return id + Object.values(summarize(counts)).map(percent).join('');
}

function percent(share: number): string {
  return (100 * share).toFixed(1).padStart(6);
}

function ratio(part: number, whole: number): number {
  return whole ? part / whole : 1;
}

function f1(hit: number, gold: number, claimed: number): number {
  return gold + claimed ? (2 * hit) / (gold + claimed) : 1;
}
