/**
 * The inspector's own vocabulary: read for a draft, offered to in a review. `own-words.json` is theirs to read and
 * edit; `corrections.json` beside it remembers, for each recording, what was corrected, so that two inspections count
 * together and none counts twice.
 */
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { Decision } from '../../shared/schemas/decision.ts';
import type { Draft } from '../../shared/schemas/draft.ts';
import { type OwnWord, type OwnWords, ownWordsSchema } from '../../shared/schemas/own-words.ts';
import { type KindName, kindNames } from '../../shared/vocabulary/kinds/index.ts';
import { writeWhole } from '../disk/write-whole.ts';
import { ReviewError } from './review-error.ts';
import { parseJson } from './sign-inspection.ts';
import { type Correction, correctionsIn, offersFrom } from './suggest-own-words.ts';

export const ownWordsFile = 'own-words.json';
const correctionsFile = 'corrections.json';

const correctionsSchema = z.record(
  z.string(),
  z.array(z.object({ heard: z.string(), said: z.string(), kind: z.enum(kindNames).nullable() })),
);

/** The entries a draft should use. Empty when there is no such file. @throws ReviewError when it is damaged. */
export async function readOwnWords(configFolder: string): Promise<readonly OwnWord[]> {
  return (await readFileOfWords(configFolder)).words;
}

/** What was corrected twice, here and in inspections before, and is no entry yet. */
export async function offersOfOwnWords(
  configFolder: string,
  draft: Draft,
  decisions: readonly Decision[],
): Promise<Correction[]> {
  const own = await readFileOfWords(configFolder);
  const remembered = await readCorrections(configFolder);
  const here = correctionsIn(draft, decisions);
  const before = remembered[draft.recording.sha256] ?? [];
  if (JSON.stringify(before) !== JSON.stringify(here)) {
    const updated = { ...remembered, [draft.recording.sha256]: here };
    await mkdir(configFolder, { recursive: true, mode: 0o700 });
    // Learning is an extra: a configuration folder that cannot be written must not stop a review.
    await writeWhole(join(configFolder, correctionsFile), `${JSON.stringify(updated)}\n`).catch(() => undefined);
  }
  const elsewhere = Object.entries(remembered).flatMap(([sha, list]) => (sha === draft.recording.sha256 ? [] : list));
  return offersFrom([...elsewhere, ...here], [...own.words, ...own.declined]);
}

/** Takes an offer up as an entry, or notes that it was turned down. */
export async function acceptOwnWord(
  configFolder: string,
  offer: { heard: string; said: string; kind: string | null; isAccepted: boolean },
): Promise<void> {
  const own = await readFileOfWords(configFolder);
  const { heard, said } = offer;
  const kind = kindNames.includes(offer.kind as KindName) ? (offer.kind as KindName) : null;
  const changed: OwnWords = offer.isAccepted
    ? { ...own, words: [...own.words, { heard, said, kind, added: new Date().toISOString().slice(0, 10) }] }
    : { ...own, declined: [...own.declined, { heard, said }] };
  await mkdir(configFolder, { recursive: true, mode: 0o700 });
  await writeWhole(join(configFolder, ownWordsFile), `${JSON.stringify(changed, null, 1)}\n`);
}

async function readFileOfWords(configFolder: string): Promise<OwnWords> {
  const path = join(configFolder, ownWordsFile);
  const text = await readFile(path, 'utf8').catch(() => null);
  if (text === null) return { schema: 'lineword/own-words@1', words: [], declined: [] };
  const parsed = ownWordsSchema.safeParse(parseJson(text));
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0];
  throw new ReviewError(
    `${path} cannot be used (${issue?.path.join('.') || 'top'}: ${issue?.message}): correct it, or move it away to begin anew.`,
  );
}

async function readCorrections(configFolder: string): Promise<Record<string, Correction[]>> {
  const text = await readFile(join(configFolder, correctionsFile), 'utf8').catch(() => '{}');
  return correctionsSchema.safeParse(parseJson(text)).data ?? {};
}
