/** Short forms printed without their apostrophe ("thats", "dont"), as some recognisers do. */

const negated = 'do does did is was are were ca could would should have has had wo ai must need'
  .split(' ')
  .map((verb) => `${verb}n't`);
const joined = [
  ...'that there here where what who how it'.split(' ').map((word) => `${word}'s`),
  ...'i you we they'.split(' ').flatMap((word) => [`${word}'ve`]),
  ...'it that they you this'.split(' ').flatMap((word) => [`${word}'ll`, `${word}'d`]),
  "i'm",
  "you're",
  "they're",
];
/** These are words of their own as well. */
const ambiguous = new Set(['its', 'wed', 'ill', 'well', 'hell', 'shell', 'were', 'id', 'hows', 'whos', 'needn']);

const apostrophes: ReadonlyMap<string, string> = new Map(
  [...negated, ...joined]
    .map((form) => [form.replace("'", ''), form] as const)
    .filter(([bare]) => !ambiguous.has(bare)),
);

/** The form with its apostrophe, or the word itself. */
export const withApostrophe = (word: string): string => apostrophes.get(word) ?? word;

/** Whether a talk is printed without apostrophes altogether; then "its" is "it's" far oftener than not. */
export function dropsApostrophes(words: readonly { readonly text: string }[]): boolean {
  let bare = 0;
  for (const { text } of words) {
    if (/['\u2019]/.test(text)) return false;
    if (apostrophes.has(text.toLowerCase().replace(/[^a-z]/g, ''))) bare += 1;
  }
  return bare >= 2;
}
