/**
 * What the talk says of the place: address, year built, age, weather, whether it is lived in. Read from the talk before and at the
 * first run, and only where it is said in plain words; nothing is guessed.
 */

import type { Draft } from '../../shared/schemas/draft.ts';
import type { Word } from '../../shared/schemas/word.ts';
import { textOf } from '../3-phrases/token/token.ts';
import { heardBetween } from './account.ts';
import { own, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { isStreetType } from './street-names.ts';

/** How many words a street's name may have before its type. */
const NAME_WORDS = 4;
/** How many sentences past the start of the first run may still speak of the place. */
const SITE_SENTENCES = 4;

type Site = Draft['site'];

export function readSite(reading: Reading, words: readonly Word[]): Site {
  const site: Site = {};
  const until = (reading.runs[0]?.sentence ?? 6) + SITE_SENTENCES;
  for (const sentence of reading.sentences.slice(0, until)) {
    readAddress(reading, words, sentence, site);
    readYears(reading, words, sentence, site);
    readState(reading, words, sentence, site);
  }
  return site;
}

function put(
  reading: Reading,
  words: readonly Word[],
  sentence: Sentence,
  site: Site,
  name: string,
  value: string | number | boolean,
  confidence: number,
): void {
  if (site[name] !== undefined) return;
  site[name] = {
    value,
    heard: heardBetween(words, reading.phrases.tokens, sentence.from, sentence.to),
    confidence,
    review:
      confidence < 0.7 ? [{ reason: 'word-unsure', about: name, detail: 'check this against the job sheet' }] : [],
  };
  own(reading, sentence.from, sentence.to, { sort: 'site' });
}

const titled = (text: string): string => text.replace(/(^|\s|-)\p{L}/gu, (letter) => letter.toUpperCase());

function readAddress(reading: Reading, words: readonly Word[], sentence: Sentence, site: Site): void {
  const { tokens, numbers } = reading.phrases;
  for (const number of numbers) {
    if (
      number.from < sentence.from ||
      number.to > sentence.to ||
      number.isFraction ||
      number.value < 1 ||
      number.value % 1 !== 0
    )
      continue;
    for (let at = number.to + 1; at <= Math.min(sentence.to - 1, number.to + NAME_WORDS); at += 1) {
      const isJoined = tokens.slice(number.to - 1, at).every((token) => token.breakAfter === 'none');
      const isNamed = tokens.slice(number.to, at).every((token) => token.isCapitalised || token.text.length > 2);
      if (!isJoined || !isNamed || !isStreetType(tokens[at]?.text ?? '')) continue;
      // "Hill Road": the last word for a street ends the name.
      let last = at;
      while (
        last + 1 < sentence.to &&
        tokens[last]?.breakAfter === 'none' &&
        isStreetType(tokens[last + 1]?.text ?? '')
      )
        last += 1;
      const street = titled(textOf(tokens, number.to, last + 1));
      const isPrinted = tokens.slice(number.to, at).some((token) => token.isCapitalised);
      put(reading, words, sentence, site, 'address', `${number.value} ${street}`, isPrinted ? 0.9 : 0.6);
      return;
    }
  }
}

function readYears(reading: Reading, words: readonly Word[], sentence: Sentence, site: Site): void {
  const { tokens, numbers } = reading.phrases;
  for (const number of numbers) {
    if (number.from < sentence.from || number.to > sentence.to) continue;
    const before = textOf(tokens, Math.max(sentence.from, number.from - 4), number.from);
    const after = textOf(tokens, number.to, number.to + 2);
    const isYear = number.value >= 1800 && number.value <= 2040 && number.value % 1 === 0;
    if (isYear && /\b(built( in)?|constructed( in)?|from|year of construction|house is|a|ranch|bungalow)$/.test(before))
      put(reading, words, sentence, site, 'year_built', number.value, 0.9);
    else if (isYear && /\b(house|build|built)\b/.test(after))
      put(reading, words, sentence, site, 'year_built', number.value, 0.85);
    else if (
      /^years? old/.test(after) &&
      number.value >= 1 &&
      number.value < 200 &&
      /\b(house|it 's|it is|the house is|is)\b/.test(before)
    )
      put(reading, words, sentence, site, 'age_years', number.value, 0.8);
  }
}

function readState(reading: Reading, words: readonly Word[], sentence: Sentence, site: Site): void {
  const { text } = sentence;
  if (
    /\b(vacant|nobody living|nobody 's moved in|nobody 's ever lived|unoccupied|empty house|nobody home|already moved out)\b/.test(
      text,
    )
  )
    put(reading, words, sentence, site, 'occupied', false, 0.8);
  else if (
    /\b(is occupied|, occupied|people living|tenant 's home|sellers are home|owner 's home|family 's home|owner 's out here)\b/.test(
      text,
    )
  )
    put(reading, words, sentence, site, 'occupied', true, 0.8);
  const weather =
    /\b(weather ,? ?(\w+)|(rained all night|been raining|it 's raining|drizzling|drizzle|overcast|snowing|no rain|dry week|windy|raining))\b/.exec(
      text,
    );
  if (weather) put(reading, words, sentence, site, 'weather', weather[2] ?? weather[3] ?? weather[1] ?? '', 0.75);
}
