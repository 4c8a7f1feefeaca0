import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { type Recording, readRecording } from '../../src/1-recording/read-recording.ts';
import { ffmpeg, makeFolder, strength, tone, wav, write } from './make-sound.ts';

const folder = makeFolder();
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function using<T>(files: string[], look: (recording: Recording) => Promise<T>): Promise<T> {
  const recording = await readRecording(files);
  try {
    return await look(recording);
  } finally {
    await recording.close();
  }
}

const simple = write(folder, 'tone.wav', wav(tone(2, 16000), 16000));

describe('16-bit PCM wav, without ffmpeg', () => {
  test('gives the very samples, the name, the hash and the length', async () => {
    await using([simple], async (recording) => {
      const samples = await recording.samples(0, 2);
      expect(Array.from(samples, (sample) => Math.round(sample * 32768))).toEqual([...tone(2, 16000)]);
      const sha256 = createHash('sha256').update(readFileSync(simple)).digest('hex');
      expect(recording.source).toEqual({ file: 'tone.wav', sha256, seconds: 2 });
    });
  });

  test.each([8000, 11025, 22050, 44100, 48000, 96000])(
    '%i Hz stereo comes to 16 kHz mono, same pitch and loudness',
    async (rate) => {
      const file = write(folder, `rate-${rate}.wav`, wav(tone(1, rate, 1000, 2), rate, 2, { list: true }));
      await using([file], async (recording) => {
        expect(recording.seconds).toBeCloseTo(1, 3);
        expect(strength(await recording.samples(0.1, 0.9), 1000)).toBeCloseTo(0.5, 2);
      });
    },
  );

  test('what lies above 8 kHz does not fold back into speech', async () => {
    const file = write(folder, 'high.wav', wav(tone(1, 48000, 13000), 48000));
    await using([file], async (recording) => {
      expect(strength(await recording.samples(0.1, 0.9), 3000)).toBeLessThan(0.002);
    });
  });

  test('a recorder that never wrote the length is read to its end', async () => {
    const file = write(folder, 'open-end.wav', wav(tone(1, 16000), 16000, 1, { dataBytes: 0xffffffff }));
    await using([file], async (recording) => expect(recording.seconds).toBe(1));
  });

  test('the extension does not matter', async () => {
    const file = write(folder, 'really-wav.mp3', wav(tone(1, 16000), 16000));
    await using([file], async (recording) => expect(recording.seconds).toBe(1));
  });
});

describe('other sound and video, through ffmpeg', () => {
  test.each(['mp3', 'm4a', 'ogg', 'flac', 'mp4', 'mkv', 'mov', 'avi', 'webm', 'aac', 'opus', 'mpg'])(
    '%s',
    async (form) => {
      const file = path.join(folder, `sound.${form}`);
      ffmpeg('-i', simple, file);
      await using([file], async (recording) => {
        expect(Math.abs(recording.seconds - 2)).toBeLessThan(0.15);
        expect(strength(await recording.samples(0.5, 1.5), 440)).toBeGreaterThan(0.4);
      });
    },
  );

  test('sound that starts two seconds late keeps its offset', async () => {
    const file = path.join(folder, 'late.mkv');
    ffmpeg(
      '-f',
      'lavfi',
      '-i',
      'color=size=64x64:rate=10:duration=4',
      '-itsoffset',
      '2',
      '-i',
      simple,
      '-c:v',
      'mpeg4',
      file,
    );
    await using([file], async (recording) => {
      expect(strength(await recording.samples(0, 1.9), 440)).toBeLessThan(0.01);
      expect(strength(await recording.samples(2.2, 3.8), 440)).toBeGreaterThan(0.4);
    });
  });
});

describe('several files are one inspection', () => {
  test('in order, times going on without a gap', async () => {
    const second = write(folder, 'second.wav', wav(tone(1, 16000, 1000), 16000));
    await using([simple, second], async (recording) => {
      expect(recording.joinsAtSeconds).toEqual([2]);
      expect(recording.source.file).toBe('tone.wav + second.wav');
      expect(recording.source.parts?.map((part) => part.seconds)).toEqual([2, 1]);
      const joined = await recording.samples(1.9, 2.1);
      expect(Math.round(joined[1600]! * 32768)).toBe(0);
      expect(Math.round(joined[1601]! * 32768)).toBe(tone(1, 16000, 1000)[1]);
      expect(strength(await recording.samples(2, 3), 1000)).toBeCloseTo(0.5, 2);
    });
  });
});

describe('what cannot be read is refused in one sentence that says what to do', () => {
  const cut = wav(tone(2, 16000), 16000).subarray(0, 30000);
  const silent = path.join(folder, 'silent-film.mp4');
  ffmpeg('-f', 'lavfi', '-i', 'color=size=64x64:rate=10:duration=1', '-c:v', 'mpeg4', silent);
  const whole = path.join(folder, 'whole.mp4');
  ffmpeg('-i', simple, whole);
  // Its table stands in front, so that the beginning can still be read.
  const early = path.join(folder, 'early.mp4');
  const long = write(folder, 'long.wav', wav(tone(20, 16000), 16000));
  ffmpeg('-i', long, '-movflags', '+faststart', early);
  const earlyBytes = readFileSync(early);
  const cases: [string, string, RegExp][] = [
    ['no such file', path.join(folder, 'nothing.wav'), /There is no file .*check the name/],
    ['a folder', folder, /is a folder: name the recording/],
    ['empty', write(folder, 'empty.wav', ''), /is empty: copy it again/],
    ['not media', write(folder, 'letter.wav', 'Dear Sir or Madam'.repeat(50)), /is not a sound or video file/],
    ['no sound track', silent, /has no sound track/],
    ['a wav cut short', write(folder, 'cut.wav', cut), /is cut short \(0\.9 of 2\.0 seconds/],
    ['an mp4 cut short', write(folder, 'cut.mp4', readFileSync(whole).subarray(0, 9000)), /is cut short/],
    [
      'an mp4 cut short behind its table',
      write(folder, 'cut-early.mp4', earlyBytes.subarray(0, Math.round(earlyBytes.length * 0.6))),
      /is cut short \(\d+\.\d of 20\.\d seconds/,
    ],
    ['a header and nothing else', write(folder, 'bare.wav', wav(new Int16Array(0), 16000)), /holds no sound at all/],
  ];
  test.each(cases)('%s', async (_, file, message) => {
    const error = await readRecording([file]).catch((reason: unknown) => reason);
    expect(error).toMatchObject({ name: 'RecordingError', message: expect.stringMatching(message) });
    expect((error as Error).message).not.toMatch(/\n/);
  });

  test('no ffmpeg where the setting says it is', async () => {
    const error = await readRecording([whole], { ffmpegPath: path.join(folder, 'no-ffmpeg') }).catch(
      (reason: unknown) => reason,
    );
    expect(error).toMatchObject({ name: 'RecordingError', message: expect.stringContaining('correct the path') });
  });

  test('leaves no temporary file behind', async () => {
    const before = readdirSync(os.tmpdir()).filter((name) => /^lineword-[^t]/.test(name));
    await readRecording([simple, path.join(folder, 'bare.wav')]).catch(() => undefined);
    expect(readdirSync(os.tmpdir()).filter((name) => /^lineword-[^t]/.test(name))).toEqual(before);
  });
});
