/**
 * What a stretch of talk most likely names, to begin an added finding with. Pure, and no reading: only a kind whose
 * name is said, and a distance when one single number is said. The person sees both before anything is kept.
 */
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { plainWords } from './subject.ts';

export interface Guess {
  readonly kind: string | null;
  readonly at: number | null;
}

/** Longer names win over shorter ones that lie in them; two different kinds mean that nobody can tell. */
export function guessFinding(text: string): Guess {
  const said = ` ${plainWords(text)} `;
  const named = kinds.flatMap((kind) =>
    (kind.words as readonly string[])
      .filter((word) => !/[|?*<]/.test(word) && said.includes(` ${word} `))
      .map((word) => ({ kind: kind.name as string, word })),
  );
  const whole = named.filter(
    (one) => !named.some((other) => other.word.length > one.word.length && ` ${other.word} `.includes(` ${one.word} `)),
  );
  const found = new Set(whole.map(({ kind }) => kind));
  const numbers = plainWords(text).match(/(?<![\p{L}\d.])\d+(\.\d+)?(?![\p{L}\d])/gu) ?? [];
  return {
    kind: found.size === 1 ? [...found][0]! : null,
    at: numbers.length === 1 ? Number(numbers[0]) : null,
  };
}
