import { resolve } from 'node:path';

/** The sample inspection; npm runs its scripts in the project's folder. */
export const sample = {
  recording: resolve('fixtures/sample/amber-hill-road.m4a'),
  transcript: resolve('fixtures/sample/amber-hill-road.vtt'),
  seconds: 94,
} as const;
