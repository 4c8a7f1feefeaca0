/// <reference lib="dom" />
/** The hands of the scripted inspector: they press keys, one by one, and every key is put down to what it was for. */
import type { Page } from 'playwright-core';

export interface Hands {
  readonly page: Page;
  press(key: string): Promise<void>;
  type(text: string): Promise<void>;
  /** Puts the keys since the last time down to `what`. */
  spentOn(what: string, detail: string): void;
  /** Waits until everything decided is on the disk. */
  settled(): Promise<void>;
  readonly presses: () => number;
  /** Keys by what they were for. */
  readonly spent: Readonly<Record<string, number>>;
  /** What took more than one key, and how many it took. */
  readonly costly: readonly string[];
}

export function makeHands(page: Page): Hands {
  let presses = 0;
  let counted = 0;
  const spent: Record<string, number> = {};
  const costly: string[] = [];
  const press = async (key: string) => {
    // A letter with Alt counts as two keys, as does Tab with Shift.
    presses += key.split('+').length;
    await page.keyboard.press(key);
  };
  return {
    page,
    press,
    async type(text) {
      for (const letter of text) await press(letter === ' ' ? 'Space' : letter);
    },
    spentOn(what, detail) {
      const keys = presses - counted;
      counted = presses;
      if (keys === 0) return;
      spent[what] = (spent[what] ?? 0) + keys;
      if (keys > 1) costly.push(`${keys} ${what}: ${detail}`);
    },
    async settled() {
      await page.waitForFunction(() => document.querySelector('.keeping') === null);
    },
    presses: () => presses,
    spent,
    costly,
  };
}
