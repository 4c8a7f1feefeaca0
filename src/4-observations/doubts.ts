/**
 * Weighs the doubt about every item and says it as flags with a reason. Reading and hearing are kept apart: reading doubt
 * comes from how the talk was understood, hearing doubt from how sure the recogniser was of the words used.
 */
import type { Flag, ReviewReason } from '../../shared/schemas/draft.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { kindTitle } from '../../shared/vocabulary/kind-titles.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { type DoubtFeatures, doubtFeatures, type TalkFacts } from './doubt-features.ts';
import { DOUBT_THRESHOLD, doubtBias, doubtWeights } from './doubt-weights.ts';
import { addFirmFlag, addFlag, addSoftFlag } from './flags.ts';
import { flagGuessedServices } from './guessed-service.ts';
import { placelessKinds } from './kind-roles.ts';
import { placeOffers } from './offer-places.ts';
import { readNearest } from './read-nearest.ts';
import { DOUBTFUL_WORD, type Item, LIKENESS, type Reading, RUN_START, SAME_PLACE } from './reading.ts';
import { soundsAlike } from './sounds-alike.ts';
import { doubtFields } from './taught/doubt-fields.ts';
import { alsoNamed, kindOffers, type Opinion, opinionOf, UNLIKELY } from './taught/opinion.ts';
import { flagUnclaimed } from './unclaimed-values.ts';
import { WEAK_WORD, weakestWord } from './weakest-word.ts';
import { weighFeatures } from './weigh-features.ts';

/** How much a weakly heard word in the same sentence adds to the reading doubt, and the sum from which an item is flagged. */
const WEAK_WORD_WEIGHT = 0.5;
const HEARD_DOUBT_THRESHOLD = 0.26;

interface Reason {
  readonly reason: ReviewReason;
  readonly about: string;
  readonly detail: string;
}

const correctedAloud: Reason = {
  reason: 'corrected',
  about: 'at',
  detail: 'check which of the values said is meant',
};

/** The part of a feature's name before the colon, and what to tell the inspector when it weighs most. */
const reasons: Readonly<Record<string, Reason>> = {
  place: { reason: 'distance-unsure', about: 'at', detail: 'the distance was not said in one breath with it' },
  things: { reason: 'distance-unsure', about: 'at', detail: 'several things were named together' },
  word: { reason: 'word-unsure', about: 'kind', detail: 'described or misheard rather than named' },
  hedge: { reason: 'hedged', about: 'status', detail: 'said with doubt' },
  repeat: { reason: 'maybe-repeat', about: 'kind', detail: 'may be something already listed' },
  correction: correctedAloud,
  readers: { reason: 'readers-disagree', about: 'at', detail: 'a plainer reading gives another distance' },
  attribute: { reason: 'value-odd', about: 'size', detail: 'a size or share was said apart from it' },
  taught: { reason: 'readers-disagree', about: 'kind', detail: 'a reader taught from examples is not sure of this' },
  run: { reason: 'run-unsure', about: 'run', detail: 'the direction of this run was not said' },
};
const otherwise: Reason = { reason: 'word-unsure', about: 'kind', detail: 'this kind of talk is often misread' };

