/** Follows the camera: where a run starts and which way it goes, when the counter starts again, when it is pulled back. */

import type { Direction } from '../../shared/vocabulary/attributes.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { accessWords, isUnusable } from './access-words.ts';
import { endKinds, openingKinds, placelessKinds } from './kind-roles.ts';
import { planRuns } from './plan-runs.ts';
import { currentRun, own, type Reading } from './reading.ts';
import { noSignals, readSignals, type Signals } from './run-signs.ts';
import type { Sentence } from './sentence.ts';
import { FIRST_RUN_SUM, gatherSigns, hasSign } from './weigh-start.ts';

/** How many sentences after an announcement the details of a run may follow. */
const DETAILS_SENTENCES = 3;

const bringsBack =
  /\b(back in|push back in|going back in|pushing again|go again|going again|forward again|push again|heading out again|back out again|resume|try (it |that |her |him )?again|(second|another|one more) (try|go|attempt|push)|take two)\b|^(okay |alright |now |and |so )*(again|once more)$/;

const otherWay: Readonly<Record<Direction, Direction>> = { downstream: 'upstream', upstream: 'downstream' };

function startRun(reading: Reading, from: Sentence, sentence: Sentence, signals: Signals): void {
  const before = currentRun(reading);
  reading.runPlan ??= planRuns(reading.sentences, reading.phrases.tokens, from.index, reading.close);
  const named =
    reading.sentences
      .slice(from.index, sentence.index + 1)
      .map((part) => accessWords(reading, part))
      .find((words) => words !== null) ?? null;
  // "The other way", said without which: the one not gone before.
  const isElsewhere = signals.hasAccess && !signals.isSameAccess;
  const implied =
    signals.direction === null && signals.isTurnedAbout && !isElsewhere && before?.direction
      ? otherWay[before.direction]
      : signals.direction === null && signals.isSameWay
        ? (before?.direction ?? null)
        : null;
  for (let at = from.from; at < sentence.to; at += 1)
    if (reading.owners[at]?.sort !== 'item') reading.owners[at] = { sort: 'run', run: reading.runs.length + 1 };
  reading.runs.push({
    n: reading.runs.length + 1,
    access: signals.isSameAccess || named === null ? (before?.access ?? named) : named,
    direction: signals.direction ?? implied,
    isDirectionPlain: signals.isPlain,
    isDirectionImplied: implied !== null,
    isOppositeWay: signals.direction === null && signals.isTurnedAbout && !isElsewhere,
    isDirectionAssumed: false,
    sentence: from.index,
    announcedTo: before ? sentence.index : from.index,
    from: from.from,
    to: sentence.to,
    here: 0,
    furthest: 0,
    way: 'out',
    turnsAfter: null,
    material: null,
    diameterIn: null,
    end: null,
    finishedAt: null,
    finishedIn: -1,
    hasFindings: false,
    track: [],
    landmarks: [],
  });
  reading.pending = null;
  reading.focus = [];
  reading.lastValue = null;
  reading.asked = [];
  reading.isSummary = false;
}

/** "Forty seven, the lens is under, so I'm pulling out": what is named first was seen on the way out. */
function findsFirst(sentence: Sentence): boolean {
  const back = phrasesOf(sentence.phrases, 'camera').find((phrase) => phrase.cue === 'pull-back');
  const thing = phrasesOf(sentence.phrases, 'thing').find((phrase) => phrase.source !== 'weak');
  const place = phrasesOf(sentence.phrases, 'distance')[0];
  if (!back || !thing) return false;
  if (place) return Math.max(thing.from, place.from) < back.from;
  return thing.to <= back.from && endKinds[thing.kind] !== undefined;
}

/** "There goes a shower drain off to the left": what comes in is met on the way, and is no way in. */
const meetsThing = (sentence: Sentence, signals: Signals): boolean =>
  !signals.isEntering &&
  !signals.isZero &&
  phrasesOf(sentence.phrases, 'thing').some(
    ({ kind, source }) => source !== 'weak' && !openingKinds.has(kind) && !placelessKinds.has(kind),
  );

