/** Getting to a stretch of talk or to a finding by keyboard: through the search, and step by step from there. */
import type { Reviewed } from '../../shared/schemas/reviewed.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { markTranscript, type Stretch } from '../../src/5-review/mark-transcript.ts';
import { itemsByKey } from '../../src/5-review/queue.ts';
import { fewestLetters } from './fewest-letters.ts';
import type { Hands } from './hands.ts';

export function stretchAt(stretches: readonly Stretch[], start: number, end: number): Stretch | undefined {
  return stretches.find((one) => one.startSeconds < end - 0.05 && start < one.endSeconds - 0.05);
}

/** Shows the item of a stretch of talk, found by the fewest letters of it. */
export async function goToTalk(hands: Hands, stretches: readonly Stretch[], one: Stretch): Promise<void> {
  await hands.press('/');
  const letters = fewestLetters(stretches, one);
  await hands.type(letters);
  const from = one.text.toLowerCase().indexOf(letters) + letters.length;
  for (const letter of one.text.slice(from)) {
    const firstFound = await hands.page.textContent('.talk .stretch .said');
    if (firstFound === one.text) break;
    await hands.type(letter);
  }
  await hands.press('Enter');
}

/** Shows a finding: from its own talk, or from that of one spoken shortly before or after. */
export async function goToFinding(hands: Hands, words: Words, reviewed: Reviewed, id: string): Promise<void> {
  const stretches = markTranscript(words, reviewed);
  const spoken = [...reviewed.observations].sort((a, b) => a.heard.start - b.heard.start);
  const at = spoken.findIndex((o) => o.id === id);
  const ways = [0, -1, 1, -2, 2, -3, 3].flatMap((off) => {
    const other = spoken[at + off];
    const talk = other && stretchAt(stretches, other.heard.start, other.heard.end);
    return talk ? [{ off, talk, cost: fewestLetters(stretches, talk).length + Math.abs(off) }] : [];
  });
  ways.sort((a, b) => a.cost - b.cost);
  const { off, talk } = ways[0]!;
  await goToTalk(hands, stretches, talk);
  const items = itemsByKey(reviewed);
  for (let tries = 0; tries < 8; tries++) {
    const shown = items.get((await shownKey(hands)) ?? '');
    if (shown?.what === 'observation' && shown.item.id === id) return;
    await hands.press(off > 0 ? 'k' : 'j');
  }
  throw new Error(`the finding ${id} was not reached from ${talk.text}`);
}

/** Goes back to what was just left. */
export async function goBackTo(hands: Hands, key: string): Promise<void> {
  for (let tries = 0; tries < 4; tries++) {
    if ((await shownKey(hands)) === key) return;
    await hands.press('p');
  }
  throw new Error(`${key} was not reached`);
}

export function shownKey({ page }: Hands): Promise<string | null> {
  return page.getAttribute('#item', 'data-item');
}