/** Answers with what spoke for doubt about each item. */
export function weighDoubts(reading: Reading, words: Words): ReadonlyMap<Item, DoubtFeatures> {
  const weighed = new Map<Item, DoubtFeatures>();
  const { tokens } = reading.phrases;
  const facts: TalkFacts = {
    nearest: readNearest(reading.phrases),
    punctuated: tokens.filter((token) => token.breakAfter !== 'none').length / Math.max(1, tokens.length),
  };
  const doubtedRuns = doubtedFrom(reading);
  for (const item of reading.items) {
    if (item.isWithdrawn) continue;
    const opinion = opinionOf(reading, item);
    const features = doubtFeatures(reading, item, facts, opinion);
    weighed.set(item, features);
    const doubt = doubtOf(features);
    const hearing = hearingOf(reading, item);
    item.certainty = { hearing, reading: round(1 - doubt), fields: fieldCertainty(item, features) };
    item.confidence = round((1 - doubt) * (hearing ?? 1));
    const alike = soundsAlike(reading, item, words);
    if (alike) addFirmFlag(item, alike);
    addFlags(item, features, doubt, hearing);
    if (isPlacedAcross(item, reading.plan.breaths))
      addSoftFlag(item, {
        reason: 'distance-unsure',
        about: 'at',
        detail: 'the distance was not said in one breath with it',
      });
    const otherKind = readOtherwise(item, opinion);
    if (otherKind) addSoftFlag(item, otherKind);
    const also = alsoNamed(reading, item);
    if (also)
      addSoftFlag(item, {
        reason: 'readers-disagree',
        about: 'kind',
        detail: `the same words may also name ${kindTitle(also).toLowerCase()}`,
      });
    if (doubtedRuns.some(([run, sentence]) => item.run === run && item.sentence >= sentence)) addFlag(item, runDoubt);
    const weak = item.flags.length === 0 ? flagWeakWords(reading, item, doubt) : null;
    if (weak) addFlag(item, weak);
    if (item.flags.length === 0) {
      const oddField = doubtFields(reading, item);
      if (oddField) addSoftFlag(item, oddField);
    }
    if (isBesideCut(reading, item, words))
      addFirmFlag(item, {
        reason: 'distance-unsure',
        about: 'at',
        detail: 'the number stands beside a cut in the recording',
      });
  }
  flagUnclaimed(reading);
  flagGuessedServices(reading);
  return weighed;
}

/** Whether an item has a place that was said for something else, or in another breath. */
function isPlacedAcross({ basis, evidence, sentence }: Item, breaths: readonly number[]): boolean {
  if (basis !== 'nearby') return false;
  if (evidence.placeRule === SAME_PLACE) return true;
  if (!/^place said (before|after)/.test(evidence.placeRule)) return false;
  const step = evidence.placeRule.startsWith('place said after') ? evidence.placeSentences : -evidence.placeSentences;
  return breaths[sentence] !== breaths[sentence + step];
}

const runDoubt: Reason = { reason: 'run-unsure', about: 'run', detail: 'it is not sure that a new run begins here' };

/** Runs that may be none, and runs in which another may begin, from which sentence on. */
function doubtedFrom(reading: Reading): [number, number][] {
  return [...(reading.runPlan?.doubtful ?? [])].flatMap((sentence) => {
    const run = reading.runs.findLast((candidate) => candidate.sentence <= sentence);
    return run ? [[run.n, sentence] as [number, number]] : [];
  });
}

/** The chance that some field of the item is wrong, from 0 to 1. */
export const doubtOf = (features: DoubtFeatures): number => weighFeatures(features, doubtWeights, doubtBias);

function addFlags(item: Item, features: DoubtFeatures, doubt: number, hearing: number | null): void {
  if (item.at === null && !placelessKinds.has(item.kind))
    addFirmFlag(item, { reason: 'distance-missing', about: 'at', detail: 'no distance was said' });
  if (item.evidence.placeRule === RUN_START)
    addFlag(item, {
      reason: 'distance-unsure',
      about: 'at',
      detail: 'said to be where the run begins, without a number',
    });
  if (hearing !== null && hearing < WEAK_WORD)
    addFirmFlag(item, { reason: 'word-unsure', about: 'kind', detail: 'heard weakly' });
  if (item.evidence.rule === LIKENESS)
    addFlag(item, {
      reason: 'word-unsure',
      about: 'kind',
      detail: 'no word for it is known: taken for this by its likeness to other talk',
    });
  if (item.evidence.notes.includes(DOUBTFUL_WORD))
    addFlag(item, { reason: 'word-unsure', about: 'kind', detail: 'named by a word that may mean something else' });
  const other = item.evidence.notes.find((note) => saidOtherwise.test(note));
  if (other)
    addFlag(item, {
      reason: 'corrected',
      about: saidOtherwise.exec(other)![1]!,
      detail: 'said again with another value',
    });
  if (item.flags.length > 0 || doubt <= DOUBT_THRESHOLD) return;
  addSoftFlag(item, mainReason(item, features));
}

/** A note of a later mention that gave another value. */
const saidOtherwise = /^later said (position|clock|degree|percent|inches|serves|angleDeg|diameterIn) /;

