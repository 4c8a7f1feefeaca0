/**
 * What the page knows: the draft, the decisions that are on the disk, those on their way, and what all of them come
 * to. A decision shows at once and counts as kept only when the server says so; one that is refused is taken back and
 * the reason shown.
 */
import { batch, computed, signal } from '@preact/signals';
import type { Decision, DecisionBody } from '../../../shared/schemas/decision.ts';
import type { Draft } from '../../../shared/schemas/draft.ts';
import type { TalkHint } from '../../../shared/schemas/hint.ts';
import type { Reviewed } from '../../../shared/schemas/reviewed.ts';
import type { Words } from '../../../shared/schemas/word.ts';
import { applyDecisions } from '../apply-decisions.ts';
import { markTranscript, type Stretch } from '../mark-transcript.ts';
import { itemsByKey, nextOpen, queueOf } from '../queue.ts';
import { subjectKey } from '../subject.ts';
import { afterPaint, onPainted } from './after-paint.ts';
import { keepSame, keepSameItems } from './keep-same.ts';
import { lastDeed, problem } from './notices.ts';
import { loadSound, playOriginal, soundState, stretch } from './player.ts';
import { ask, type Extras, type InspectionAnswer, Refusal, sendDecision } from './server-link.ts';

const emptyDraft: Draft = {
  schema: 'lineword/draft@1',
  unit: 'ft',
  recording: { file: '', sha256: '', seconds: 0 },
  site: {},
  runs: [],
  observations: [],
  absent: [],
  unplaced: [],
  setAside: [],
};

export const draft = signal<Draft>(emptyDraft);
export const words = signal<Words | null>(null);
/** What each sentence may hold, whatever the draft made of it. */
export const hints = signal<readonly TalkHint[]>([]);
export const inspector = signal<{ name: string; licence: string | null }>({ name: '', licence: null });
export const versions = signal<Extras['versions']>([]);
export const ownWordOffers = signal<Extras['ownWordOffers']>([]);
/** On the disk, in order. */
const kept = signal<readonly Decision[]>([]);
/** Sent and not answered yet. */
const pending = signal<readonly { id: string; body: DecisionBody }[]>([]);
export const selectedKey = signal<string | null>(null);

let lastReviewed: Reviewed | null = null;
export const reviewed = computed(() => {
  const fresh = applyDecisions(draft.value, [...kept.value, ...pending.value.map(asDecision)]);
  lastReviewed = keepSameItems(lastReviewed, fresh);
  return lastReviewed;
});
export const items = computed(() => itemsByKey(reviewed.value));
export const queue = computed(() => queueOf(items.value));
export const selected = computed(() =>
  selectedKey.value === null ? null : (items.value.get(selectedKey.value) ?? null),
);
let lastStretches: Stretch[] = [];
/** For the line and the talk, which follow the item at hand a frame later. */
export const beside = {
  reviewed: afterPaint(reviewed),
  selectedKey: afterPaint(selectedKey),
};
export const stretches = computed(() => {
  lastStretches = keepSame(lastStretches, markTranscript(words.value, beside.reviewed.value));
  return lastStretches;
});
/** The key of each observation by its id in the draft. */
export const keyById = computed(
  () => new Map(beside.reviewed.value.observations.map((o) => [o.id, subjectKey(o.subject)])),
);
export const openItemCount = computed(() => queue.value.filter((item) => !item.isSettled).length);
export const pendingCount = computed(() => pending.value.length);
export const unit = computed(() => draft.value.unit);

