/**
 * Which ffmpeg decodes the recording. Looked for in this order: the caller's choice or FFMPEG_PATH, `ffmpeg` on PATH,
 * the optional package @ffmpeg-installer/ffmpeg. The package comes last because its builds are from 2018 and the
 * files it would parse come from strangers.
 */
import { accessSync, constants, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { RecordingError } from './recording-error.ts';

export interface FoundFfmpeg {
  readonly path: string;
  readonly from: 'option' | 'FFMPEG_PATH' | 'PATH' | 'package';
}

/**
 * Finds ffmpeg, or `null` when there is none.
 * @throws RecordingError when the caller or FFMPEG_PATH names a program that is not there: a wrong setting must be seen.
 */
export function findFfmpeg(chosenPath?: string): FoundFfmpeg | null {
  const named = chosenPath ? 'option' : process.env.FFMPEG_PATH ? 'FFMPEG_PATH' : null;
  if (named) {
    const wanted = chosenPath ?? process.env.FFMPEG_PATH!;
    if (isProgram(wanted)) return { path: wanted, from: named };
    throw new RecordingError(
      `There is no program at ${wanted}, which ${named === 'option' ? 'was given as ffmpeg' : 'FFMPEG_PATH names'}: correct the path or leave it out.`,
    );
  }
  const onPath = findOnPath();
  if (onPath) return { path: onPath, from: 'PATH' };
  const packaged = findPackaged();
  return packaged ? { path: packaged, from: 'package' } : null;
}

function findOnPath(): string | null {
  const program = process.platform === 'win32' ? 'ffmpeg.exe' : 'ffmpeg';
  for (const folder of (process.env.PATH ?? '').split(path.delimiter)) {
    if (folder && isProgram(path.join(folder, program))) return path.join(folder, program);
  }
  return null;
}

function findPackaged(): string | null {
  try {
    const found = createRequire(import.meta.url)('@ffmpeg-installer/ffmpeg') as { path: string };
    return isProgram(found.path) ? found.path : null;
  } catch {
    // An optional package: not installed, or not made for this system.
    return null;
  }
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}
