/**
 * `npm run bench`: seconds of work for a second of recording, and peak memory, hearing and reading apart.
 * Each part runs in a process of its own, so that its peak memory is its own.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { type Figure, figureLine } from './figure.ts';

const parts: Record<string, () => Promise<Figure[]>> = {
  reading: async () => (await import('./reading.ts')).benchReading(),
  hearing: async () => (await import('./ten-minutes.ts')).benchTenMinutes(),
  report: async () => (await import('./report.ts')).benchReport(),
};

const [wanted, isChild] = process.argv.slice(2);
if (isChild === 'here') {
  for (const figure of await parts[wanted!]!()) console.log(figureLine(figure));
} else {
  const names = wanted === undefined ? Object.keys(parts) : [wanted];
  for (const name of names) {
    if (!(name in parts)) {
      console.error(`There is no part "${name}": choose from ${Object.keys(parts).join(', ')}.`);
      process.exit(2);
    }
    const { status } = spawnSync(process.execPath, [fileURLToPath(import.meta.url), name, 'here'], {
      stdio: 'inherit',
    });
    if (status !== 0) process.exitCode = 1;
  }
}
