/** Asking the review's server, and sending decisions to it. */
import type { Decision, DecisionBody } from '../../../shared/schemas/decision.ts';
import type { Draft } from '../../../shared/schemas/draft.ts';
import type { SignedVersion } from '../../../shared/schemas/signature.ts';
import type { Words } from '../../../shared/schemas/word.ts';
import type { Correction } from '../suggest-own-words.ts';
import { isConnected } from './notices.ts';

export interface Extras {
  versions: SignedVersion[];
  ownWordOffers: Correction[];
}

export interface InspectionAnswer extends Extras {
  draft: Draft;
  words: Words | null;
  decisions: Decision[];
  loss: string | null;
  hasRecording: boolean;
  /** The recording itself can be played until the decoded sound is ready; null when it cannot. */
  originalType: string | null;
  isSoundReady: boolean;
  soundProblem: string | null;
  inspector: { name: string; licence: string | null };
}

/** A sentence from the server why something was not done. */
export class Refusal extends Error {}

export async function ask<T>(path: string, body?: unknown): Promise<T> {
  let answer: Response;
  try {
    answer = await fetch(path, {
      ...(body === undefined
        ? {}
        : { method: 'POST', body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }),
    });
  } catch {
    isConnected.value = false;
    throw new Refusal('The review is not running any more: run "lineword review" again. What was kept before is safe.');
  }
  const content = (await answer.json().catch(() => ({}))) as T & { sentence?: string };
  if (!answer.ok) throw new Refusal(content.sentence ?? 'This page is no longer let in: run "lineword review" again.');
  return content;
}

export async function sendDecision(id: string, body: DecisionBody): Promise<Decision> {
  return (await ask<{ decision: Decision }>('/api/decisions', { id, body })).decision;
}