/** Whether the sentence starts a run or adds to the start of one. Marks its tokens when it does. */
export function readRuns(reading: Reading, sentence: Sentence): { isRunTalk: boolean; signals: Signals } {
  const signals = readSignals(sentence, reading.phrases.tokens);
  const run = currentRun(reading);
  const hasPlace = phrasesOf(sentence.phrases, 'distance').some((phrase) => phrase.distance.feet > 0);
  if (!run) {
    const isLimit = isUnusable(sentence);
    const window =
      isLimit && !signals.isEntering && !signals.isPlain && signals.direction === null
        ? null
        : gatherSigns(reading, sentence);
    const isGoing = /\b(i 'm|we 're|i am|we are|gonna|going|i 'll|go|goes)\b/.test(sentence.text);
    const hasNow = signals.direction !== null || signals.hasAccess || signals.isZero;
    if (
      window &&
      hasNow &&
      ((window.sum >= FIRST_RUN_SUM &&
        (window.signals.direction !== null ||
          window.signals.isZero ||
          (window.signals.hasAccess && window.signals.isEntering))) ||
        (window.signals.direction !== null && isGoing))
    ) {
      startRun(reading, window.from, sentence, window.signals);
      return { isRunTalk: true, signals };
    }
    return { isRunTalk: false, signals };
  }
  const planned = reading.runPlan?.starts.get(sentence.index);
  if (planned) {
    startRun(reading, sentence, reading.sentences[planned.to] ?? sentence, planned.signals);
    return { isRunTalk: true, signals };
  }
  if (sentence.index <= run.announcedTo && sentence.index > run.sentence)
    return { isRunTalk: hasSign(signals) && !hasPlace, signals };
  const isFresh = run.furthest <= 2 && sentence.index - run.sentence <= DETAILS_SENTENCES + 2;
  if (
    isFresh &&
    !hasPlace &&
    !meetsThing(sentence, signals) &&
    (signals.direction !== null || signals.hasAccess || signals.isZero)
  ) {
    // "Now turn around. Same cleanout, going to the street, zero it": the way said with the start of the count is the one.
    const isStart = !run.isDirectionPlain && (signals.isZeroed || signals.isSameAccess);
    const overrides =
      isStart ||
      (signals.isPlain && (!run.isDirectionPlain || /\b(no|sorry|first|i mean|correction)\b/.test(sentence.text)));
    if (signals.direction !== null && (run.direction === null || run.isDirectionImplied || overrides)) {
      run.isDirectionImplied = false;
      run.direction = signals.direction;
      run.isDirectionPlain = signals.isPlain;
    }
    run.access ??= accessWords(reading, sentence);
    return { isRunTalk: true, signals };
  }
  if (signals.isFinish && run.way === 'out' && !reading.isSummary) {
    const places = phrasesOf(sentence.phrases, 'distance').filter((phrase) => phrase.distance.feet > 0);
    run.finishedAt = places.at(-1)?.distance.feet ?? run.here;
    run.finishedIn = sentence.index;
  }
  if (run.turnsAfter !== null && sentence.index > run.turnsAfter) {
    run.way = 'back';
    run.turnsAfter = null;
  }
  if (signals.isPullBack && findsFirst(sentence) && run.way === 'out') run.turnsAfter = sentence.index;
  else if (signals.isPullBack && (run.hasFindings || run.furthest > 2)) {
    run.way = 'back';
    reading.isSummary = false;
    reading.pending = null;
  } else if (run.way === 'back' && bringsBack.test(sentence.text)) run.way = 'out';
  const isLate = run.way === 'back' || run.end !== null || (run.hasFindings && sentence.index >= reading.ending.from);
  if (signals.isSummary && isLate) reading.isSummary = true;
  return { isRunTalk: false, signals };
}

export function ownRunTalk(reading: Reading, sentence: Sentence): void {
  const run = currentRun(reading);
  if (run) own(reading, sentence.from, sentence.to, { sort: 'run', run: run.n });
}

/**
 * Findings before any run was announced, or one whose announcement was not understood: a run is started without a direction, and
 * says so, because a lost run would lose everything found in it.
 */
export function startUnannounced(reading: Reading, sentence: Sentence): void {
  const named = reading.sentences
    .slice(0, sentence.index)
    .findLast((other) => sentence.index - other.index <= 8 && readSignals(other, reading.phrases.tokens).hasAccess);
  startRun(reading, named ?? sentence, named ?? { ...sentence, to: sentence.from }, noSignals);
}
