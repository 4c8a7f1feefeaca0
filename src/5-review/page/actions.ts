/** What the inspector can do with the item at hand, but for the forms and the numbered choices. Keys and buttons both end here. */
import { batch, signal } from '@preact/signals';
import type { Changes, DecisionBody, PlainValue, Subject } from '../../../shared/schemas/decision.ts';
import { shortName, shortPlace } from '../../../shared/wording/short.ts';
import { nextOpen, type QueueItem } from '../queue.ts';
import { valuesOf } from '../set-fields.ts';
import { decide, items, queue, reviewed, selected, selectedKey, showHeld, unit } from './inspection-state.ts';
import { lastDeed, problem } from './notices.ts';
import { audio, isHeard, pause, playAgain, playStretch, soundState, stretch } from './player.ts';

/** The form that is open over the item at hand. */
export const openForm = signal<'edit' | 'add' | 'merge' | 'split' | 'run' | 'restart' | 'site' | null>(null);
export const openDialog = signal<'help' | 'sign' | null>(null);
/** On a narrow screen one part shows at a time. */
export const shownPart = signal<'item' | 'line' | 'talk'>('item');

/** Goes to an item and plays it. */
export function select(key: string | null): void {
  batch(() => {
    selectedKey.value = key;
    openForm.value = null;
    shownPart.value = 'item';
  });
  const heard = selected.value?.heard;
  if (heard) playStretch(heard.start, heard.end);
  else pause();
}

export function goToNextOpen(): void {
  showHeld();
  select(nextOpen(queue.value, selectedKey.value)?.key ?? null);
}

/** One step through the whole queue, settled items too. */
export function step(by: 1 | -1): void {
  const list = queue.value;
  if (list.length === 0) return;
  const at = list.findIndex((item) => item.key === selectedKey.value);
  const to = at === -1 ? (by === 1 ? 0 : list.length - 1) : (at + by + list.length) % list.length;
  select(list[to]!.key);
}

/**
 * The finding that was spoken of next, or before, flagged or not: a walk through all of them. It goes on from the
 * talk that was played last, which may be a later mention of the item at hand.
 */
export function stepAsSpoken(by: 1 | -1): void {
  const spoken = [...items.value.values()]
    .filter((item) => item.what === 'observation')
    .sort((a, b) => a.heard!.start - b.heard!.start);
  const played = stretch.value?.start ?? momentAtHand();
  const at = spoken.findIndex((item) => item.key === selectedKey.value);
  const isPlayed = at !== -1 && Math.abs(spoken[at]!.heard!.start - played) < 0.3;
  const next = isPlayed
    ? spoken[at + by]
    : by === 1
      ? spoken.find((item) => item.heard!.start > played - 0.3)
      : spoken.findLast((item) => item.heard!.start < played);
  if (next) select(next.key);
}

export function nameOf(item: QueueItem): string {
  switch (item.what) {
    case 'observation':
      return item.item.at === null
        ? shortName(item.item)
        : `${shortName(item.item)} at ${shortPlace(item.item, unit.value)}`;
    case 'run':
      return `Run ${item.item.n}`;
    case 'site':
      return item.name.replaceAll(/[-_]/g, ' ');
    case 'absent':
      return `No ${item.item.kind.replaceAll('-', ' ')}`;
    default:
      return 'Talk';
  }
}

/** What was drawn to be listened to is not confirmed before its words were played. */
export function mustListenFirst(): boolean {
  const item = selected.value;
  const isDrawn = item?.why === 'listen' && !item.isSettled;
  return isDrawn && !isHeard.value && (soundState.value === 'ready' || soundState.value === 'preparing');
}

