/** One measured part of the work, as the bench prints it. */
export interface Figure {
  readonly title: string;
  readonly workSeconds: number;
  readonly recordingSeconds: number;
  /** The most memory the process of this part ever held. */
  readonly peakMegabytes: number;
  /** What a peer took for the same input in the same minute, and who it is. */
  readonly peer?: { readonly title: string; readonly workSeconds: number };
}

/** Seconds that `work` takes: the median of `times` runs, after one that is not counted. */
export async function medianSeconds(times: number, work: () => unknown): Promise<number> {
  await work();
  const taken: number[] = [];
  for (let run = 0; run < times; run++) {
    const from = performance.now();
    await work();
    taken.push((performance.now() - from) / 1000);
  }
  taken.sort((a, b) => a - b);
  return taken[Math.floor(taken.length / 2)]!;
}

export function peakMegabytes(): number {
  // maxRSS is in kilobytes on every system Node runs on.
  return process.resourceUsage().maxRSS / 1024;
}

export function figureLine(figure: Figure): string {
  const { title, workSeconds, recordingSeconds, peer } = figure;
  const perSecond = workSeconds / recordingSeconds;
  const against = peer ? `, ${(workSeconds / peer.workSeconds).toFixed(2)} x ${peer.title}` : '';
  return [
    title.padEnd(26),
    `${workSeconds.toFixed(3).padStart(9)} s`,
    `${perSecond.toFixed(5)} s a second of recording`,
    `peak ${Math.round(figure.peakMegabytes)} MB${against}`,
  ].join('  ');
}
