/**
 * Where the weights lie, and whether they are the ones that were committed. Every file that SHA256SUMS names is hashed
 * before it is used (97 MB take about a third of a second), so a half-copied model is one sentence, not a strange draft.
 */
import { createHash } from 'node:crypto';
import { createReadStream, existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { HearingError } from './hearing-error.ts';

const DEFAULT_MODEL = 'whisper-base-trade';
export const SPEECH_DETECTOR = 'silero-vad-v6-16k.onnx';

/** The `models/` folder of this installation, from the sources as well as from the built program. */
export function modelsFolder(): string {
  for (let folder = path.dirname(fileURLToPath(import.meta.url)); ; folder = path.dirname(folder)) {
    if (existsSync(path.join(folder, 'models', 'SHA256SUMS'))) return path.join(folder, 'models');
    if (path.dirname(folder) === folder) {
      throw new HearingError('The folder models/ is missing from this installation: install lineword again.');
    }
  }
}

export const defaultModelFolder = (): string => path.join(modelsFolder(), DEFAULT_MODEL);

/**
 * Hashes what the sums name beneath `folder` and gives one hash for all of it.
 * The sums are looked for in the folder and beside it; a folder without sums is hashed but cannot be judged.
 * @throws HearingError for a file that is missing or is not the one that was committed.
 */
export async function checkModelFiles(folder: string, needed: readonly string[]): Promise<string> {
  const sums = await readSums(folder);
  const whole = createHash('sha256');
  for (const name of needed) {
    const file = path.join(folder, name);
    if (!existsSync(file)) {
      throw new HearingError(
        `The model file ${file} is missing: install lineword again, or name a complete model folder.`,
      );
    }
    const sum = await hashFile(file);
    const expected = sums.get(path.resolve(file));
    if (expected && expected !== sum) {
      throw new HearingError(`The model file ${file} is damaged (its SHA-256 differs): install lineword again.`);
    }
    whole.update(`${name} ${sum}\n`);
  }
  return whole.digest('hex');
}

async function readSums(folder: string): Promise<Map<string, string>> {
  const sums = new Map<string, string>();
  for (const base of [folder, path.dirname(folder)]) {
    const lines = await readFile(path.join(base, 'SHA256SUMS'), 'utf8').catch(() => '');
    for (const line of lines.split('\n')) {
      const found = /^([0-9a-f]{64}) [ *](.+)$/.exec(line.trim());
      if (found) sums.set(path.resolve(base, found[2]!), found[1]!);
    }
  }
  return sums;
}

async function hashFile(file: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const piece of createReadStream(file, { highWaterMark: 1 << 20 })) hash.update(piece);
  return hash.digest('hex');
}
