/** What other windows decide, and what the server has to say, as it happens. */
import type { Decision } from '../../../shared/schemas/decision.ts';
import { addDecisions, isBehind, isOnItsWay, reloadExtras } from './inspection-state.ts';
import { isConnected, problem } from './notices.ts';
import { loadSound, soundState } from './player.ts';
import { ask, type InspectionAnswer } from './server-link.ts';

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
      | { type: 'alive'; decisions: number; isSoundReady: boolean; soundProblem: string | null }
      | { type: 'signed' | 'own-words' | 'sound-ready' }
      | { type: 'problem'; sentence: string };
    switch (event.type) {
      case 'decision':
        // This page's own comes with the answer to it.
        if (!isOnItsWay(event.decision.id)) addDecisions([event.decision]);
        break;
      case 'alive':
        isConnected.value = true;
        void catchUp(event.decisions);
        if (event.isSoundReady) void loadSound();
        if (event.soundProblem && soundState.value === 'preparing') {
          soundState.value = 'failed';
          problem.value = event.soundProblem;
        }
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
  if (!isBehind(count)) return;
  const answer = await ask<InspectionAnswer>('/api/inspection').catch(() => null);
  if (answer) addDecisions(answer.decisions);
}
