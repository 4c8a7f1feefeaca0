/** Hearing with the committed model, on little sound: real speech, the sample, noise. */
import { copyFileSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { wordsSchema } from '../../shared/schemas/word.ts';
import { readRecording } from '../../src/1-recording/read-recording.ts';
import { type HearWordsOptions, hearWords } from '../../src/2-words/hear-words.ts';
import { defaultModelFolder } from '../../src/2-words/model-files.ts';
import { readCues } from '../../src/2-words/read-transcript.ts';
import { sumScores } from '../../src/bench/describe-hearing.ts';
import { canonicalTokens, scoreHearing } from '../../src/bench/score-hearing.ts';
import { makeFolder, wav, write } from '../recording/make-sound.ts';

const fixtures = new URL('../../fixtures/', import.meta.url).pathname;
const folder = makeFolder();
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function hear(files: string[], options: HearWordsOptions = {}) {
  const recording = await readRecording(files);
  try {
    return await hearWords(recording, options);
  } finally {
    await recording.close();
  }
}

describe('real human speech', () => {
  // Sources and licences of the clips: fixtures/speech/README.md. The bound is ours: measured 1 to 4 errors in 80 words.
  test('is heard with few errors, and numbers are right', { timeout: 240_000 }, async () => {
    const said = JSON.parse(readFileSync(path.join(fixtures, 'speech/references.json'), 'utf8')) as Record<
      string,
      string
    >;
    const scores = [];
    for (const [file, text] of Object.entries(said)) {
      const { words, lost } = await hear([path.join(fixtures, 'speech', file)]);
      expect(lost).toEqual([]);
      scores.push(scoreHearing([{ startSeconds: 0, endSeconds: 30, text }], words));
    }
    const sum = sumScores(scores);
    expect(sum.substituted + sum.deleted + sum.inserted).toBeLessThanOrEqual(0.08 * sum.said);
    expect([sum.numbersHeard, sum.tradeInvented]).toEqual([sum.numbersSaid, 0]);
  });
});

describe('the talk of an inspection', () => {
  const start = 0;
  const end = 24;
  test('in two files, cut inside a word, is heard as one', { timeout: 240_000 }, async () => {
    const whole = await readRecording([path.join(fixtures, 'sample/amber-hill-road.m4a')]);
    const samples = Int16Array.from(await whole.samples(start, end), (sample) => Math.round(sample * 32767));
    await whole.close();
    const cues = readCues(readFileSync(path.join(fixtures, 'sample/amber-hill-road.vtt'), 'utf8')).filter(
      (cue) => cue.endSeconds < end - 0.5,
    );
    // A second into a line somebody is in the middle of it.
    const cutAt = Math.round((cues[1]!.startSeconds + 1) * 16000);
    const files = [samples.subarray(0, cutAt), samples.subarray(cutAt)].map((part, index) =>
      write(folder, `part-${index}.wav`, wav(part.slice(), 16000)),
    );
    const words = await hear(files);
    expect(() => wordsSchema.parse(words)).not.toThrow();
    expect(words.recording.parts).toHaveLength(2);
    const inLines = words.words.filter((word) => word.startSeconds < cues.at(-1)!.endSeconds + 0.3);
    const score = scoreHearing(cues, inLines);
    expect(score.substituted + score.deleted + score.inserted).toBeLessThanOrEqual(0.15 * score.said);
    // Times against the known beginnings of the lines.
    expect(score.startErrors.length).toBeGreaterThan(1);
    for (const error of score.startErrors) expect(error).toBeLessThan(0.5);
    for (const word of words.words) expect(word.endSeconds).toBeGreaterThanOrEqual(word.startSeconds);
  });
});

describe('where nobody speaks', () => {
  const seconds = 20;
  const noise = (shape: (index: number) => number): Int16Array =>
    Int16Array.from({ length: seconds * 16000 }, (_, index) => Math.round(shape(index) * 9000));
  let last = 0;
  let state = 1;
  const random = (): number => {
    state = (state * 48271) % 2147483647;
    return (state / 2147483647) * 2 - 1;
  };
  test.each([
    ['silence', noise(() => 0)],
    ['hiss of water', noise(() => random())],
    [
      'rumble of wind',
      noise((index) => {
        last = 0.98 * last + 0.2 * random();
        return last * (0.6 + 0.4 * Math.sin(index / 20000));
      }),
    ],
    ['hum', noise((index) => 0.6 * Math.sin((2 * Math.PI * 120 * index) / 16000) + 0.05 * random())],
    [
      'a tune',
      noise(
        (index) =>
          Math.sin((2 * Math.PI * 220 * 2 ** (((Math.floor(index / 4000) * 5) % 12) / 12) * index) / 16000) * 0.8,
      ),
    ],
  ])('%s gives no words but one sentence', async (_, samples) => {
    const file = write(folder, 'noise.wav', wav(samples, 16000));
    const error = await hear([file]).catch((reason: unknown) => reason);
    expect(error).toMatchObject({
      name: 'HearingError',
      message: expect.stringMatching(/^No speech was found in noise\.wav: /),
    });
  });
});

describe('another model, and one that is not whole', () => {
  const speech = path.join(fixtures, 'speech/cards-002.flac');
  const good = defaultModelFolder();
  const makeModel = (name: string): string => {
    const made = path.join(folder, name, 'whisper-base-trade');
    mkdirSync(path.join(made, 'onnx'), { recursive: true });
    copyFileSync(path.join(path.dirname(good), 'SHA256SUMS'), path.join(folder, name, 'SHA256SUMS'));
    for (const file of [
      'config.json',
      'generation_config.json',
      'preprocessor_config.json',
      'tokenizer.json',
      'tokenizer_config.json',
    ]) {
      copyFileSync(path.join(good, file), path.join(made, file));
    }
    for (const file of [
      'encoder_model.onnx',
      'encoder_fused.onnx',
      'decoder_model_merged_quantized.onnx',
      'decoder_grouped.onnx',
    ]) {
      symlinkSync(path.join(good, 'onnx', file), path.join(made, 'onnx', file));
    }
    return made;
  };
  test('in another folder, without the graphs of our own making, hears the same words', {
    timeout: 240_000,
  }, async () => {
    const made = makeModel('plain');
    const clear = path.join(fixtures, 'speech/jfk.flac');
    rmSync(path.join(made, 'onnx/decoder_grouped.onnx'));
    rmSync(path.join(made, 'onnx/encoder_fused.onnx'));
    // The published graph rounds more: it may print "Four," for "4", and hears unclear speech otherwise.
    const text = async (options: HearWordsOptions) =>
      canonicalTokens((await hear([clear], options)).words.map((word) => word.text))
        .map((token) => token.text)
        .join(' ');
    expect(await text({ modelFolder: made })).toBe(await text({}));
  });
  test('a file is missing', async () => {
    const made = makeModel('missing');
    rmSync(path.join(made, 'onnx/encoder_model.onnx'));
    await expect(hear([speech], { modelFolder: made })).rejects.toMatchObject({
      name: 'HearingError',
      message: expect.stringMatching(/encoder_model\.onnx is missing: install lineword again/),
    });
  });
  test('a file is damaged', async () => {
    const made = makeModel('damaged');
    writeFileSync(path.join(made, 'tokenizer.json'), '{}');
    await expect(hear([speech], { modelFolder: made })).rejects.toMatchObject({
      name: 'HearingError',
      message: expect.stringMatching(/tokenizer\.json is damaged \(its SHA-256 differs\)/),
    });
  });
});
