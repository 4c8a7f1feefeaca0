/**
 * Stage 2: samples in, words out, each with its time and an honest probability.
 *
 * In: a `Recording` (stage 1). Out: `Words` (shared/schemas/word.ts).
 * Refuses: a recording without speech (silence, music, water), and a model that is missing or damaged.
 * Method: the voice detector finds speech (`find-speech.ts`); windows end in pauses (`cut-windows.ts`) and are decoded by
 * a beam search that favours the trade's words (`decode-beam.ts`, `phrase-trie.ts`); a window whose text looks made up or
 * too short is heard again another way, and if it stays so it is reported as lost, never dropped silently
 * (`check-window.ts`); words get times (`align-words.ts`) and numbers one form (`join-numbers.ts`).
 * Finished windows are kept in a file as they come, so that a run that was stopped goes on where it was (`keep-work.ts`).
 */

import type { LostSpeech, Word, Words } from '../../shared/schemas/word.ts';
import type { Recording } from '../1-recording/read-recording.ts';
import { calibrateWords } from './calibrate.ts';
import { cutWindows, type Window } from './cut-windows.ts';
import { findSpeech } from './find-speech.ts';
import { type HeardWindow, type HearingSettings, hearWindows } from './hear-windows.ts';
import { HearingError } from './hearing-error.ts';
import { joinLetters } from './join-letters.ts';
import { joinNumbers } from './join-numbers.ts';
import { openKeptWork } from './keep-work.ts';
import { loadRecogniser } from './recogniser.ts';
import { defaultSettings } from './settings.ts';

export interface HearWordsOptions {
  /** A local folder with another model in the same form. */
  readonly modelFolder?: string;
  readonly onProgress?: (doneSeconds: number, totalSeconds: number) => void;
  /** Folder for work in progress: a run with the same recording, model and settings goes on from it. */
  readonly keepIn?: string;
  readonly signal?: AbortSignal;
  /** The speaker's own words: streets, names. */
  readonly ownWords?: readonly string[];
  readonly threads?: number;
  /** Whether doubtful words get other hearings as alternatives; costs a little time. */
  readonly isSecondLookWanted?: boolean;
  /** For measuring: anything of the method that should differ. */
  readonly settings?: Partial<HearingSettings>;
}

/** Windows that go through the decoder together: a third took 60 to 100 MB more. */
const BATCH = 2;
/** Windows are sorted by length within this many, so that a batch holds equals. */
const LOOK_AHEAD = 6;

/** @throws HearingError with one sentence; the signal's reason when it is aborted. */
export async function hearWords(recording: Recording, options: HearWordsOptions = {}): Promise<Words> {
  const recogniser = await loadRecogniser(options);
  const settings: HearingSettings = {
    ...defaultSettings(options.ownWords ?? []),
    ...(options.isSecondLookWanted === undefined ? {} : { isSecondLookWanted: options.isSecondLookWanted }),
    ...options.settings,
  };
  const speech = await findSpeech(recording, options.signal);
  const windows = cutWindows(speech, recording.seconds);
  if (windows.length === 0) throw new HearingError(noSpeech(recording));
  const kept = await openKeptWork(options.keepIn, recording.source.sha256, recogniser.sha256, settings);
  try {
    const heard: HeardWindow[] = [];
    const total = windows.reduce((sum, window) => sum + window.seconds, 0);
    let done = 0;
    for (const batch of makeBatches(windows)) {
      options.signal?.throwIfAborted();
      let results = kept.find(batch);
      if (!results) {
        results = await hearWindows(recogniser, recording, batch, speech, settings);
        await kept.add(batch, results);
      }
      heard.push(...results);
      done += batch.reduce((sum, window) => sum + window.seconds, 0);
      options.onProgress?.((done / total) * recording.seconds, recording.seconds);
    }
    const inOrder = heard.flatMap((window) => window.words).sort((a, b) => a.startSeconds - b.startSeconds);
    const joined = joinNumbers(joinLetters(inOrder));
    const words = settings.isCalibrated ? calibrateWords(joined) : joined;
    const lost = heard.flatMap((window) => window.lost).sort((a, b) => a.startSeconds - b.startSeconds);
    if (words.length === 0 && lost.length === 0) throw new HearingError(noSpeech(recording));
    await kept.finish();
    return assemble(recording, recogniser, words, lost);
  } finally {
    await kept.close();
  }
}

function assemble(
  recording: Recording,
  recogniser: { name: string; sha256: string },
  words: Word[],
  lost: LostSpeech[],
): Words {
  return {
    schema: 'lineword/words@1',
    recording: recording.source,
    hearing: { model: recogniser.name, sha256: recogniser.sha256 },
    words,
    lost,
  };
}

/** Windows of like length together; always the same batches for the same recording, so that work can be resumed. */
export function makeBatches(windows: readonly Window[]): Window[][] {
  const batches: Window[][] = [];
  for (let from = 0; from < windows.length; from += LOOK_AHEAD) {
    const group = windows.slice(from, from + LOOK_AHEAD).sort((a, b) => b.seconds - a.seconds);
    for (let at = 0; at < group.length; at += BATCH) batches.push(group.slice(at, at + BATCH));
  }
  return batches;
}

const noSpeech = (recording: Recording): string =>
  `No speech was found in ${recording.source.file}: play it to hear whether the microphone was on, and give the recording that holds the talk.`;