export function confirmItem(changes?: Changes): void {
  const item = selected.value;
  if (!item) return;
  if (!changes && mustListenFirst()) {
    problem.value = 'This one was drawn at random to be listened to: hear its words first.';
    if (audio.paused) playAgain();
    return;
  }
  const values: Record<string, PlainValue> =
    item.what === 'observation'
      ? { ...valuesOf(item.item), ...Object.fromEntries(Object.entries(changes ?? {}).map(([f, { now }]) => [f, now])) }
      : item.what === 'site'
        ? { value: changes?.value?.now ?? item.item.value }
        : {};
  const body: DecisionBody = {
    action: 'confirm',
    subject: item.item.subject,
    values,
    ...(changes && Object.keys(changes).length > 0 ? { changes } : {}),
  };
  settleItem(item, body, `Confirmed: ${nameOf(item)}.`);
}

/** Decides on the item at hand and shows the next one. */
function settleItem(item: QueueItem, body: DecisionBody, said: string): void {
  showHeld();
  const next = nextOpen(queue.value, item.key);
  // A corrected run moves what lies on it, and after the last item comes none: there the decision is worked in first.
  const isShownLater = item.what !== 'run' && next !== null && next.key !== item.key;
  void decide(body, said, { isShownLater });
  if (isShownLater) select(next.key);
  else goToNextOpen();
}

export function rejectItem(): void {
  const item = selected.value;
  if (!item) return;
  if (item.what === 'run') {
    problem.value = 'A run is not rejected: correct it with R, or join it to the run before it there.';
    return;
  }
  if (item.what === 'unplaced' || item.what === 'set-aside') {
    problem.value = 'For talk there are two answers: Enter when it holds nothing to write down, A to write it down.';
    return;
  }
  settleItem(item, { action: 'reject', subject: item.item.subject }, `Rejected: ${nameOf(item)}.`);
}

/** Suspected becomes present, present becomes suspected; that settles the item when nothing else is doubted. */
export function switchStatus(): void {
  const item = selected.value;
  if (item?.what !== 'observation') return;
  const { status, openFlags, subject } = item.item;
  const changes: Changes = { status: { was: status, now: status === 'present' ? 'suspected' : 'present' } };
  if (openFlags.every((flag) => flag.about === 'status')) confirmItem(changes);
  else void decide({ action: 'change', subject, changes }, 'Status switched.');
}

/** The item at hand and another one are the same thing. */
export function mergeWith(other: Subject): void {
  const item = selected.value;
  if (item?.what !== 'observation') return;
  void decide({ action: 'merge', subject: item.item.subject, others: [other] }, `Joined into one: ${nameOf(item)}.`);
  goToNextOpen();
}

export async function undo(): Promise<void> {
  showHeld();
  const id = reviewed.value.undoable.at(-1);
  if (!id) {
    lastDeed.value = 'There is nothing to undo.';
    return;
  }
  const before = new Map([...items.value].map(([key, item]) => [key, item.item]));
  if (await decide({ action: 'undo', of: id }, 'Undone.')) goToChanged(before);
}

export async function redo(): Promise<void> {
  showHeld();
  const id = reviewed.value.redoable.at(-1);
  if (!id) {
    lastDeed.value = 'There is nothing to redo.';
    return;
  }
  const before = new Map([...items.value].map(([key, item]) => [key, item.item]));
  if (await decide({ action: 'redo', of: id }, 'Done again.')) goToChanged(before);
}

/** After undo and redo, the item that came out different is shown. */
function goToChanged(before: ReadonlyMap<string, QueueItem['item']>): void {
  for (const [key, { item }] of items.value) {
    const old = before.get(key);
    const isSame =
      old && old.decidedBy?.decision === item.decidedBy?.decision && JSON.stringify(old) === JSON.stringify(item);
    if (!isSame) {
      select(key);
      return;
    }
  }
  if (selectedKey.value !== null && !items.value.has(selectedKey.value)) goToNextOpen();
}

/** Where the sound is; without sound, the stretch that was chosen last. */
export function momentAtHand(): number {
  return soundState.value === 'none' ? (stretch.value?.start ?? 0) : audio.currentTime;
}
