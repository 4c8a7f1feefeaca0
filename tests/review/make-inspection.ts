/** An invented inspection for the tests of the review: a draft, its words, and a sound made here (soft tones). */
import { createHash } from 'node:crypto';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { type Draft, draftSchema, type Flag, type Observation, observationSchema } from '../../shared/schemas/draft.ts';
import type { Words } from '../../shared/schemas/word.ts';

export function makeObservation(given: Partial<Observation> & { text?: string }): Observation {
  const { text, ...fields } = given;
  return observationSchema.parse({
    id: 'o1',
    run: 1,
    kind: 'roots',
    status: 'present',
    at: 23,
    atBasis: 'spoken',
    confidence: 0.9,
    heard: { start: 10, end: 13, text: text ?? '23 feet, roots at the joint' },
    ...fields,
  });
}

export const flags = {
  distance: {
    reason: 'distance-unsure',
    about: 'at',
    detail: '41 or 42',
    offers: [
      { value: 41, label: '41 ft' },
      { value: 42, label: '42 ft' },
    ],
  },
  word: {
    reason: 'word-unsure',
    about: 'kind',
    detail: 'heard "why", taken as wye',
    offers: [
      { value: 'wye', label: 'wye' },
      { value: null, label: 'nothing, just "why"' },
    ],
  },
  hedged: { reason: 'hedged', about: 'status' },
  missing: { reason: 'distance-missing', about: 'at' },
} satisfies Record<string, Flag>;

/** Two runs, nine observations, three flagged; talk of every sort. */
export function makeDraft(given: Partial<Draft> = {}): Draft {
  const heard = (start: number, text: string) => ({ start, end: start + 3, text });
  return draftSchema.parse({
    schema: 'lineword/draft@1',
    unit: 'ft',
    recording: { file: 'alder.wav', sha256: 'a'.repeat(64), seconds: 90 },
    site: { address: { value: '41 Alder Court', heard: heard(0.5, '41 Alder Court.'), confidence: 0.9, review: [] } },
    runs: [
      {
        n: 1,
        access: 'front cleanout',
        direction: 'downstream',
        heard: heard(4, 'Going in at the front cleanout, downstream.'),
        end: { at: 52, reason: 'main' },
        review: [],
      },
      {
        n: 2,
        access: 'roof vent',
        direction: 'downstream',
        heard: heard(56, 'Now from the roof vent.'),
        end: null,
        review: [],
      },
    ],
    observations: [
      { kind: 'pipe', at: 0, material: 'clay', diameterIn: 4, heard: heard(8, 'Four inch clay.') },
      { kind: 'roots', at: 23, position: 'top', heard: heard(12, '23 feet, roots at the joint, from the top.') },
      { kind: 'offset-joint', at: 30, inches: 0.5, heard: heard(16, 'Offset at thirty, half inch.') },
      { kind: 'wye', at: 41, heard: heard(20, 'There is a why at 41.'), review: [flags.distance] },
      {
        kind: 'crack',
        status: 'suspected',
        at: 45,
        heard: heard(24, 'Could be a crack at 45.'),
        review: [flags.hedged],
      },
      { kind: 'main-connection', at: 52, heard: heard(28, 'And the city main at 52.') },
      { run: 2, kind: 'pipe', at: 0, material: 'abs', heard: heard(60, 'ABS from the vent.') },
      { run: 2, kind: 'belly', at: null, heard: heard(64, 'Water standing here.'), review: [flags.missing] },
      { run: 2, kind: 'bend', at: 18, angleDeg: 45, heard: heard(68, 'A 45 at 18.') },
    ].map((o, index) => makeObservation({ id: `o${index + 1}`, ...(o as Partial<Observation>) })),
    absent: [{ run: 1, kind: 'break', heard: heard(32, 'No breaks in this one.') }],
    unplaced: [{ heard: heard(36, 'Something hanging down there.'), why: 'names no kind of thing' }],
    setAside: [
      { heard: heard(40, 'My dog hates this van.'), why: 'chat' },
      { heard: heard(44, 'Clay always lets roots in.'), why: 'teaching' },
      { heard: heard(48, 'We should jet this.'), why: 'plan' },
    ],
    ...given,
  });
}

/** The words of every stretch of a draft, spread evenly over it. */
export function wordsOf(draft: Draft): Words {
  const all = [
    ...draft.observations.map((o) => o.heard),
    ...draft.runs.flatMap((run) => (run.heard ? [run.heard] : [])),
    ...Object.values(draft.site).map((field) => field.heard),
    ...[...draft.absent, ...draft.unplaced, ...draft.setAside].map((one) => one.heard),
  ].sort((a, b) => a.start - b.start);
  return {
    schema: 'lineword/words@1',
    recording: draft.recording,
    hearing: { model: 'invented', sha256: null },
    words: all.flatMap(({ start, end, text }) => {
      const texts = text.split(' ');
      const step = (end - start) / texts.length;
      return texts.map((word, index) => ({
        text: word,
        startSeconds: start + index * step,
        endSeconds: start + (index + 1) * step,
        probability: 0.9,
      }));
    }),
    lost: [],
  };
}

/** A 16 kHz mono wav: a tone that changes with the second, quiet between, so that the waveform has a shape. */
export function makeWav(seconds: number): Buffer {
  const rate = 16000;
  const count = Math.round(seconds * rate);
  const wav = Buffer.alloc(44 + count * 2);
  wav.write('RIFF', 0);
  wav.writeUInt32LE(36 + count * 2, 4);
  wav.write('WAVEfmt ', 8);
  wav.writeUInt32LE(16, 16);
  wav.writeUInt16LE(1, 20);
  wav.writeUInt16LE(1, 22);
  wav.writeUInt32LE(rate, 24);
  wav.writeUInt32LE(rate * 2, 28);
  wav.writeUInt16LE(2, 32);
  wav.writeUInt16LE(16, 34);
  wav.write('data', 36);
  wav.writeUInt32LE(count * 2, 40);
  const second = new Int16Array(rate);
  for (let i = 0; i < rate; i++) second[i] = Math.round(Math.sin((i * 2 * Math.PI * 220) / rate) * 6000 * (i / rate));
  const bytes = Buffer.from(second.buffer);
  for (let at = 44; at < wav.length; at += bytes.length)
    bytes.copy(wav, at, 0, Math.min(bytes.length, wav.length - at));
  return wav;
}

/** A new folder, taken away when the test is over. */
export async function emptyFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'lineword-review-test-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/** Writes the inspection into a new folder; the draft then names the sound that is there. */
export async function writeInspection(
  given: Draft = makeDraft(),
  { withWords = true } = {},
): Promise<{ folder: string; draft: Draft; configFolder: string }> {
  const root = await emptyFolder();
  const folder = join(root, 'alder');
  await mkdir(folder);
  const wav = makeWav(given.recording.seconds);
  const draft = { ...given, recording: { ...given.recording, sha256: createHash('sha256').update(wav).digest('hex') } };
  await writeFile(join(folder, draft.recording.file), wav);
  await writeFile(join(folder, 'draft.json'), JSON.stringify(draft));
  if (withWords) await writeFile(join(folder, 'words.json'), JSON.stringify(wordsOf(draft)));
  return { folder, draft, configFolder: join(root, 'config') };
}
