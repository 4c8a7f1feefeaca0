/** Runs the built command line as a person would, in a process of its own. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

export const root = join(import.meta.dirname, '../..');
export const sample = join(root, 'fixtures/sample/amber-hill-road.m4a');
export const sampleTranscript = join(root, 'fixtures/sample/amber-hill-road.vtt');

export interface Ran {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

interface RunOptions {
  readonly env?: Record<string, string>;
  readonly cwd?: string;
  /** Where the installation lies; this checkout otherwise. */
  readonly installation?: string;
  /** Called with stderr so far, each time something is added; may stop the process. */
  readonly watch?: (stderr: string, process: ChildProcess) => void;
}

export function lineword(args: string[], options: RunOptions = {}): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(options.installation ?? root, 'dist/src/cli/main.js'), ...args], {
      cwd: options.cwd ?? root,
      // A configuration of nobody: what the person who runs the tests has taught lineword stays out of them.
      env: { ...process.env, LINEWORD_CONFIG: join(tmpdir(), 'lineword-test-no-configuration'), ...options.env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let stdout = '';
    let stderr = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      stdout += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      stderr += text;
      options.watch?.(stderr, child);
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, stdout, stderr }));
  });
}

/** A folder that goes away after the tests of the file. */
export function scratchFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'lineword-test-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
