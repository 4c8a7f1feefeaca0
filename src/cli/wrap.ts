/**
 * `text` in lines of at most `columns`, broken at spaces; the first line begins with `first`, the others with `next`.
 * A single word longer than a line stands alone on one that is too long: a path must stay whole to be copied.
 */
export function wrap(text: string, columns: number, first = '', next = first): string[] {
  if (text === '') return [];
  const lines: string[] = [];
  let line = first;
  let hasWord = false;
  for (const word of text.split(/\s+/)) {
    if (hasWord && line.length + 1 + word.length > columns) {
      lines.push(line);
      line = next + word;
    } else {
      line += hasWord ? ` ${word}` : word;
    }
    hasWord = true;
  }
  lines.push(line);
  return lines;
}
