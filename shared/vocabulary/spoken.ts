/**
 * A list of spoken phrases, written as running text: semicolons or line ends part them. Word lists are read far more often than they
 * are edited, and one phrase a line makes a list nobody can see whole.
 */
export function spoken(text: TemplateStringsArray): readonly string[] {
  return (text.raw[0] ?? '')
    .split(/[;\n]/)
    .map((phrase) => phrase.trim())
    .filter((phrase) => phrase !== '');
}
