/** `lineword review`: opens the page on which the inspector confirms by ear and keyboard, then signs. */
import { spawn } from 'node:child_process';
import { type Command, InvalidArgumentError } from 'commander';

export interface ReviewOptions {
  port?: number;
  recording?: string[];
  as?: string;
  ffmpeg?: string;
  open: boolean;
}

export function register(program: Command): void {
  program
    .command('review')
    .summary('go through what is unsure, by ear and keyboard, and sign')
    .description(
      'Opens a page on this computer that plays every unsure finding and takes your decision. Every decision is on the disk before the page says so.\n' +
        'Run again on the same folder while it is open, it gives a new address for the same review. Nothing leaves this computer.',
    )
    .argument('<folder>', 'the folder that "lineword draft" wrote')
    .option('--port <number>', 'the port to listen on, on 127.0.0.1 only (default: a free one)', portNumber)
    .option('--recording <file...>', 'where the recording is, when it is neither in the folder nor beside it')
    .option('--as <name>', 'who decides (default: who signed last)')
    .option('--ffmpeg <path>', 'the ffmpeg program to read media with')
    .option('--no-open', 'print the address and leave the browser alone')
    .addHelpText(
      'after',
      `
Examples:
  lineword review alder-court
  lineword review alder-court --recording /media/card/alder-court.m4a
  lineword review alder-court --no-open`,
    )
    .action(runReview);
}

async function runReview(folder: string, options: ReviewOptions): Promise<void> {
  const { serveReview } = await import('../../5-review/serve-review.ts');
  const review = await serveReview(folder, {
    ...(options.port === undefined ? {} : { port: options.port }),
    ...(options.recording ? { recording: options.recording } : {}),
    ...(options.as ? { person: options.as } : {}),
    ...(options.ffmpeg ? { ffmpegPath: options.ffmpeg } : {}),
  });
  if (review.loss) process.stderr.write(`${review.loss}\n`);
  const opened = options.open && (await openBrowser(review.address));
  const how = opened ? 'The page is opening in your browser. If it does not, open' : 'Open this address in a browser:';
  process.stdout.write(`${how}\n${review.address}\n`);
  if (review.isJoined) {
    process.stdout.write('The review of this folder was already open: this address joins it.\n');
    return;
  }
  process.stdout.write('Press Ctrl-C here when you are done. Nothing is lost by closing the page or this window.\n');
  await new Promise<void>((done) => {
    process.once('SIGINT', done);
    process.once('SIGTERM', done);
  });
  await review.close();
}

/** Asks the system to open the address. False when it has no way to. */
function openBrowser(address: string): Promise<boolean> {
  const [program, ...args] =
    process.platform === 'win32'
      ? ['rundll32', 'url.dll,FileProtocolHandler', address]
      : process.platform === 'darwin'
        ? ['open', address]
        : ['xdg-open', address];
  return new Promise((resolve) => {
    const child = spawn(program!, args, { stdio: 'ignore', detached: true });
    child.once('error', () => resolve(false));
    // A program that fails says so soon; one that shows a browser may stay as long as the browser does.
    const waited = setTimeout(() => resolve(true), 1500);
    child.once('exit', (code) => {
      clearTimeout(waited);
      resolve(code === 0);
    });
    child.unref();
  });
}

function portNumber(text: string): number {
  const port = Number(text);
  if (!Number.isInteger(port) || port < 1024 || port > 65535) {
    throw new InvalidArgumentError('A port is a number from 1024 to 65535.');
  }
  return port;
}
