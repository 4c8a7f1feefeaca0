import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { findFfmpeg } from '../../src/1-recording/find-ffmpeg.ts';
import { numberedFindings } from '../../src/7-report/compose-findings.ts';
import { composeReport } from '../../src/7-report/compose-report.ts';
import { reportHtml } from '../../src/7-report/html/write-html.ts';
import { reportPdf } from '../../src/7-report/pdf/write-pdf.ts';
import { hasPicture, takeStills } from '../../src/7-report/take-stills.ts';
import { gradeDraft } from '../grade/make-draft.ts';

const ffmpeg = findFfmpeg()?.path;
const folder = mkdtempSync(join(tmpdir(), 'lineword-stills-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Four seconds whose brightness steps up each second: 40, 90, 140, 190. */
function madeVideo(name: string): string {
  const path = join(folder, name);
  const source = "color=c=black:s=64x48:r=25:d=4,format=yuv420p,geq=lum='40+50*floor(T)':cb=128:cr=128";
  execFileSync(ffmpeg!, ['-nostdin', '-v', 'error', '-y', '-f', 'lavfi', '-i', source, '-g', '50', path]);
  return path;
}

/** Mean brightness of a picture, read back by ffmpeg. */
function brightness(jpeg: string): number {
  const grey = execFileSync(
    ffmpeg!,
    ['-nostdin', '-v', 'error', '-i', 'pipe:0', '-pix_fmt', 'gray', '-f', 'rawvideo', 'pipe:1'],
    {
      input: Buffer.from(jpeg, 'base64'),
    },
  );
  return grey.reduce((sum, value) => sum + value, 0) / grey.length;
}

const graded = gradeDraft({
  observations: [0.5, 1.5, 2.5, 30].map((start, index) => ({
    kind: 'hole',
    at: 10 * (index + 1),
    heard: { start, end: start + 1, text: 'a hole' },
  })),
});
const numbered = numberedFindings(graded);

describe.skipIf(ffmpeg === undefined)('stills', () => {
  // MPEG program streams land on another frame when sought before the input; the picture tells.
  it.each(['a.mp4', 'b.mkv', 'c.avi', 'd.mpg'])(
    'come from the moment of the finding in %s, and a missing one is said',
    async (name) => {
      const path = madeVideo(name);
      const stills = await takeStills([{ path, startSeconds: 0, seconds: 4 }], numbered, ffmpeg!, 'feet');
      expect(stills.map((still) => still.number)).toEqual([1, 2, 3, 4]);
      const steps = stills.slice(0, 3).map((still) => brightness(still.jpeg!));
      expect(steps[1]! - steps[0]!).toBeGreaterThan(30);
      expect(steps[2]! - steps[1]!).toBeGreaterThan(30);
      expect(stills[3]).toMatchObject({ jpeg: null, why: expect.stringContaining('no picture') });
    },
  );

  it('of a second file are counted from where it begins', async () => {
    const path = madeVideo('second.mp4');
    const sound = join(folder, 'first.wav');
    execFileSync(ffmpeg!, ['-nostdin', '-v', 'error', '-y', '-f', 'lavfi', '-i', 'sine=d=1', sound]);
    const parts = [
      { path: sound, startSeconds: 0, seconds: 1 },
      { path, startSeconds: 1, seconds: 4 },
    ];
    const stills = await takeStills(parts, numbered, ffmpeg!, 'feet');
    expect(stills[0]!.jpeg).toBeNull();
    // 1.5 s of the inspection is 0.5 s of the second file, its darkest second.
    expect(brightness(stills[1]!.jpeg!)).toBeLessThan(brightness(stills[2]!.jpeg!) - 30);
  });

  it('are the same bytes when taken again', async () => {
    const path = madeVideo('again.mp4');
    const take = () => takeStills([{ path, startSeconds: 0, seconds: 4 }], numbered, ffmpeg!, 'feet');
    expect(await take()).toEqual(await take());
  });

  it('are none for a recording without a picture', async () => {
    const sound = join(folder, 'only.wav');
    execFileSync(ffmpeg!, ['-nostdin', '-v', 'error', '-y', '-f', 'lavfi', '-i', 'sine=d=1', sound]);
    expect(await hasPicture(sound, ffmpeg!)).toBe(false);
    expect(await takeStills([{ path: sound, startSeconds: 0, seconds: 1 }], numbered, ffmpeg!, 'feet')).toEqual([]);
  });

  it('of a damaged file are said to be missing', async () => {
    const path = join(folder, 'broken.mp4');
    writeFileSync(path, 'no video at all');
    expect(await takeStills([{ path, startSeconds: 0, seconds: 4 }], numbered, ffmpeg!, 'feet')).toEqual([]);
  });

  it('stand in the page and in the PDF, which stays PDF/UA', async () => {
    const path = madeVideo('shown.mp4');
    const stills = await takeStills([{ path, startSeconds: 0, seconds: 4 }], numbered, ffmpeg!, 'feet');
    const report = composeReport(graded, { stills, signed: null });
    expect(reportHtml(report).match(/<img src="data:image\/jpeg;base64,/g)).toHaveLength(3);
    const { bytes, warning } = reportPdf(report);
    expect(warning).toBeNull();
    expect(bytes.toString('latin1').match(/\/Subtype\s*\/Image/g)!.length).toBeGreaterThanOrEqual(3);
  });
});
