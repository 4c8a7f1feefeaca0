/**
 * The stages in order, nothing else. Each loads its own machinery when its turn comes, so that a transcript
 * is read without the recogniser and `--help` without either.
 *
 * recording -> words -> phrases -> observations -> (a person reviews) -> grade -> report
 *
 * Here are the stages that run without a person. What follows starts from the inspection folder:
 * review in `5-review`, grading in `6-grade`, the report in `7-report`.
 */
import type { Draft } from '../shared/schemas/draft.ts';
import type { Words } from '../shared/schemas/word.ts';
import type { ReadRecordingOptions, Recording } from './1-recording/read-recording.ts';
import type { HearWordsOptions } from './2-words/hear-words.ts';
import type { Explanation } from './4-observations/explain-draft.ts';

/** Files to samples. The recording holds a temporary file: close it. Throws RecordingError. */
export async function openRecording(files: string[], options: ReadRecordingOptions = {}): Promise<Recording> {
  const { readRecording } = await import('./1-recording/read-recording.ts');
  return readRecording(files, options);
}

/** Samples to words. */
export async function hear(recording: Recording, options: HearWordsOptions): Promise<Words> {
  const { hearWords } = await import('./2-words/hear-words.ts');
  return hearWords(recording, options);
}

/** Tells one recogniser from another. Throws HearingError when the model is missing or damaged. */
export async function recogniserSha256(modelFolder?: string): Promise<string> {
  const { loadRecogniser } = await import('./2-words/recogniser.ts');
  return (await loadRecogniser(modelFolder === undefined ? {} : { modelFolder })).sha256;
}

/** A transcript with times (.vtt, .srt) stands in for the two stages before. */
export async function transcribed(path: string): Promise<Words> {
  const { readTranscript } = await import('./2-words/read-transcript.ts');
  return readTranscript(path);
}

/** Words to phrases to observations. */
export async function draft(words: Words): Promise<Draft> {
  const { draftClosely } = await import('./4-observations/draft-words.ts');
  return draftClosely(words);
}

/** The same, with the reason for everything: which words, which rule, what was rejected. */
export async function explain(words: Words): Promise<Explanation> {
  const { explainDraft } = await import('./4-observations/explain-draft.ts');
  return explainDraft(words);
}
