/**
 * `npm run bench`: seconds of work for a second of recording, and peak memory, hearing and reading apart.
 * `npm run bench -- PART …` runs one part alone, with arguments of its own.
 * Each part runs in a process of its own, so that its peak memory is its own.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { type Figure, figureLine } from './figure.ts';

const figures: Record<string, () => Promise<Figure[]>> = {
  reading: async () => (await import('./reading.ts')).benchReading(),
  report: async () => (await import('./report.ts')).benchReport(),
};
/** Hearing is measured against other ways of hearing, which take turns: it prints a table of its own. */
const scripts: Record<string, string> = { hearing: './hearing.js' };
const names = [...Object.keys(figures), ...Object.keys(scripts)];

const [wanted, ...rest] = process.argv.slice(2);
if (wanted !== undefined && !names.includes(wanted)) {
  console.error(`There is no part "${wanted}": choose from ${names.join(', ')}.`);
  process.exitCode = 2;
} else if (wanted !== undefined && wanted in figures && rest[0] === 'here') {
  for (const figure of await figures[wanted]!()) console.log(figureLine(figure));
} else {
  for (const name of wanted === undefined ? names : [wanted]) {
    const script = scripts[name];
    const file = fileURLToPath(script === undefined ? import.meta.url : new URL(script, import.meta.url));
    const args = script === undefined ? [name, 'here'] : rest;
    const { status } = spawnSync(process.execPath, [file, ...args], { stdio: 'inherit' });
    if (status !== 0) process.exitCode = 1;
  }
}
