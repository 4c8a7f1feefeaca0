/**
 * Words in, draft out: phrases, observations, doubts, and an account of every second of speech, as `draft.json` holds them.
 * Same words, same draft: nothing here depends on the clock, on chance or on the machine.
 */
import { type Draft, draftSchema, type Observation, type Run } from '../../shared/schemas/draft.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { findPhrases, type Phrases } from '../3-phrases/find-phrases.ts';
import { type Accounts, heardBetween, makeAccounts } from './account.ts';
import { checkTrack } from './check-track.ts';
import { fillMissingFields } from './close/fill-fields.ts';
import { listMissed } from './close/list-missed.ts';
import { movePlaces } from './close/move-places.ts';
import { type CloseReading, readClosely } from './close/read-closely.ts';
import { type Weighed, weighClosely } from './close/weigh-closely.ts';
import { weighDoubts } from './doubts.ts';
import { finishRuns, followEnds } from './finish-runs.ts';
import { gatherObservations } from './gather-observations.ts';
import { guessPlaces } from './guess-places.ts';
import { inUnit } from './offer-places.ts';
import { readSite } from './read-site.ts';
import type { Item, Reading, RunState } from './reading.ts';
import { settlePlaces } from './settle-places.ts';
import { withholdUnlikely } from './withhold-unlikely.ts';

/** Reads words to the end, doubts weighed, without writing the draft; `close` is a network's reading of the same phrases. */
export const readWords = (words: Words, phrases?: Phrases, close?: CloseReading | null): Reading =>
  readAndWeigh(words, phrases, close).reading;

/** The same, with what was weighed. */
export function readAndWeigh(
  words: Words,
  phrases: Phrases = findPhrases(words.words),
  close: CloseReading | null = null,
): { reading: Reading; weighed: ReadonlyMap<Item, Weighed> } {
  const reading = gatherObservations(phrases, close);
  withholdUnlikely(reading);
  checkTrack(reading);
  finishRuns(reading);
  guessPlaces(reading);
  settlePlaces(reading);
  movePlaces(reading);
  listMissed(reading);
  followEnds(reading);
  fillMissingFields(reading);
  return { reading, weighed: weighClosely(reading, weighDoubts(reading, words)) };
}

/** Drafts the findings of a talk by the rules alone. The result satisfies `draftSchema`. */
export const draftWords = (words: Words): Draft => writeDraft(readWords(words), words);

/** The same with the close reader beside the rules. @throws HearingError when its files are missing or damaged. */
export const draftClosely = async (words: Words): Promise<Draft> => writeDraft(await readWordsClosely(words), words);

export const readWordsClosely = async (words: Words): Promise<Reading> => (await weighWordsClosely(words)).reading;

export async function weighWordsClosely(words: Words): Promise<ReturnType<typeof readAndWeigh>> {
  // Loaded when it is asked for: what reads by rules alone need not wait for it.
  const { loadCloseReader } = await import('./close/load-close-reader.ts');
  const phrases = findPhrases(words.words);
  return readAndWeigh(words, phrases, await readClosely(phrases, await loadCloseReader()));
}

export function writeDraft(reading: Reading, words: Words): Draft {
  const site = readSite(reading, words.words);
  const accounts = makeAccounts(reading, words.words);
  const items = reading.items.filter((item) => !item.isWithdrawn);
  const draft: Draft = {
    schema: 'lineword/draft@1',
    unit: reading.phrases.unit,
    recording: { file: words.recording.file, sha256: words.recording.sha256, seconds: words.recording.seconds },
    site,
    runs: reading.runs.map((run) => writeRun(run, reading, accounts)),
    observations: items.map((item) => writeObservation(item, reading, accounts, words)),
    absent: accounts.absent.filter(
      (entry) => !items.some((item) => item.run === entry.run && item.kind === entry.kind && item.status === 'present'),
    ),
    unplaced: [...accounts.unplaced, ...lostSpeech(words)],
    setAside: [
      ...accounts.setAside,
      ...accounts.absent
        .filter((entry) =>
          items.some((item) => item.run === entry.run && item.kind === entry.kind && item.status === 'present'),
        )
        .map((entry) => ({ heard: entry.heard, why: 'denied here, found elsewhere' })),
    ].sort((a, b) => a.heard.start - b.heard.start),
  };
  return draftSchema.parse(draft);
}

const lostSpeech = (words: Words): Draft['unplaced'] =>
  words.lost.map((lost) => ({
    heard: { start: lost.startSeconds, end: lost.endSeconds, text: '' },
    why: `speech not understood: ${lost.why}`,
  }));

function writeRun(run: RunState, reading: Reading, accounts: Accounts): Run {
  const { tokens } = reading.phrases;
  const heard = accounts.runs.get(run.n) ?? null;
  return {
    n: run.n,
    access: run.access,
    direction: run.direction,
    heard,
    end: run.end,
    review: run.isDirectionAssumed
      ? [
          {
            reason: 'run-unsure',
            about: 'direction',
            detail: 'the direction of this run was not said',
            offers: [
              { value: 'downstream', label: 'downstream' },
              { value: 'upstream', label: 'upstream' },
            ],
          },
        ]
      : [],
    track: run.track.map((point) => ({
      seconds: Math.round((tokens[point.token]?.startSeconds ?? 0) * 100) / 100,
      feet: point.feet,
    })),
  };
}

const roundFeet = (feet: number | null): number | null => (feet === null ? null : Math.round(feet * 100) / 100);

function writeObservation(item: Item, reading: Reading, accounts: Accounts, words: Words): Observation {
  const { tokens } = reading.phrases;
  const heard = accounts.heard.get(item) ?? heardBetween(words.words, tokens, item.from, item.to);
  const { clockTo, ...fields } = item.fields;
  return {
    id: `o${item.n}`,
    run: item.run,
    kind: item.kind,
    status: item.status,
    at: roundFeet(item.at),
    atBasis: item.at === null ? null : item.basis,
    ...fields,
    to: roundFeet(fields.to),
    ...(clockTo === null ? {} : { clockTo }),
    heard,
    again: (accounts.again.get(item) ?? []).sort((a, b) => a.start - b.start),
    confidence: item.confidence,
    certainty: item.certainty,
    ...(item.corrected.length > 0
      ? {
          corrected: item.corrected.map((entry) => ({
            field: entry.field,
            was: entry.was,
            heard: heardBetween(words.words, tokens, entry.from, entry.to),
          })),
        }
      : {}),
    ...(item.respelled.length > 0 ? { respelled: item.respelled } : {}),
    review: item.flags.map((flag) => inUnit(flag, reading.phrases.unit)),
  };
}