export async function openInspection(): Promise<void> {
  const answer = await ask<InspectionAnswer>('/api/inspection').catch((error: Refusal) => error);
  if (answer instanceof Error) {
    problem.value = answer.message;
    return;
  }
  batch(() => {
    draft.value = answer.draft;
    words.value = answer.words;
    kept.value = answer.decisions;
    inspector.value = answer.inspector;
    versions.value = answer.versions;
    ownWordOffers.value = answer.ownWordOffers;
    problem.value = answer.loss ?? answer.soundProblem;
    soundState.value = answer.soundProblem ? 'failed' : answer.hasRecording ? 'preparing' : 'none';
    const first = nextOpen(queue.value, null);
    selectedKey.value = first?.key ?? null;
    if (first?.heard) stretch.value = { start: first.heard.start, end: first.heard.end };
  });
  void ask<TalkHint[]>('/api/hints').then((read) => {
    hints.value = read;
  }, tellProblem);
  if (answer.isSoundReady) void loadSound();
  else if (answer.originalType) playOriginal(answer.originalType);
}

function tellProblem(error: Error): void {
  problem.value = error.message;
}

/** A decision that this page has sent and not seen answered. */
export function isOnItsWay(id: string): boolean {
  return held.some((one) => one.id === id) || pending.value.some((one) => one.id === id);
}

/** Takes decisions the server has written, whoever made them. Known ones change nothing. */
export function addDecisions(decisions: readonly Decision[]): void {
  const known = new Set(kept.value.map(({ id }) => id));
  const fresh = decisions.filter(({ id }) => !known.has(id));
  if (fresh.length === 0) return;
  const ids = new Set(fresh.map(({ id }) => id));
  batch(() => {
    kept.value = [...kept.value, ...fresh].sort((a, b) => a.n - b.n);
    if (pending.value.some(({ id }) => ids.has(id))) pending.value = pending.value.filter(({ id }) => !ids.has(id));
  });
}

/** True when the server has decisions that this page has not. */
export function isBehind(count: number): boolean {
  return count > kept.value.length;
}

/** Sent, and not yet worked into what is shown: the next item is painted first. */
let held: readonly { id: string; body: DecisionBody }[] = [];

/** Works in what was held back, so that the queue is as it was decided. */
export function showHeld(): void {
  if (held.length === 0) return;
  const due = held;
  held = [];
  pending.value = [...pending.value, ...due];
}

/**
 * Decides: shows it, keeps it on the disk, takes it back when the server refuses. With `isShownLater` the items are
 * made anew only when the next frame is painted: with hundreds of them that takes longer than the hand should wait.
 */
export async function decide(body: DecisionBody, said: string, { isShownLater = false } = {}): Promise<boolean> {
  const id = crypto.randomUUID();
  const before = selectedKey.value;
  batch(() => {
    held = [...held, { id, body }];
    if (!isShownLater) showHeld();
    lastDeed.value = said;
    problem.value = null;
  });
  // The answer changes nothing that is seen but the word that it is kept: it must not come before the next item.
  const painted = new Promise<void>((done) =>
    onPainted(() => {
      showHeld();
      done();
    }),
  );
  try {
    const decision = await sendDecision(id, body);
    await painted;
    addDecisions([decision]);
    if (body.action === 'confirm' || body.action === 'change' || body.action === 'add') scheduleExtras();
    return true;
  } catch (error) {
    showHeld();
    batch(() => {
      pending.value = pending.value.filter((one) => one.id !== id);
      problem.value = error instanceof Refusal ? error.message : String(error);
      lastDeed.value = '';
      selectedKey.value = before;
    });
    return false;
  }
}

export async function reloadExtras(): Promise<void> {
  const extras = await ask<Extras>('/api/extras').catch(() => null);
  if (!extras) return;
  versions.value = extras.versions;
  ownWordOffers.value = extras.ownWordOffers;
}

let extrasTimer: ReturnType<typeof setTimeout> | undefined;

/** What was learnt can wait until the hands rest. */
function scheduleExtras(): void {
  clearTimeout(extrasTimer);
  extrasTimer = setTimeout(() => void reloadExtras(), 1500);
}

function asDecision({ id, body }: { id: string; body: DecisionBody }, index: number): Decision {
  return {
    ...body,
    id,
    n: kept.value.length + index + 1,
    time: new Date().toISOString(),
    person: inspector.value.name,
    previous: null,
  };
}
