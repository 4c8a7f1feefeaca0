/**
 * The inspector's own vocabulary, laid over what was heard: where the recogniser printed one of their entries, the
 * reader is given what it stands for. `words.json` keeps what was heard; the draft shows both.
 */
import type { Draft } from '../../shared/schemas/draft.ts';
import type { OwnWord } from '../../shared/schemas/own-words.ts';
import type { Word, Words } from '../../shared/schemas/word.ts';

export interface Respelling {
  readonly heard: string;
  readonly taken: string;
  readonly startSeconds: number;
  readonly endSeconds: number;
}

/** The same words with each entry's `heard` replaced by its `said`, and what was replaced. The longest entry wins. */
export function respell(words: Words, own: readonly OwnWord[]): { words: Words; respellings: Respelling[] } {
  const entries = own
    .map((entry) => ({ heard: bareWords(entry.heard), taken: entry.said.trim() }))
    .filter((entry) => entry.heard.length > 0)
    .sort((a, b) => b.heard.length - a.heard.length);
  const bare = words.words.map((word) => bareWord(word.text));
  const respelled: Word[] = [];
  const respellings: Respelling[] = [];
  for (let at = 0; at < words.words.length; ) {
    const entry = entries.find(({ heard }) => heard.every((word, i) => bare[at + i] === word));
    if (entry === undefined) {
      respelled.push(words.words[at]!);
      at++;
      continue;
    }
    const replaced = words.words.slice(at, at + entry.heard.length);
    respelled.push(...spread(replaced, entry.taken.split(/\s+/)));
    respellings.push({
      heard: entry.heard.join(' '),
      taken: entry.taken,
      startSeconds: replaced[0]!.startSeconds,
      endSeconds: replaced.at(-1)!.endSeconds,
    });
    at += replaced.length;
  }
  return { words: { ...words, words: respelled }, respellings };
}

/** Shows on each observation which of its words were respelled. */
export function showRespelled(draft: Draft, respellings: readonly Respelling[]): Draft {
  const observations = draft.observations.map((observation) => {
    const { start, end } = observation.heard;
    const mine = respellings
      .filter((each) => each.startSeconds < end && each.endSeconds > start)
      .map(({ heard, taken }) => ({ heard, taken }));
    return mine.length === 0 ? observation : { ...observation, respelled: [...(observation.respelled ?? []), ...mine] };
  });
  return { ...draft, observations };
}

/** `taken` over the time of the words it replaces, with the punctuation of the last. */
function spread(replaced: readonly Word[], taken: readonly string[]): Word[] {
  const start = replaced[0]!.startSeconds;
  const last = replaced.at(-1)!;
  const step = (last.endSeconds - start) / taken.length;
  const known = replaced.map((word) => word.probability).filter((probability) => probability !== null);
  const punctuation = /[.,;:!?]*$/.exec(last.text)![0];
  return taken.map((text, i) => ({
    text: i === taken.length - 1 ? text + punctuation : text,
    startSeconds: start + i * step,
    endSeconds: start + (i + 1) * step,
    probability: known.length === 0 ? null : Math.min(...known),
    printed: replaced.map((word) => word.text).join(' '),
  }));
}

function bareWords(text: string): string[] {
  return text.split(/\s+/).map(bareWord).filter(Boolean);
}

function bareWord(text: string): string {
  return text.toLowerCase().replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');
}
