/** Gold: what a careful inspector would write down from one narration. Lies beside it as `NAME.gold.json`. */
import { z } from 'zod';

const stretch = z.union([
  z.tuple([z.number(), z.number()]),
  z.object({ start: z.number(), end: z.number() }).transform(({ start, end }): [number, number] => [start, end]),
]);
const numberOrNone = z.number().nullish();
const wordOrNone = z.string().nullish();

export const goldObservationSchema = z.object({
  run: z.number(),
  kind: z.string(),
  status: z.string().optional(),
  at: numberOrNone,
  to: numberOrNone,
  position: wordOrNone,
  clock: numberOrNone,
  degree: wordOrNone,
  percent: numberOrNone,
  inches: numberOrNone,
  material: wordOrNone,
  diameterIn: numberOrNone,
  fromMaterial: wordOrNone,
  toMaterial: wordOrNone,
  serves: wordOrNone,
  angleDeg: numberOrNone,
  heard: stretch,
});

export const goldSchema = z.object({
  runs: z.array(z.object({ direction: wordOrNone, end: z.object({ at: numberOrNone }).nullish() })),
  observations: z.array(goldObservationSchema),
  absent: z.array(z.object({ run: z.number(), kind: z.string() })),
});

export type Gold = z.infer<typeof goldSchema>;
export type GoldObservation = z.infer<typeof goldObservationSchema>;
