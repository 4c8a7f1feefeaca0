/** The keyboard, in one table: what runs, and what the help shows. */
import {
  confirmItem,
  openDialog,
  openForm,
  redo,
  rejectItem,
  select,
  shownPart,
  step,
  stepAsSpoken,
  switchStatus,
  undo,
} from './actions.ts';
import { selected } from './inspection-state.ts';
import { problem } from './notices.ts';
import { changeRate, move, pauseOrPlay, playAgain, toggleLoop } from './player.ts';
import { runAtHand, startAdd, startEdit, startRestart, startRunEdit } from './start-form.ts';
import { takeChoice } from './take-choice.ts';

export interface KeyCommand {
  /** As `KeyboardEvent.key`, lower case. */
  readonly keys: readonly string[];
  /** As shown. */
  readonly shown: string;
  readonly does: string;
  readonly group: 'Settle' | 'Correct' | 'Sound' | 'Find';
  readonly run: (key: string) => void;
}

const onObservation = (form: 'merge' | 'split') => () => {
  if (selected.value?.what === 'observation') openForm.value = form;
};

export const keyCommands: readonly KeyCommand[] = [
  {
    keys: ['enter'],
    shown: 'Enter',
    does: 'It is right: confirm and go on',
    group: 'Settle',
    run: () => confirmItem(),
  },
  { keys: ['x', 'delete'], shown: 'X', does: 'It is not so: reject and go on', group: 'Settle', run: rejectItem },
  {
    keys: ['1', '2', '3', '4', '5', '6', '7', '8', '9'],
    shown: '1 – 9',
    does: 'Take what is offered under that number: a value, or a finding to add',
    group: 'Settle',
    run: (key) => takeChoice(Number(key)),
  },
  { keys: ['n', 'arrowdown'], shown: 'N or ↓', does: 'Next, without deciding', group: 'Settle', run: () => step(1) },
  { keys: ['p', 'arrowup'], shown: 'P or ↑', does: 'The one before', group: 'Settle', run: () => step(-1) },
  {
    keys: ['j'],
    shown: 'J',
    does: 'The next finding as it was spoken, flagged or not',
    group: 'Find',
    run: () => stepAsSpoken(1),
  },
  { keys: ['k'], shown: 'K', does: 'The finding spoken before', group: 'Find', run: () => stepAsSpoken(-1) },
  { keys: ['u', 'ctrl+z'], shown: 'U', does: 'Undo, as often as you like', group: 'Settle', run: () => void undo() },
  {
    keys: ['y', 'shift+u', 'ctrl+y', 'ctrl+shift+z'],
    shown: 'Y',
    does: 'Redo what was undone',
    group: 'Settle',
    run: () => void redo(),
  },
  {
    keys: ['d'],
    shown: 'D',
    does: 'Doubt: only suspected, or present after all; switch and go on',
    group: 'Settle',
    run: switchStatus,
  },
  { keys: ['e'], shown: 'E', does: 'Edit its fields', group: 'Correct', run: startEdit },
  {
    keys: ['a'],
    shown: 'A',
    does: 'Add a finding from these words, or from where the sound is',
    group: 'Correct',
    run: () => startAdd(),
  },
  {
    keys: ['m'],
    shown: 'M',
    does: 'Join it with another: they are the same thing',
    group: 'Correct',
    run: onObservation('merge'),
  },
  { keys: ['s'], shown: 'S', does: 'Split it: there are two things', group: 'Correct', run: onObservation('split') },
  {
    keys: ['r'],
    shown: 'R',
    does: 'Correct the run: way, access, end, counter',
    group: 'Correct',
    run: () => startRunEdit(runAtHand()),
  },
  {
    keys: ['c'],
    shown: 'C',
    does: 'The counter starts anew at these words: a new run',
    group: 'Correct',
    run: startRestart,
  },
  { keys: [' '], shown: 'Space', does: 'Play or pause', group: 'Sound', run: pauseOrPlay },
  { keys: ['0'], shown: '0', does: 'Play it again from its start', group: 'Sound', run: playAgain },
  { keys: ['arrowleft', 'b'], shown: 'B or ←', does: 'Back five seconds', group: 'Sound', run: () => move(-5) },
  { keys: ['arrowright'], shown: '→', does: 'On five seconds', group: 'Sound', run: () => move(5) },
  { keys: ['l'], shown: 'L', does: 'Loop it, or stop looping', group: 'Sound', run: toggleLoop },
  { keys: ['-', '_'], shown: '−', does: 'Slower', group: 'Sound', run: () => changeRate(-1) },
  { keys: ['+', '='], shown: '+', does: 'Faster', group: 'Sound', run: () => changeRate(1) },
  { keys: ['o'], shown: 'O', does: 'What may have been left out', group: 'Find', run: () => select(null) },
  {
    keys: ['/', 'ctrl+f'],
    shown: '/',
    does: 'Search the talk',
    group: 'Find',
    run: () => show('talk', ['#talk-search']),
  },
  {
    keys: ['t'],
    shown: 'T',
    does: 'Go to the talk',
    group: 'Find',
    run: () => show('talk', ['.talk [aria-current="true"]', '.talk .stretch']),
  },
  {
    keys: ['g'],
    shown: 'G',
    does: 'Go to the line',
    group: 'Find',
    run: () => show('line', ['.line .mark[aria-current="true"]', '.line .mark']),
  },
  { keys: ['escape'], shown: 'Esc', does: 'Back to the item at hand', group: 'Find', run: backToItem },
  {
    keys: ['f'],
    shown: 'F',
    does: 'Finish: see what is left, and sign',
    group: 'Find',
    run: () => {
      openDialog.value = 'sign';
    },
  },
  {
    keys: ['?', 'h'],
    shown: '?',
    does: 'These keys',
    group: 'Find',
    run: () => {
      openDialog.value = 'help';
    },
  },
];

