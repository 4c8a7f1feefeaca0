/** Talking to the review's server: decisions go there, what others decide comes back. */
import type { Decision, DecisionBody } from '../../../shared/schemas/decision.ts';
import type { Draft } from '../../../shared/schemas/draft.ts';
import type { Words } from '../../../shared/schemas/word.ts';
import type { SignedVersion } from '../sign-inspection.ts';
import type { Correction } from '../suggest-own-words.ts';
import { addDecisions, isConnected, problem, reloadExtras, takeDecisions } from './inspection-state.ts';
import { loadSound } from './player.ts';

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

/** Keeps this page in step with every other one, and with the disk. */
export function followServer(): void {
  const events = new EventSource('/api/events');
  events.onopen = () => {
    isConnected.value = true;
  };
  events.onerror = () => {
    isConnected.value = false;
  };
  events.onmessage = ({ data }) => {
    const event = JSON.parse(data as string) as
      | { type: 'decision'; decision: Decision }
      | { type: 'alive'; decisions: number }
      | { type: 'signed' | 'own-words' | 'sound-ready' }
      | { type: 'problem'; sentence: string };
    switch (event.type) {
      case 'decision':
        addDecisions([event.decision]);
        break;
      case 'alive':
        isConnected.value = true;
        void catchUp(event.decisions);
        break;
      case 'sound-ready':
        void loadSound();
        break;
      case 'problem':
        problem.value = event.sentence;
        break;
      default:
        void reloadExtras();
    }
  };
}

/** A page that slept, or lost the connection, asks for what it missed. */
async function catchUp(count: number): Promise<void> {
  if (!takeDecisions.isBehind(count)) return;
  const answer = await ask<InspectionAnswer>('/api/inspection').catch(() => null);
  if (answer) addDecisions(answer.decisions);
}