function mainReason(item: Item, features: DoubtFeatures): Flag {
  let best = otherwise;
  let most = 0.15;
  for (const [name, value] of Object.entries(features)) {
    const weight = (doubtWeights[name] ?? 0) * value;
    const reason = reasons[name.split(':')[0] ?? ''];
    if (reason && name.includes(':') && weight > most) {
      most = weight;
      best = reason;
    }
  }
  if (best.reason === 'word-unsure' || best.reason === 'readers-disagree') {
    const respelt = respelledFlag(item);
    if (respelt) return respelt;
  }
  const old = item.corrected.at(-1);
  // What was put right aloud says more than any other doubt, and both values stand to choose from.
  if (old && best.reason !== 'hedged') best = { ...correctedAloud, about: old.field };
  const offers =
    best.about === 'at' && item.at !== null
      ? placeOffers(item.at, ...(old?.field === 'at' && typeof old.was === 'number' ? [old.was] : []))
      : [];
  return offers.length > 1 ? { ...best, offers } : { ...best };
}

/** Where a word was taken for another, that says more than any other doubt about the kind. */
function respelledFlag({ respelled: [first] }: Item): Flag | null {
  return first
    ? { reason: 'word-unsure', about: 'kind', detail: `heard "${first.heard}", taken as ${first.taken}` }
    : null;
}

/** Where a reader taught from examples would not name what the rules name: that, with what it would name instead. */
function readOtherwise(item: Item, opinion: Opinion): Flag | null {
  if (opinion.own >= UNLIKELY) return null;
  // It reads the words as they were heard: of a word taken for another it can say nothing.
  return (
    respelledFlag(item) ?? {
      reason: 'readers-disagree',
      about: 'kind',
      detail: 'a reader taught from examples does not find this in these words',
      ...kindOffers(item, opinion),
    }
  );
}

/** The least word probability among the tokens that name the thing and its place. */
function hearingOf(reading: Reading, item: Item): number | null {
  const { tokens } = reading.phrases;
  const sentence = reading.sentences[item.sentence];
  const places = sentence
    ? phrasesOf(sentence.phrases, 'distance').filter(
        (place) =>
          place.from >= sentence.from &&
          place.to <= sentence.to &&
          (place.distance.feet === item.at || place.distance.toFeet === item.fields.to),
      )
    : [];
  const used = [tokens.slice(item.from, item.to), ...places.map((place) => tokens.slice(place.from, place.to))].flat();
  const known = used.map((token) => token.probability).filter((value) => value !== null);
  return known.length === 0 ? null : round(Math.min(...known));
}

/** What is not quite sure and stands among words that were heard weakly is to be looked at; `doubt` is that of the reading. */
export function flagWeakWords(reading: Reading, item: Item, doubt: number): Flag | null {
  const sentence = reading.sentences[item.sentence];
  const weakest = sentence ? weakestWord(reading, sentence) : 1;
  return weakest < 1 && doubt + WEAK_WORD_WEIGHT * (1 - weakest) > HEARD_DOUBT_THRESHOLD
    ? { reason: 'word-unsure', about: 'kind', detail: 'words beside it were heard weakly' }
    : null;
}

function isBesideCut(reading: Reading, item: Item, words: Words): boolean {
  const sentence = reading.sentences[item.sentence];
  if (!sentence) return false;
  const { tokens } = reading.phrases;
  return phrasesOf(sentence.phrases, 'distance').some((place) =>
    tokens.slice(place.from, place.to).some((token) => words.words[token.firstWord]?.besideCut === true),
  );
}

/** How sure single fields are: the place by how it was given, the kind by how it was named. */
function fieldCertainty(item: Item, features: DoubtFeatures): Record<string, number> {
  const part = (prefixes: readonly string[]): number => {
    let sum = doubtBias;
    for (const [name, value] of Object.entries(features))
      if (prefixes.some((prefix) => name.startsWith(prefix))) sum += (doubtWeights[name] ?? 0) * value;
    return round(1 - 1 / (1 + Math.exp(-sum)));
  };
  return {
    kind: part(['word:', 'kind', 'sentence:']),
    ...(item.at === null ? {} : { at: part(['place:', 'things:', 'readers:']) }),
    status: part(['hedge:']),
  };
}

const round = (value: number): number => Math.round(value * 100) / 100;
