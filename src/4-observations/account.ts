/** Turns the owners of tokens into heard stretches: every second of speech belongs to exactly one entry of the draft. */

import type { Absent, Aside, Heard } from '../../shared/schemas/draft.ts';
import type { Word } from '../../shared/schemas/word.ts';
import type { Token } from '../3-phrases/token/token.ts';
import { leftOver } from './aside.ts';
import type { Item, Owner, Reading } from './reading.ts';

const round = (seconds: number): number => Math.round(seconds * 100) / 100;

/** The stretch of talk between two tokens, with the words as printed. */
export function heardBetween(words: readonly Word[], tokens: readonly Token[], from: number, to: number): Heard {
  const first = tokens[from];
  const last = tokens[Math.max(from, to - 1)];
  if (!first || !last) return { start: 0, end: 0, text: '' };
  const text = words
    .slice(first.firstWord, last.lastWord + 1)
    .map((word) => word.text)
    .join(' ');
  return { start: round(first.startSeconds), end: round(Math.max(last.endSeconds, first.startSeconds)), text };
}

interface Stretch {
  readonly owner: Owner;
  readonly from: number;
  to: number;
}

const isSameOwner = (a: Owner, b: Owner): boolean => {
  if (a.sort !== b.sort) return false;
  if (a.sort === 'item' && b.sort === 'item') return a.item === b.item;
  if (a.sort === 'absent' && b.sort === 'absent') return a.kind === b.kind && a.run === b.run;
  if (a.sort === 'aside' && b.sort === 'aside') return a.why === b.why;
  if (a.sort === 'unplaced' && b.sort === 'unplaced') return a.why === b.why;
  if (a.sort === 'run' && b.sort === 'run') return a.run === b.run;
  return true;
};

/** Gives every token an owner, sentence by sentence, and joins neighbours into stretches. */
export function readStretches(reading: Reading): Stretch[] {
  for (const sentence of reading.sentences) {
    const owned = reading.owners.slice(sentence.from, sentence.to);
    const only = owned.find((owner) => owner !== null) ?? null;
    // Where several things are denied, what follows each of them goes with it.
    const isDenying = only?.sort === 'absent';
    for (let at = sentence.from; at < sentence.to; at += 1) {
      const before = isDenying && at > sentence.from ? (reading.owners[at - 1] ?? null) : null;
      reading.owners[at] ??= before ?? only ?? leftOver(reading, sentence);
    }
  }
  const stretches: Stretch[] = [];
  reading.owners.forEach((owner, index) => {
    const last = stretches.at(-1);
    // A word is never cut in two: pieces of one word go to the owner of its first piece.
    const isSameWord =
      last !== undefined && reading.phrases.tokens[index]?.firstWord === reading.phrases.tokens[index - 1]?.lastWord;
    if (last && owner && (isSameOwner(last.owner, owner) || isSameWord)) last.to = index + 1;
    else if (owner) stretches.push({ owner, from: index, to: index + 1 });
  });
  return stretches;
}

export interface Accounts {
  readonly heard: ReadonlyMap<Item, Heard>;
  readonly again: ReadonlyMap<Item, Heard[]>;
  readonly absent: Absent[];
  readonly runs: ReadonlyMap<number, Heard>;
  readonly site: Heard[];
  readonly unplaced: Aside[];
  readonly setAside: Aside[];
}

export function makeAccounts(reading: Reading, words: readonly Word[]): Accounts {
  const { tokens } = reading.phrases;
  const heard = new Map<Item, Heard>();
  const again = new Map<Item, Heard[]>();
  const runs = new Map<number, Heard>();
  const accounts: Accounts = { heard, again, absent: [], runs, site: [], unplaced: [], setAside: [] };
  for (const stretch of readStretches(reading)) {
    const span = heardBetween(words, tokens, stretch.from, stretch.to);
    const { owner } = stretch;
    if (owner.sort === 'item' && owner.item.isWithdrawn) accounts.setAside.push({ heard: span, why: 'taken back' });
    else if (owner.sort === 'item') {
      const first = stretch.from <= owner.item.from && stretch.to >= owner.item.to;
      if (!heard.has(owner.item) && (first || stretch.from <= owner.item.to)) heard.set(owner.item, span);
      else again.set(owner.item, [...(again.get(owner.item) ?? []), span]);
    } else if (owner.sort === 'absent') accounts.absent.push({ run: owner.run, kind: owner.kind, heard: span });
    else if (owner.sort === 'run') {
      if (runs.has(owner.run)) accounts.setAside.push({ heard: span, why: 'about the run' });
      else runs.set(owner.run, span);
    } else if (owner.sort === 'site') accounts.site.push(span);
    else if (owner.sort === 'unplaced') accounts.unplaced.push({ heard: span, why: owner.why });
    else accounts.setAside.push({ heard: span, why: owner.why });
  }
  return accounts;
}
