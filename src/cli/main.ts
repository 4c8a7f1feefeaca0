#!/usr/bin/env node
/** The command line: chooses a command and turns errors into one sentence and an exit code. */
import { Command, CommanderError } from 'commander';
import { describeError, exitCodes } from './cli-error.ts';
import { register as registerDraft } from './commands/draft.ts';
import { register as registerDraw } from './commands/draw.ts';
import { register as registerExplain } from './commands/explain.ts';
import { register as registerGrade } from './commands/grade.ts';
import { register as registerReport } from './commands/report.ts';
import { register as registerReview } from './commands/review.ts';
import { register as registerVerify } from './commands/verify.ts';
import { version } from './version.ts';

// `lineword draft x | head` closes our stdout early: that is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(exitCodes.done);
  throw error;
});

const program = new Command('lineword')
  .description('Turns the recorded talk of a sewer-lateral inspection into a findings draft, offline.')
  .version(version(), '-V, --version', 'print the version')
  .helpOption('-h, --help', 'print help')
  .helpCommand('help [command]', 'print help for a command')
  .showHelpAfterError('(add --help for the options)')
  .exitOverride();

// In the order the work is done.
const commands = [
  registerDraft,
  registerExplain,
  registerReview,
  registerGrade,
  registerReport,
  registerDraw,
  registerVerify,
];
for (const register of commands) register(program);

program.addHelpText(
  'after',
  `
Examples:
  lineword draft alder-court.m4a    listen, and write the draft beside it
  lineword explain alder-court      see why the draft says what it says
  lineword review alder-court       go through what is unsure, and sign

lineword drafts; the inspector decides. Local codes and licensed trades prevail.`,
);

try {
  await program.parseAsync();
} catch (error) {
  // Commander has printed its own complaint, or the help that was asked for.
  if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? exitCodes.done : exitCodes.usage;
  else {
    const { text, exitCode } = describeError(error);
    process.stderr.write(`${text}\n`);
    process.exitCode = exitCode;
  }
}
