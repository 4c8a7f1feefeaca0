/** A table asked for any word at all: a plain object would answer to "constructor". */
const tableOf = <Value>(entries: Readonly<Record<string, Value>>): ReadonlyMap<string, Value> =>
  new Map(Object.entries(entries));

/** Number words and what they are worth. */
export const ones = tableOf({
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
});

export const teens = tableOf({
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
});

export const tens = tableOf({
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
});

/** Spoken noughts: "one oh six", "two point zero". */
export const noughts: ReadonlySet<string> = new Set(['zero', 'oh', 'o', 'nought']);

/** Parts of one: the word, its worth, and whether it needs a count or an article before it ("a third", not "third"). */
export const fractionParts = tableOf<{ readonly worth: number; readonly standsAlone: boolean }>({
  half: { worth: 1 / 2, standsAlone: true },
  halves: { worth: 1 / 2, standsAlone: false },
  quarter: { worth: 1 / 4, standsAlone: true },
  quarters: { worth: 1 / 4, standsAlone: false },
  third: { worth: 1 / 3, standsAlone: false },
  '3rd': { worth: 1 / 3, standsAlone: false },
  '3rds': { worth: 1 / 3, standsAlone: false },
  '4th': { worth: 1 / 4, standsAlone: false },
  '5th': { worth: 1 / 5, standsAlone: false },
  '8th': { worth: 1 / 8, standsAlone: false },
  '8ths': { worth: 1 / 8, standsAlone: false },
  '16th': { worth: 1 / 16, standsAlone: false },
  thirds: { worth: 1 / 3, standsAlone: false },
  fourth: { worth: 1 / 4, standsAlone: false },
  fourths: { worth: 1 / 4, standsAlone: false },
  fifth: { worth: 1 / 5, standsAlone: false },
  fifths: { worth: 1 / 5, standsAlone: false },
  eighth: { worth: 1 / 8, standsAlone: false },
  eighths: { worth: 1 / 8, standsAlone: false },
  sixteenth: { worth: 1 / 16, standsAlone: false },
  sixteenths: { worth: 1 / 16, standsAlone: false },
});

/** Recognisers print the end of "fifty two" as another word; believed before a unit, or where a small word could not stand. */
export const misheardOnes = tableOf({ to: 2, too: 2, for: 4, won: 1, ate: 8 });
