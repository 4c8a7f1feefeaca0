/** What the bench prints, and the talk it is given to read. */
import { describe, expect, it } from 'vitest';
import { wordsSchema } from '../../shared/schemas/word.ts';
import { figureLine, medianSeconds } from '../../src/bench/figure.ts';
import { repeatTo } from '../../src/bench/reading.ts';

describe('figureLine', () => {
  it('gives work for a second of recording, peak memory, and the ratio to a peer', () => {
    const figure = { title: 'hearing', workSeconds: 60, recordingSeconds: 600, peakMegabytes: 512.4 };
    expect(figureLine(figure)).toMatch(/^hearing +60\.000 s {2}0\.10000 s a second of recording {2}peak 512 MB$/);
    expect(figureLine({ ...figure, peer: { title: 'someone', workSeconds: 80 } })).toMatch(/, 0\.75 x someone$/);
  });
});

describe('medianSeconds', () => {
  it('runs once more than it counts', async () => {
    let runs = 0;
    expect(await medianSeconds(3, () => runs++)).toBeGreaterThanOrEqual(0);
    expect(runs).toBe(4);
  });
});

describe('repeatTo', () => {
  it('says the same again, later each time, until it is long enough', () => {
    const once = wordsSchema.parse({
      schema: 'lineword/words@1',
      recording: { file: 'x', sha256: '0', seconds: 9 },
      hearing: { model: 'x', sha256: null },
      words: [{ text: 'roots', startSeconds: 2, endSeconds: 3, probability: null }],
    });
    const long = repeatTo(once, 25);
    expect(long.recording.seconds).toBe(30);
    expect(long.words.map((word) => word.startSeconds)).toEqual([2, 12, 22]);
  });
});
