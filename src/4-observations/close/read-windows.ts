/**
 * The talk in windows as the network reads it. They overlap, so that each stretch stands in two or three of them, with other company
 * before and after it; what the network makes of it there is taken together.
 */
import type { NumberKey } from './heads.ts';
import type { CloseReader, CloseWindow } from './load-close-reader.ts';

/** It was taught on windows of about so many pieces of words. */
const WINDOW_PIECES = 188;
const STEP_PIECES = 60;
/** A stretch has company enough with so many pieces on both sides of it. */
const COMPANY_PIECES = 40;
/** What a text begins and ends with. */
const OPENING = 101;
const CLOSING = 102;

interface Window extends CloseWindow {
  /** The pieces of the talk in it; its first row is not one of them. */
  readonly from: number;
  readonly to: number;
  readonly numbers: readonly NumberKey[];
}

/** The talk in pieces of words. */
export interface Pieces {
  readonly all: readonly number[];
  /** The first piece of each token, and the end. */
  readonly firsts: readonly number[];
  readonly numbers: readonly { readonly piece: number; readonly value: number }[];
}

/** Where a stretch of talk stands: a window and its rows there. */
export interface Place {
  readonly window: Window;
  readonly first: number;
  readonly last: number;
}

/** Reads the talk, and answers for the stretch between two tokens where it stands, at least once. */
export async function readWindows(
  pieces: Pieces,
  reader: CloseReader,
): Promise<(fromToken: number, toToken: number) => readonly Place[]> {
  const { all, numbers } = pieces;
  const windows: Window[] = [];
  for (let from = 0; from === 0 || from + WINDOW_PIECES - STEP_PIECES < all.length; from += STEP_PIECES) {
    const to = Math.min(all.length, from + WINDOW_PIECES);
    windows.push({
      ...(await reader.read([OPENING, ...all.slice(from, to), CLOSING])),
      from,
      to,
      numbers: numbers
        .filter(({ piece }) => from <= piece && piece < to)
        .map(({ piece, value }) => ({ value, row: piece - from + 1 })),
    });
  }
  return makeLocator(pieces, windows);
}

function makeLocator({ all, firsts }: Pieces, windows: readonly Window[]) {
  const company = (window: Window, from: number, to: number): number =>
    Math.min(
      window.from === 0 ? Number.POSITIVE_INFINITY : from - window.from,
      window.to === all.length ? Number.POSITIVE_INFINITY : window.to - to,
    );
  const placesOf = (fromToken: number, toToken: number): Place[] => {
    const from = firsts[fromToken]!;
    const to = Math.max(from + 1, firsts[toToken]!);
    const middle = (from + to) / 2;
    const best = windows.reduce((a, b) => (company(b, middle, middle) > company(a, middle, middle) ? b : a));
    const has = (window: Window): boolean =>
      window.from <= from && to <= window.to && company(window, from, to) >= COMPANY_PIECES;
    return windows
      .filter((window) => window === best || has(window))
      .map((window) => {
        const first = Math.max(from, window.from) - window.from + 1;
        return { window, first, last: Math.max(first + 1, Math.min(to, window.to) - window.from + 1) };
      });
  };
  const known = new Map<string, Place[]>();
  return (from: number, to: number): readonly Place[] => {
    const key = `${from} ${to}`;
    const places = known.get(key) ?? placesOf(from, to);
    known.set(key, places);
    return places;
  };
}