const byKey = new Map(keyCommands.flatMap((command) => command.keys.map((key) => [key, command] as const)));
/** On these, the browser's own meaning of Enter and Space comes first. */
const pressable = 'button, a, summary, [role="button"]';

export function listenForKeys(): void {
  document.addEventListener('keydown', (event) => {
    if (event.defaultPrevented || event.altKey) return;
    const target = event.target instanceof Element ? event.target : document.body;
    if (openForm.value || openDialog.value) {
      if (event.key === 'Escape' && openForm.value) closeForm();
      return;
    }
    const isTyping = target.closest('input, select, textarea') !== null;
    if (isTyping) {
      if (event.key === 'Escape') backToItem();
      return;
    }
    const isPlainPress = event.key === 'Enter' || event.key === ' ';
    if (isPlainPress && target.closest(pressable)) return;
    const control = event.ctrlKey || event.metaKey;
    const key = `${control ? 'ctrl+' : ''}${event.shiftKey && (control || event.key.toLowerCase() === 'u') ? 'shift+' : ''}${event.key.toLowerCase()}`;
    const command = byKey.get(key);
    if (!command) return;
    event.preventDefault();
    if (event.repeat && command.group === 'Settle') return;
    command.run(event.key);
  });
}

export function closeForm(): void {
  openForm.value = null;
  focusItem();
}

/** The item at hand takes the keys and is seen from its top, wherever the one before was scrolled to. */
export function focusItem(): void {
  const item = document.getElementById('item');
  item?.focus({ preventScroll: true });
  // The middle scrolls on a wide page, the whole work on a narrow one.
  for (const around of [item?.closest('.middle'), item?.closest('.work')]) {
    if (around) around.scrollTop = 0;
  }
}

function backToItem(): void {
  problem.value = null;
  shownPart.value = 'item';
  if (document.activeElement?.id !== 'item') focusItem();
}

/** Shows a part of the page and puts the focus on the first of `targets` that is there. */
function show(part: 'line' | 'talk', targets: readonly string[]): void {
  shownPart.value = part;
  const focus = () => {
    const found = targets
      .map((target) => document.querySelector<HTMLElement>(target))
      .find((target) => target !== null);
    found?.focus();
    if (found instanceof HTMLInputElement) found.select();
    return document.activeElement === found;
  };
  // At once where the part is shown already, so that the next key lands in it.
  if (!focus()) requestAnimationFrame(focus);
}
