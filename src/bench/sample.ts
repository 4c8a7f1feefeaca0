import { resolve } from 'node:path';

/** The sample inspection; npm runs its scripts in the project's folder. */
export const sample = {
  transcript: resolve('fixtures/sample/amber-hill-road.vtt'),
} as const;
