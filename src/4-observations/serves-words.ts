/**
 * What is said of a fixture: that the fitting serves it, or only that somebody stands there, that water was run in it, that it is
 * one of two it might be. Only the first is a value.
 */

import type { Phrase, PhraseOf } from '../3-phrases/phrase.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Sentence } from './sentence.ts';

type ServicePhrase = PhraseOf<'service'>;

/** How many tokens before a fixture may say what it has to do with the fitting. */
const LEAD_TOKENS = 5;

const article =
  '(?: (?:the|a|an|your|our|my|his|her|their|that|this|old|new|hall|guest|master|main|other|upstairs|downstairs))*';

/** Somebody is there, or something is done there. */
const onlyThere = new RegExp(
  `(?:^|\\b| )(?:(?:is|'s|are|'re|was|were|standing|sitting|back|up|out|down|over|me|him|her|them|somebody|someone|agent|client|owner|buyer|guy|dog|wife|husband|she|he|they|i|we) (?:in|at)|beside|behind|near|next to|past|cleaning|move|moving|redo|redoing|add|adding|paint|painting|tile|tiling|remodel|remodeled|remodeling|redid|into)${article}$`,
);
/** "I left my glasses in the kitchen"; "the sink in the kitchen" is another matter. */
const lost = new RegExp(
  `(?:^| )(?!(?:drain|sink|line|stack|fitting|something|one|thing|that|this|it) (?:in|at))\\w+ (?:in|at)${article}$`,
);
const lies = new RegExp(`\\b(?:under|underneath|beneath)${article}$`);
/** Water is run for another end than to see where it comes out. */
const runs = new RegExp(`\\b(?:running|run|ran|using|taking|washing|turned on|turn on|shut off)${article}$`);
const isTest =
  /\b(for (me|us)|let 's|go|ask|asked|have|had|can you|could you|would you|please|test|there it (is|comes|goes)|it (comes|came)|(comes|came) (out|through|down|in)|saw|watched|see it|dye|shows up|hear it)\b/;
/** Water was run and did not come: it serves another. */
const fails =
  /\b(nothing|no water|never|didn't|doesn't|isn't|not) (\S+ ){0,2}(came|come|comes|coming|showed|shows|show|through|out|down|here)\b/;
const denies = /\b(not|isn't|wasn't|ain't|never|nor|neither)( (the|a|for|from|to|your|their))*$/;

/** Two fixtures of which one is meant and it is not known which. */
const isEither = (between: string): boolean =>
  /(^|\b)or\b/.test(between) || /\b(could|might|may) (also |just |as well )?be\b/.test(between);

/** The later of two fixtures is what the first one comes to: "the bar sink, so that would be the kitchen". */
const settles = /\b(so|meaning|which means|make|no|rather|sorry|actually|i mean|it 's really)\b/;

const leadOf = (phrase: ServicePhrase, sentence: Sentence, tokens: readonly Token[]): string =>
  textOf(tokens, Math.max(clauseFrom(sentence, tokens, phrase.from), phrase.from - LEAD_TOKENS), phrase.from);

/** "Ten feet in, the downspout": what stands before a comma is no lead. */
function clauseFrom(sentence: Sentence, tokens: readonly Token[], at: number): number {
  let from = at;
  while (from > sentence.from && tokens[from - 1]?.breakAfter === 'none') from -= 1;
  return from;
}

/** Whether a fixture is what a fitting serves, as far as its own sentence tells. */
function isServed(phrase: ServicePhrase, sentence: Sentence, tokens: readonly Token[]): boolean {
  const lead = leadOf(phrase, sentence, tokens);
  const isInsideThing = sentence.phrases.some(
    (other) => other.family === 'thing' && other.from <= phrase.from && other.to >= phrase.to,
  );
  const isUnder =
    lies.test(lead) &&
    !sentence.phrases.some(
      (other) => other.family === 'thing' && other.to <= phrase.from && phrase.from - other.to <= 2,
    );
  return (
    isInsideThing ||
    !(
      onlyThere.test(lead) ||
      lost.test(lead) ||
      denies.test(lead) ||
      isUnder ||
      (runs.test(lead) && (!isTest.test(sentence.text) || fails.test(sentence.text)))
    )
  );
}

/** The fixtures of a sentence that are no value of any fitting. */
export function idleServices(sentence: Sentence, tokens: readonly Token[]): ReadonlySet<Phrase> {
  const named = phrasesOf(sentence.phrases, 'service');
  const idle = new Set<Phrase>(named.filter((phrase) => !isServed(phrase, sentence, tokens)));
  // "Not the sink, the sink is farther back."
  const denied = named.filter((phrase) => denies.test(leadOf(phrase, sentence, tokens)));
  for (const phrase of named) if (denied.some((other) => other.service === phrase.service)) idle.add(phrase);
  const served = named.filter((phrase) => !idle.has(phrase));
  for (const [index, second] of served.entries()) {
    const first = served[index - 1];
    if (!first || first.service === second.service) continue;
    const between = textOf(tokens, first.to, second.from);
    const isThingBetween = sentence.phrases.some(
      (phrase) => phrase.family === 'thing' && phrase.from >= first.to && phrase.to <= second.from,
    );
    if (settles.test(between) && (!isThingBetween || /\bso\b/.test(between))) idle.add(first);
    else if (isThingBetween) continue;
    else if (isEither(between)) {
      idle.add(first);
      idle.add(second);
    }
  }
  return idle;
}
