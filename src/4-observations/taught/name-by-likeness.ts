/**
 * No list of words is ever whole. A statement that names nothing known is named by what the reader taught from examples takes it
 * for, before anything else is read, so that its place, its sides and its denials are read as if the word had been known.
 * What comes of it is always flagged.
 */
import { type KindName, kinds } from '../../../shared/vocabulary/kinds/index.ts';
import { type Phrase, type PhraseOf, phrasesOf } from '../../3-phrases/phrase.ts';
import { LIKENESS } from '../reading.ts';
import type { Sentence } from '../sentence.ts';
import { ALL_BUT_NONE, isWeighed, likelyIn } from './opinion.ts';
import type { TaughtReading } from './read-taught.ts';

/** From this chance on where a place, a side or a size is told of: on talk it had not seen, four of five such statements held the thing. */
const LIKELY = 0.6;
/** The same where nothing of the kind is told, or the camera is spoken of: chat is as short, and half of that would be wrong. */
const LIKELY_BARE = 0.9;
/** The chance that its words must leave without its numbers, which bends and stretches share with bare readings of the counter. */
const LIKELY_WORDS = 0.2;

/** What is said of things and seldom of anything else. */
const ofThings: ReadonlySet<Phrase['family']> = new Set([
  'distance',
  'relative',
  'position',
  'clock',
  'degree',
  'share',
  'inches',
  'angle',
]);

/** What a pipe is made of is read from its material, whatever the words around it. */
const isNamed = ({ family }: Phrase): boolean => family === 'thing' || family === 'material' || family === 'diameter';
const names = new Set<string>(kinds.map(({ name }) => name));
const ofPipes: ReadonlySet<string> = new Set(['pipe', 'material-change']);

/** The sentences, with a name put into each that has none, or none that is believed, and is likely to say one. */
export function nameByLikeness(sentences: readonly Sentence[], taught: TaughtReading): Sentence[] {
  return sentences.map((whole) => {
    const sentence = withoutMisnamed(whole, taught);
    if (sentence.isQuestion || sentence.phrases.some(isNamed)) return whole;
    const isOfThing =
      sentence.phrases.some(({ family }) => ofThings.has(family)) &&
      !sentence.phrases.some(({ family }) => family === 'camera');
    const kind = likelyKind(taught, sentence, isOfThing ? LIKELY : LIKELY_BARE);
    const at = kind === null ? null : taught.headOf(sentence, kind);
    if (kind === null || at === null || taught.chanceOfWords(sentence, kind) < LIKELY_WORDS) return whole;
    const name: Phrase = { family: 'thing', kind, source: 'sign', rule: LIKENESS, from: at, to: at + 1 };
    return { ...sentence, phrases: [...sentence.phrases, name].sort((a, b) => a.from - b.from) };
  });
}

/** Names that would be kept off the list anyway, because it is all but sure that the sentence does not say them. */
function withoutMisnamed(sentence: Sentence, taught: TaughtReading): Sentence {
  const things = phrasesOf(sentence.phrases, 'thing');
  if (things.length === 0 || isWeighed(sentence)) return sentence;
  const chances = taught.chances(sentence);
  const isMisnamed = ({ kind, respelled }: PhraseOf<'thing'>): boolean =>
    respelled === undefined && (chances.get(kind) ?? 0) < ALL_BUT_NONE;
  if (!things.every(isMisnamed)) return sentence;
  return { ...sentence, phrases: sentence.phrases.filter(({ family }) => family !== 'thing') };
}

function likelyKind(taught: TaughtReading, sentence: Sentence, least: number): KindName | null {
  const best = likelyIn(taught, sentence, least);
  return best !== null && names.has(best) && !ofPipes.has(best) ? (best as KindName) : null;
}
