/**
 * Values that replace an earlier one, and findings that are taken back.
 * A strong cue ("make that", "correction") replaces and keeps the old value on record; a weak one ("sorry", "no") needs a
 * second value of the same sort close by. What is replaced is always of the same sort as what replaces it.
 */

import { readNumber } from '../3-phrases/number/read-number.ts';
import { type Phrase, type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { isReplaceable, sameSort, sameValue } from './phrase-value.ts';
import type { Sentence } from './sentence.ts';

/** How far apart, in tokens, a value and its replacement may stand round a weak cue. */
const WEAK_REACH_TOKENS = 9;
/** Two readings this near in feet, said one after the other, are the counter running on. */
const RUNNING_ON_FEET = 2.1;

export interface Replacement {
  readonly old: Phrase;
  /** What stands for it now, and the phrase as it was said; they differ where only the end of a stretch was given anew. */
  readonly by: Phrase;
  readonly said: Phrase;
  readonly isStrong: boolean;
  /** The counter was only read on ("forty one, forty two"): nothing said before is corrected. */
  readonly isRunOn?: boolean;
}

/** Pairs of values inside one sentence of which the second replaces the first. */
export function findReplacements(sentence: Sentence, tokens: readonly Token[]): Replacement[] {
  const values = sentence.phrases.filter(isReplaceable);
  const cues = phrasesOf(sentence.phrases, 'correction').filter(
    (phrase) => phrase.cue.act === 'replace' || phrase.rule.startsWith('scratch that'),
  );
  const found: Replacement[] = [];
  for (const [index, by] of values.entries()) {
    const old = values
      .slice(0, index)
      .findLast(
        (value) =>
          sameSort(value, by) &&
          !sameValue(value, by) &&
          value.to <= by.from &&
          !found.some((pair) => pair.old === value),
      );
    if (!old) continue;
    const between = cues.filter((cue) => cue.from >= old.to && cue.to <= by.from);
    const strong = between.some(
      (cue) => cue.cue.strength === 'strong' && (isDirect(cue, by, tokens) || isExcused(cue, old, by, sentence)),
    );
    const weak = between.some(
      (cue) =>
        by.from - old.to <= WEAK_REACH_TOKENS &&
        isDirect(cue, by, tokens) &&
        (isInterrupting(cue, tokens) || isBetweenNumbers(cue, old, by)),
    );
    const otherThing = sentence.phrases.some(
      (phrase) =>
        phrase.family === 'thing' &&
        phrase.from >= old.to &&
        phrase.to <= by.from &&
        // "Light roots at 25, actually, heavy": said of the same thing.
        !(old.family === 'degree' && phrase.from - old.to <= 1),
    );
    if ((strong || weak) && !(otherThing && !strong)) {
      found.push({ old, by: standingFor(old, by), said: by, isStrong: strong });
      // "seventeen, seventeen or, no, eighteen"
      for (const same of values.slice(0, index))
        if (same !== old && same.family === 'distance' && sameValue(same, old) && old.from - same.to <= 2)
          found.push({ old: same, by: standingFor(same, by), said: by, isStrong: strong });
      // "eleven to twenty, seventeen, wait, eleven to seventeen"
      const earlier =
        by.family === 'distance' && by.distance.toFeet !== null
          ? values.find(
              (value) =>
                value.family === 'distance' &&
                value.distance.toFeet !== null &&
                value.to <= old.from &&
                value !== by &&
                old.from - value.to <= 3,
            )
          : undefined;
      if (earlier) found.push({ old: earlier, by, said: by, isStrong: strong });
    } else if (!otherThing && isSaidMoreClosely(old, by, sentence, tokens))
      found.push({ old, by, said: by, isStrong: true });
    else if (!otherThing && isDisowned(old, by, sentence, tokens)) {
      found.push({ old, by, said: by, isStrong: true });
      for (const same of values.slice(0, index))
        if (same !== old && sameValue(same, old))
          found.push({ old: same, by: standingFor(same, by), said: by, isStrong: true });
    } else if (!otherThing && isRecalled(old, by, sentence, tokens)) found.push({ old, by, said: by, isStrong: true });
    else if (!otherThing && (isCalled(old, by, tokens) || isSettled(old, by, tokens)))
      found.push({ old, by: standingFor(old, by), said: by, isStrong: false });
    else if (isRunningOn(old, by, tokens))
      found.push({ old, by: standingFor(old, by), said: by, isStrong: true, isRunOn: true });
  }
  return found;
}

/**
 * What stands where the old value stood, so that it is not further from its thing for having been said twice.
 * "From 18 to 24, no, make it 26" gives the end anew; "make it 12" could be either and replaces the whole.
 */
function standingFor(old: Phrase, said: Phrase): Phrase {
  const by = { ...said, from: old.from };
  if (old.family !== 'distance' || by.family !== 'distance') return by;
  const isNewEnd = old.distance.toFeet !== null && by.distance.toFeet === null && by.distance.feet > old.distance.feet;
  if (old.distance.isEnd === true && by.distance.toFeet === null)
    return { ...by, distance: { ...by.distance, isEnd: true } };
  return isNewEnd ? { ...by, distance: { ...by.distance, feet: old.distance.feet, toFeet: by.distance.feet } } : by;
}

/** The cue stands directly before the value it brings, a few small words aside. */
function isDirect(cue: PhraseOf<'correction'>, by: Phrase, tokens: readonly Token[]): boolean {
  return (
    tokens
      .slice(cue.to, by.from)
      .every((token) =>
        /^(it|is|'s|that|at|a|an|the|on|um|uh|more|like|about|closer|to|of|i|mean|call|say|make|sorry|wait|no|let|me|see|feet|foot|by|in|just|only|actually|it's|'d|'ll|start|starts|really|from|with|and|goes|not|lemme|check|look|now|hang|hold|hmm|okay|think|read|that's|'m|yeah|well|so|or|give)$/.test(
          token.text,
        ),
      ) && by.from - cue.to <= 7
  );
}

/** "Top, no, the head has rolled over on me, bottom": a reason stands between, and nothing else is named. */
const isExcused = (cue: PhraseOf<'correction'>, old: Phrase, by: Phrase, sentence: Sentence): boolean =>
  /^(position|clock|degree|share|diameter|inches)$/.test(by.family) &&
  by.from - cue.to <= WEAK_REACH_TOKENS &&
  !sentence.phrases.some(
    (phrase) => /^(thing|distance|material)$/.test(phrase.family) && phrase.from >= old.to && phrase.to <= by.from,
  );

/** A weak cue counts only when it breaks in: a comma or a stop stands before it, or it is doubled. */
function isInterrupting(cue: PhraseOf<'correction'>, tokens: readonly Token[]): boolean {
  const before = tokens[cue.from - 1];
  return before === undefined || before.breakAfter !== 'none' || cue.to - cue.from > 1;
}

/** "Crack at 19 no 20": nothing is printed, and nothing else stands between the two numbers. */
const isBetweenNumbers = (cue: PhraseOf<'correction'>, old: Phrase, by: Phrase): boolean =>
  old.family === 'distance' &&
  by.family === 'distance' &&
  cue.from - old.to <= 1 &&
  by.from - cue.to <= 2 &&
  /^(no|nope|nah|sorry|wait|i mean|actually|rather|uh no|hang on|hold on)$/.test(cue.rule);

/** Nobody mistakes the counter by more, in feet. */
const MISREAD_FEET = 3;
const isMisread = (old: Phrase, by: Phrase): boolean =>
  old.family === 'distance' &&
  by.family === 'distance' &&
  by.distance.toFeet === null &&
  Math.abs(by.distance.feet - (old.distance.toFeet ?? old.distance.feet)) <= MISREAD_FEET;

/** "Ten to eighteen, and let's call that nineteen." */
const isCalled = (old: Phrase, by: Phrase, tokens: readonly Token[]): boolean =>
  isMisread(old, by) &&
  /(what 's|what does|where) (it|that|the \w+|are we|am i|is it)( say| read| at)?$|\b(let 's see|let me see|i lied|on second (thought|look))$|\b(call|make|put|mark|log) (it|that)( at| down as)?$/.test(
    textOf(tokens, Math.max(old.to, by.from - 4), by.from),
  );

/** "Twenty six, or twenty seven if we're fussy, twenty seven": what is said twice stands. */
const isSettled = (old: Phrase, by: Phrase, tokens: readonly Token[]): boolean =>
  isMisread(old, by) && ` ${textOf(tokens, old.to, by.from)} `.includes(` ${textOf(tokens, by.from, by.to)} `);

/** "A quarter inch, three quarters of an inch": one measure said twice in a row, the second time with more care. */
function isSaidMoreClosely(old: Phrase, by: Phrase, sentence: Sentence, tokens: readonly Token[]): boolean {
  if (!(old.family === 'inches' && by.family === 'inches') && !(old.family === 'share' && by.family === 'share'))
    return false;
  const between = textOf(tokens, old.to, by.from);
  const hasComma = tokens.slice(old.to - 1, by.from).some((token) => token.breakAfter === 'comma');
  return (
    hasComma &&
    /^((deep|wide|of|it|water|say|call|about|maybe|or|so|that|'s|more|like|probably|nearly|almost|make|i|'d|'ll) ?){0,4}$/.test(
      between,
    ) &&
    !sentence.phrases.some((phrase) => phrase.family === 'distance' && phrase.from >= old.to && phrase.to <= by.from)
  );
}

/** "forty one, forty two": the speaker reads the counter on. */
function isRunningOn(old: Phrase, by: Phrase, tokens: readonly Token[]): boolean {
  if (old.family !== 'distance' || by.family !== 'distance') return false;
  if (by.distance.toFeet !== null) return false;
  const gap = by.distance.feet - (old.distance.toFeet ?? old.distance.feet);
  const isSilent =
    by.from - old.to <= 1 && tokens.slice(old.to, by.from).every((token) => /^(feet|uh|um|and)$/.test(token.text));
  // "At twelve and fourteen", "at four, six and nine": a list of places.
  const isAnd = (at: number): boolean => tokens[at]?.text === 'and' && readNumber(tokens, at + 1) !== null;
  if ((isAnd(by.from - 1) && gap > 1) || isAnd(by.to)) return false;
  return isSilent && gap > 0 && gap <= RUNNING_ON_FEET && old.distance.frame !== 'unit';
}

/** "It wasn't eighteen, it was seventeen": the first value is denied, the second stands. */
const isDisowned = (old: Phrase, by: Phrase, sentence: Sentence, tokens: readonly Token[]): boolean =>
  isMisread(old, by) &&
  /\b(not|isn't|wasn't|ain't|never)( at| really| actually)?$/.test(
    textOf(tokens, Math.max(sentence.from, old.from - 3), old.from),
  ) &&
  /^(feet |foot )?(but |no )?((it|that|this|i|we) ('s|is|was|'m|am|meant|mean|said) )?(really |actually |more like |at )*$/.test(
    `${textOf(tokens, old.to, by.from)} `.trimStart(),
  );

/** "I said thirty, it's thirty two": the first value is quoted, the second stands. */
function isRecalled(old: Phrase, by: Phrase, sentence: Sentence, tokens: readonly Token[]): boolean {
  const lead = textOf(tokens, Math.max(sentence.from, old.from - 7), old.from);
  const between = textOf(tokens, old.to, by.from);
  const isSaid =
    /\b(?:i|i 've|i 'd|i 'd first have|i 'd have|at first i) (said|called|had|told you|gave you|put|wrote|logged|first said|first thought|thought)( [\w']+){0,5}$/.test(
      lead,
    );
  // "I said the wye was on the left, and the head was rolled over, so that's on the right."
  if (
    isSaid &&
    old.family !== 'distance' &&
    / ?\b(it|that|they|this) ?('s|is|are|was)( really| actually| in fact)?( on| at| from| more)?( the)?$/.test(between)
  )
    return true;
  return (
    /\b(i|i 've|we|you) (said|called|had|gave|read|wrote|noted|logged|put|told|took)\b/.test(lead) &&
    /^(feet |foot |and |but |it |that |this |should |it's |really |actually |now )*('s|is|was|be|have been|reads|says|should be|meant|i meant|make it|not)( at| really| actually| more like| closer to| about)*$/.test(
      between,
    )
  );
}
