import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { attributeTitles } from '../../shared/vocabulary/attribute-titles.ts';
import { FIELD_DOUBT } from '../../src/4-observations/taught/doubt-fields.ts';
import { makeReader } from '../../src/4-observations/taught/read-taught.ts';
import { teach } from '../../src/4-observations/taught/teach.ts';
import { lessonsOf, readFieldTalks } from '../../src/bench/field-lessons.ts';
import { draft, transcribed } from '../../src/pipeline.ts';

const narrations = 'tests/review/narrations';

describe('what is taught from mistakes', () => {
  // Common practice, no source: taught on some talks, tried on others. All of them are invented, by several hands.
  it('points at fields that are wrong far more often than fields are', () => {
    const lessons = readFieldTalks()
      .filter((_, index) => index % 2 === 0)
      .map(lessonsOf);
    const taught = lessons.filter((_, index) => index % 3 > 0).flat();
    const tried = lessons.filter((_, index) => index % 3 === 0).flat();
    const cases = [...new Set(taught.flatMap(({ about }) => about))].sort();
    const reader = makeReader(teach(taught, cases));
    const share = (found: typeof tried) => found.filter(({ finds }) => finds.length > 0).length / found.length;
    const pointedAt = tried.filter(({ words, about }) => {
      const chances = reader.chances(words);
      return about.some((field) => (chances.get(field) ?? 0) >= FIELD_DOUBT);
    });
    expect(pointedAt.length).toBeGreaterThan(8);
    expect(pointedAt.length).toBeLessThan(tried.length / 4);
    expect(share(pointedAt)).toBeGreaterThan(2.5 * share(tried));
  }, 300_000);

  it('names the field to check', async () => {
    const files = readdirSync(narrations).filter((name) => name.endsWith('.vtt'));
    const drafts = await Promise.all(files.map(async (name) => draft(await transcribed(path.join(narrations, name)))));
    const flags = drafts.flatMap(({ observations }) => observations.flatMap(({ review }) => review));
    const pointedAt = flags.filter(({ reason, detail }) => reason === 'value-odd' && detail?.startsWith('check '));
    expect(pointedAt.length).toBeGreaterThan(0);
    for (const { about, detail } of pointedAt) expect(detail).toContain(attributeTitles[about as 'to'].asked);
  });
});
