import type { NumberPhrase } from './read-number.ts';

/** The numbers between two tokens. They stand in order, and are looked up so that a long talk is not gone through for each sentence. */
export function numbersWithin(numbers: readonly NumberPhrase[], from: number, to: number): NumberPhrase[] {
  let low = 0;
  let high = numbers.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (numbers[middle]!.from < from) low = middle + 1;
    else high = middle;
  }
  const found: NumberPhrase[] = [];
  for (let index = low; index < numbers.length && numbers[index]!.from < to; index += 1)
    if (numbers[index]!.to <= to) found.push(numbers[index]!);
  return found;
}
