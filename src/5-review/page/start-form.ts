/** Opens the form for what the person wants to do with the item at hand. */
import { signal } from '@preact/signals';
import type { Heard } from '../../../shared/schemas/draft.ts';
import type { FindingHint } from '../../../shared/schemas/hint.ts';
import { type FindingChoice, findingsIn } from '../offer-choices.ts';
import { overlaps } from '../other-values.ts';
import type { QueueItem } from '../queue.ts';
import { runAt } from '../run-at.ts';
import { subjectKey } from '../subject.ts';
import { momentAtHand, openForm, select } from './actions.ts';
import { hints, items, reviewed, selected, words } from './inspection-state.ts';
import { isWithinStretch, pause, playStretch, stretch } from './player.ts';

/** Talk that is no finding yet. */
export type TalkItem = Extract<QueueItem, { what: 'absent' | 'unplaced' | 'set-aside' }>;

/** What is being added: the words it was said in, what they seem to say, and the item they come from. */
export const adding = signal<{ heard: Heard; hint: FindingHint | null; talk: TalkItem | null }>({
  heard: { start: 0, end: 0, text: '' },
  hint: null,
  talk: null,
});

/** Where the counter is to start anew, and in which run that is. */
export const restart = signal({ run: 1, atSeconds: 0 });

/** How much talk around a moment an added observation refers to. */
const secondsBefore = 4;
const secondsAfter = 2;

export function startEdit(): void {
  const item = selected.value;
  if (item?.what === 'observation') openForm.value = 'edit';
  else if (item?.what === 'run') openForm.value = 'run';
  else if (item?.what === 'site') openForm.value = 'site';
  else startAdd();
}

/**
 * Adds from the words at hand; when the sound was moved away from them, from the moment that is playing. The form
 * begins with the choice that was taken, or with the first thing those words name that is no finding yet.
 */
export function startAdd(choice?: FindingChoice): void {
  const item = selected.value;
  const played = isWithinStretch() ? stretch.value : null;
  const isTalk = item && item.what !== 'observation' && item.what !== 'run' && item.what !== 'site';
  const isPlayed = isTalk && (!played || overlaps(played, item.item.heard));
  const talk = isPlayed ? item : choice && !item ? talkOf(choice.finding.heard) : null;
  const heard = talk?.item.heard ?? (played ? talkIn(played) : talkAround(momentAtHand()));
  const hint = (choice ?? findingsIn(heard, reviewed.value, hints.value)[0])?.finding ?? null;
  adding.value = { heard: hint?.heard ?? heard, hint, talk };
  openForm.value = 'add';
  if (choice && !item) playStretch(choice.finding.heard.start, choice.finding.heard.end);
  else pause();
}

export function startRunEdit(n: number): void {
  const run = reviewed.value.runs.find((candidate) => candidate.n === n);
  if (!run) return;
  select(subjectKey(run.subject));
  openForm.value = 'run';
}

/** From the words at hand on, or from where the sound is, the counter runs anew. */
export function startRestart(): void {
  const item = selected.value;
  if (!item) return;
  const isHere = isWithinStretch() && item.heard !== null;
  restart.value = { run: runAtHand(), atSeconds: isHere ? item.heard.start : momentAtHand() };
  openForm.value = 'restart';
  pause();
}

/** The run that the item at hand, or the moment that is playing, belongs to. */
export function runAtHand(): number {
  const item = selected.value;
  if (item?.what === 'observation' || item?.what === 'absent') return item.item.run;
  if (item?.what === 'run') return item.item.n;
  return runAt(reviewed.value, item?.heard?.start ?? momentAtHand());
}

/** The talk of no finding that a stretch lies in. */
function talkOf(heard: Heard): TalkItem | null {
  for (const item of items.value.values()) {
    if (item.what !== 'unplaced' && item.what !== 'set-aside') continue;
    if (overlaps(item.item.heard, heard)) return item;
  }
  return null;
}

function talkAround(seconds: number): Heard {
  return talkIn({ start: Math.max(0, seconds - secondsBefore), end: seconds + secondsAfter });
}

function talkIn({ start, end }: { start: number; end: number }): Heard {
  const said = (words.value?.words ?? []).filter((word) =>
    overlaps({ start: word.startSeconds, end: word.endSeconds }, { start, end }),
  );
  return {
    start: said[0]?.startSeconds ?? start,
    end: said.at(-1)?.endSeconds ?? end,
    text: said.map((word) => word.text).join(' '),
  };
}
