/**
 * Words that recognisers print in pieces. Joining them loses nothing, so it raises no flag.
 * The left side is what is printed, the right side the one form the vocabulary uses.
 */
import type { Token } from './token.ts';

const joins: readonly (readonly [string, string])[] = [
  ['clean out', 'cleanout'],
  ['clean outs', 'cleanouts'],
  ['off set', 'offset'],
  ['off sets', 'offsets'],
  ['a b s', 'abs'],
  ['p v c', 'pvc'],
  ['s d r', 'sdr'],
  ['c i p p', 'cipp'],
  ['h d p e', 'hdpe'],
  ['v c p', 'vcp'],
  ['hd pe', 'hdpe'],
  ['h dpe', 'hdpe'],
  ['hdp e', 'hdpe'],
  ['p vc', 'pvc'],
  ['pv c', 'pvc'],
  ['a bs', 'abs'],
  ['ab s', 'abs'],
  ['a c pipe', 'acpipe'],
  ['v c', 'vc'],
  ['c o', 'cleanout'],
  ['i o', 'io'],
  ['m h', 'mh'],
  ['man hole', 'manhole'],
  ['man holes', 'manholes'],
  ['down spout', 'downspout'],
  ['down spouts', 'downspouts'],
  ['down stream', 'downstream'],
  ['up stream', 'upstream'],
  ['back water', 'backwater'],
  ['back flow', 'backflow'],
  ['bath tub', 'bathtub'],
  ['flow line', 'flowline'],
  ['spring line', 'springline'],
  ['per cent', '%'],
  ['percent', '%'],
  ["o' clock", "o'clock"],
  ['incher', 'inch'],
  ['inchers', 'inch'],
  ['o clock', "o'clock"],
  ['oclock', "o'clock"],
  ['uh huh', 'uhhuh'],
  ['mid way', 'midway'],
  ['half way', 'halfway'],
  ['cave in', 'cavein'],
  ['under ground', 'underground'],
  ['terra cotta', 'terracotta'],
  ['line her', 'liner'],
  ['ladder all', 'lateral'],
  ['ladder als', 'laterals'],
  ['ringkle', 'wrinkle'],
  ['rinkle', 'wrinkle'],
  ['wrinkel', 'wrinkle'],
  ['fern co', 'fernco'],
  ['firm code', 'fernco'],
  ['couple ing', 'coupling'],
  ['couple in', 'coupling'],
];

const longestJoin = 4;
const joinsByText = new Map(joins);

const pairs: ReadonlySet<string> = new Set(
  joins.flatMap(([printed]) => {
    const words = printed.split(' ');
    return words.slice(1).map((word, index) => `${words[index]} ${word}`);
  }),
);

/** Whether two words, one right after the other, can be part of something that is joined. */
export const mayJoin = (first: string, second: string): boolean => pairs.has(`${first} ${second}`);

/** Joins neighbouring tokens listed above, unless a comma or a stop stands between them. */
export function joinTokens(tokens: readonly Token[]): Token[] {
  const joined: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    let taken = 1;
    let token = tokens[index]!;
    for (let length = longestJoin; length >= 1; length -= 1) {
      const parts = tokens.slice(index, index + length);
      if (parts.length < length || parts.slice(0, -1).some((part) => part.breakAfter !== 'none')) continue;
      const form = joinsByText.get(parts.map((part) => part.text).join(' '));
      if (form === undefined) continue;
      token = mergeTokens(parts, form);
      taken = length;
      break;
    }
    joined.push(token);
    index += taken;
  }
  return joined;
}

/** The same joins on bare texts, for patterns. */
export function joinTexts(texts: readonly string[]): string[] {
  const joined: string[] = [];
  for (let index = 0; index < texts.length; ) {
    let taken = 1;
    let text = texts[index]!;
    for (let length = longestJoin; length >= 1; length -= 1) {
      const form = joinsByText.get(texts.slice(index, index + length).join(' '));
      if (form === undefined || index + length > texts.length) continue;
      text = form;
      taken = length;
      break;
    }
    joined.push(text);
    index += taken;
  }
  return joined;
}

function mergeTokens(parts: readonly Token[], text: string): Token {
  const first = parts[0]!;
  const last = parts.at(-1)!;
  const probabilities = parts.map((part) => part.probability).filter((value) => value !== null);
  return {
    ...first,
    text,
    lastWord: last.lastWord,
    endSeconds: last.endSeconds,
    breakAfter: last.breakAfter,
    probability: probabilities.length > 0 ? Math.min(...probabilities) : null,
  };
}
