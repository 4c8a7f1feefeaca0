/** What the command line can end with, and how an error becomes a sentence and an exit code. */

export const exitCodes = { done: 0, refused: 1, usage: 2, fault: 70, interrupted: 130 } as const;

/** An error the person can act on. The message is one sentence that says what to do. */
export class CliError extends Error {
  override readonly name = 'CliError';
  readonly exitCode: number;

  constructor(message: string, options: { exitCode?: number; cause?: unknown } = {}) {
    super(message, { cause: options.cause });
    this.exitCode = options.exitCode ?? exitCodes.refused;
  }
}

// Errors of these classes are faults of the program, not sentences for a person.
const builtIn = new Set([
  'Error',
  'TypeError',
  'RangeError',
  'ReferenceError',
  'SyntaxError',
  'EvalError',
  'URIError',
  'AggregateError',
]);

/** What to print on stderr, and the exit code. Stages throw error classes of their own, with the sentence as message. */
export function describeError(error: unknown): { text: string; exitCode: number } {
  if (error instanceof CliError) return { text: error.message, exitCode: error.exitCode };
  if (!(error instanceof Error)) return { text: `lineword failed: ${String(error)}`, exitCode: exitCodes.fault };
  if (error.name === 'AbortError') return { text: 'Stopped.', exitCode: exitCodes.interrupted };
  const isSentence =
    !builtIn.has(error.constructor.name) && !error.constructor.name.includes('Zod') && !('code' in error);
  if (isSentence) return { text: error.message, exitCode: exitCodes.refused };
  return {
    text: `lineword failed, and this is a fault of the program, not yours: ${error.message}\n${error.stack ?? ''}`,
    exitCode: exitCodes.fault,
  };
}
