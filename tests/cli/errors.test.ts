/** Which errors are sentences for a person, which are faults of the program, and the exit codes. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { RecordingError } from '../../src/1-recording/recording-error.ts';
import { CliError, describeError } from '../../src/cli/cli-error.ts';
import { DiskError } from '../../src/disk/write-whole.ts';

describe('describeError', () => {
  it.each([
    ['of the command line', new CliError('Do this.', { exitCode: 3 }), 'Do this.', 3],
    ['of a stage', new RecordingError('Give another file.'), 'Give another file.', 1],
    ['of the disk', new DiskError('Free some space.'), 'Free some space.', 1],
    ['of Ctrl-C', new DOMException('This operation was aborted', 'AbortError'), 'Stopped.', 130],
  ])('prints only the sentence %s', (_title, error, text, exitCode) => {
    expect(describeError(error)).toEqual({ text, exitCode });
  });

  it.each([
    ['a slip in the code', new TypeError('x is undefined')],
    ['a refusal of the system nobody caught', Object.assign(new Error('EIO'), { code: 'EIO' })],
    ['data that does not fit inside', z.number().safeParse('x').error!],
    ['a thrown string', 'x'],
  ])('owns up to %s', (_title, error) => {
    const { text, exitCode } = describeError(error);
    expect(exitCode).toBe(70);
    expect(text).toMatch(/^lineword failed/);
  });
});
