/** The inspector's own vocabulary is used in the next draft, and both words are shown. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { OwnWord } from '../../shared/schemas/own-words.ts';
import { type Words, wordsSchema } from '../../shared/schemas/word.ts';
import { respell } from '../../src/cli/own-words.ts';
import { lineword, scratchFolder } from './run-lineword.ts';

const folder = scratchFolder();
const entry = (heard: string, said: string): OwnWord => ({ heard, said, kind: null, added: '2026-01-01' });

function wordsOf(text: string): Words {
  const words = text.split(' ').map((word, i) => ({
    text: word,
    startSeconds: i,
    endSeconds: i + 1,
    probability: word.length / 10,
  }));
  return wordsSchema.parse({
    schema: 'lineword/words@1',
    recording: { file: 'x', sha256: '0', seconds: words.length },
    hearing: { model: 'x', sha256: null },
    words,
  });
}

describe('respell', () => {
  const text = (words: Words) => words.words.map((word) => word.text).join(' ');

  it('puts what was said in place of what was heard, over the same time', () => {
    const { words, respellings } = respell(wordsOf('a Bell yake, at nine'), [entry('bell yake', 'belly')]);
    expect(text(words)).toBe('a belly, at nine');
    expect(words.words[1]).toEqual({
      text: 'belly,',
      startSeconds: 1,
      endSeconds: 3,
      probability: 0.4,
      printed: 'Bell yake,',
    });
    expect(respellings).toEqual([{ heard: 'bell yake', taken: 'belly', startSeconds: 1, endSeconds: 3 }]);
  });

  it('takes the longest entry, and whole words only', () => {
    const own = [entry('fern', 'wye'), entry('fern coat', 'Fernco coupling')];
    expect(text(respell(wordsOf('fern coat by the fern ferns'), own).words)).toBe('Fernco coupling by the wye ferns');
  });

  it('leaves the rest alone', () => {
    const words = wordsOf('nothing of the kind');
    expect(respell(words, [entry('roots', 'wye')])).toEqual({ words, respellings: [] });
  });
});

describe('lineword draft', () => {
  const talk =
    'WEBVTT\n\n00:00:01.000 --> 00:00:04.000\nFront cleanout, going downstream.\n\n00:00:05.000 --> 00:00:08.000\nAt nine feet, a bluffet on the bottom.\n';
  const transcript = join(folder, 'talk.vtt');

  it('finds a thing by the name its inspector gives it', async () => {
    writeFileSync(transcript, talk);
    const before = JSON.parse(
      (await lineword(['draft', transcript, '--out', join(folder, 'before'), '--json'])).stdout,
    );
    expect(before.observations).toEqual([]);

    const config = join(folder, 'config');
    mkdirSync(config);
    const own = { schema: 'lineword/own-words@1', words: [{ ...entry('bluffet', 'scale'), kind: 'scale' }] };
    writeFileSync(join(config, 'own-words.json'), JSON.stringify(own));
    const env = { LINEWORD_CONFIG: config };
    const out = join(folder, 'after');
    const after = JSON.parse((await lineword(['draft', transcript, '--out', out, '--json'], { env })).stdout);
    expect(after.observations).toMatchObject([
      { kind: 'scale', at: 9, respelled: [{ heard: 'bluffet', taken: 'scale' }] },
    ]);
    expect(readFileSync(join(out, 'words.json'), 'utf8')).toContain('bluffet');
  });

  it('says so when the vocabulary is damaged', async () => {
    const config = join(folder, 'damaged');
    mkdirSync(config);
    writeFileSync(join(config, 'own-words.json'), '{"schema": "lineword/own');
    const ran = await lineword(['draft', transcript, '--out', join(folder, 'never')], {
      env: { LINEWORD_CONFIG: config },
    });
    expect(ran.code).toBe(1);
    expect(ran.stderr).toMatch(/own-words\.json.*(correct|move)/);
  });
});
