import { existsSync, readFileSync } from 'node:fs';

/** The version in package.json, which lies above this file whether it runs from `src` or from `dist`. */
export function version(): string {
  for (const up of ['../../package.json', '../../../package.json']) {
    const url = new URL(up, import.meta.url);
    if (existsSync(url)) return (JSON.parse(readFileSync(url, 'utf8')) as { version: string }).version;
  }
  return 'unknown';
}
