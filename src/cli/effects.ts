/**
 * Everything a command does to the world outside its files: printing, the clock, Ctrl-C.
 * Commands take it as an argument, so a test can hand in one that only records.
 */
import { styleText } from 'node:util';

type Format = Parameters<typeof styleText>[0];

export interface Effects {
  /** Results, to stdout. A line break is added. */
  print(text: string): void;
  /** Progress and remarks, to stderr, as is. */
  note(text: string): void;
  /** Text in a colour or weight on a terminal, plain text elsewhere. */
  style(format: Format, text: string): string;
  readonly noteIsTerminal: boolean;
  /** How many columns a printed line may take. */
  readonly columns: number;
  /** How lineword was started, to name the next command. */
  readonly program: string;
  nowSeconds(): number;
  /** Runs `work` with a signal that Ctrl-C raises; a second Ctrl-C ends the program at once. */
  interruptible<T>(work: (signal: AbortSignal) => Promise<T>): Promise<T>;
}

const narrowest = 40;
const widest = 110;

export const realEffects: Effects = {
  print: (text) => void process.stdout.write(`${text}\n`),
  note: (text) => void process.stderr.write(text),
  style: (format, text) => (process.stdout.isTTY ? styleText(format, text) : text),
  noteIsTerminal: process.stderr.isTTY === true,
  columns: process.stdout.isTTY ? Math.min(widest, Math.max(narrowest, process.stdout.columns)) : 80,
  program: process.env.npm_lifecycle_event === undefined ? 'lineword' : 'npm run -s lineword --',
  nowSeconds: () => performance.now() / 1000,
  async interruptible(work) {
    const controller = new AbortController();
    const stop = () => {
      if (controller.signal.aborted) process.exit(130);
      controller.abort();
      process.stderr.write('\nStopping after this piece; Ctrl-C again stops at once.\n');
    };
    process.on('SIGINT', stop);
    process.on('SIGTERM', stop);
    try {
      return await work(controller.signal);
    } finally {
      process.off('SIGINT', stop);
      process.off('SIGTERM', stop);
    }
  },
};
