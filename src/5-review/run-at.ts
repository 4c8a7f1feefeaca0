/** Which run a moment of the talk belongs to: the last that had begun by then. Pure. */
import type { Reviewed } from '../../shared/schemas/reviewed.ts';

export function runAt({ runs, observations }: Reviewed, seconds: number): number {
  const startOf = (n: number, heard: { start: number } | null) =>
    heard?.start ?? Math.min(Number.MAX_VALUE, ...observations.filter((o) => o.run === n).map((o) => o.heard.start));
  const begun = runs.filter((run) => startOf(run.n, run.heard) <= seconds);
  return begun.at(-1)?.n ?? runs[0]?.n ?? 1;
}
