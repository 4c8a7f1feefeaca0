/** A folder of narrations, each with what a careful inspector would write down from it beside it. */
import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { type Gold, goldSchema } from './gold.ts';

const GOLD_ENDING = '.gold.json';

/** The names of those that have their gold, in order. */
export const narrationsIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith(GOLD_ENDING))
    .map((file) => file.slice(0, -GOLD_ENDING.length))
    .sort();

/** @throws ZodError when it is no gold. */
export const readGold = async (folder: string, name: string): Promise<Gold> =>
  goldSchema.parse(JSON.parse(await readFile(path.join(folder, name + GOLD_ENDING), 'utf8')));
