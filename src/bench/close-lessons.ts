/**
 * Writes what the close reader is taught from, as JSON for `models/teach-close-reader.py`:
 *
 * node dist/src/bench/close-lessons.js OUT.json
 *
 * From the talks in `fixtures/lessons/talks/`, token by token as the reader sees them, each line with its findings; each talk
 * also as if a recogniser had dropped some words and stops. And the single lines of `fixtures/lessons/`, with their kinds.
 */
import { writeFileSync } from 'node:fs';
import type { Word } from '../../shared/schemas/word.ts';
import { degrees, directions, hourOfPosition, positions } from '../../shared/vocabulary/attributes.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { materials } from '../../shared/vocabulary/materials.ts';
import { services } from '../../shared/vocabulary/services.ts';
import { findPhrases } from '../3-phrases/find-phrases.ts';
import { COUNTED_FROM, COUNTED_STEP, COUNTED_WAY, countedWays } from '../4-observations/close/heads.ts';
import { printedWords } from '../4-observations/close/read-closely.ts';
import type { GoldObservation } from '../score/gold.ts';
import { type LabelledTalk, readLessons, readTalks } from './lessons.ts';

/** Shares of words left out or misheard, of stops printed as commas, of marks left out or put in, and how often that is done to each talk. */
const DROPPED_WORDS = 0.015;
const MISHEARD_WORDS = 0.02;
const STOPS_AS_COMMAS = 0.2;
const DROPPED_MARKS = 0.2;
const ADDED_MARKS = 0.04;
const WORSE_COPIES = 4;

/** The same sequence each time, from 0 to 1: lessons must not depend on chance. */
function makeDice(): () => number {
  let state = 7;
  return () => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return state / 2 ** 32;
  };
}

const dice = makeDice();

/** A word misheard is any other word that is said: which one a recogniser would print is not known, only that it misleads. */
const misheard = (text: string, others: readonly Word[]): string =>
  /^[a-z']+$/.test(text) && dice() < MISHEARD_WORDS
    ? others[Math.floor(dice() * others.length)]!.text.toLowerCase().replace(/[^a-z']/g, '')
    : text;

const asHeardWorse = (words: readonly Word[]): Word[] =>
  words
    .filter(() => dice() >= DROPPED_WORDS)
    .map((word) => ({ ...word, text: misheard(word.text, spoken) }))
    .map((word) => {
      if (/\.$/.test(word.text) && dice() < STOPS_AS_COMMAS) return { ...word, text: word.text.replace(/\.$/, ',') };
      if (dice() < DROPPED_MARKS) return { ...word, text: word.text.replace(/[.?!,;]+$/, '') };
      return dice() < ADDED_MARKS && /\w$/.test(word.text)
        ? { ...word, text: `${word.text}${dice() < 0.5 ? ',' : '.'}` }
        : word;
    });

function lessonOf({ findings }: LabelledTalk, words: readonly Word[], starts: readonly number[]) {
  const phrases = findPhrases([...words]);
  const firsts = starts.map((start) => {
    const at = phrases.tokens.findIndex(({ startSeconds }) => startSeconds >= start - 0.02);
    return at < 0 ? phrases.tokens.length : at;
  });
  return {
    words: printedWords(phrases),
    lines: starts.map((start, line) => ({
      from: firsts[line]!,
      to: firsts[line + 1] ?? phrases.tokens.length,
      findings: findings.filter(({ heard }) => heard[0] === start),
    })),
  };
}

/**
 * Between which lines each run begins: after the last finding of the run before and no later than its own first. Where exactly is
 * not labelled.
 */
function startsOf({ findings, lineStarts, directions: ways }: LabelledTalk) {
  const lineOf = ({ heard }: GoldObservation): number => lineStarts.indexOf(heard[0]);
  const runs = [...new Set(findings.map(({ run }) => run))].sort((a, b) => a - b);
  return runs
    .map((run) => {
      const before = findings.filter((finding) => finding.run < run).map(lineOf);
      return {
        from: Math.max(-1, ...before) + 1,
        to: Math.min(...findings.filter((finding) => finding.run === run).map(lineOf)),
        direction: ways[run - 1] ?? null,
      };
    })
    .filter(({ from, to }) => from <= to);
}

const labelled = readTalks();
const spoken = labelled.flatMap(({ words }) => words.words);
const talks = labelled.map((talk) => {
  const copies = Array.from({ length: WORSE_COPIES }, () => asHeardWorse(talk.words.words));
  return {
    isPartial: talk.isPartial,
    starts: startsOf(talk),
    copies: [talk.words.words, ...copies].map((words) => lessonOf(talk, words, talk.lineStarts)),
  };
});
const positionChoices = [...new Set(positions.map((position) => String(hourOfPosition[position] ?? position)))];
const hours = Array.from({ length: 12 }, (_, hour) => String(hour + 1));
const materialNames = materials.map(({ name }) => name);
const lessons = {
  kinds: kinds.map(({ name, takes }) => ({ name, takes })),
  hours: hourOfPosition,
  choices: {
    place: [...hours, ...positionChoices.filter((choice) => !hours.includes(choice))],
    degree: degrees,
    status: ['suspected'],
    material: materialNames,
    fromMaterial: materialNames,
    toMaterial: materialNames,
    serves: services.map(({ name }) => name),
    direction: directions,
    [COUNTED_WAY]: countedWays,
  },
  numbers: ['at', 'to', 'percent', 'inches', 'diameterIn', 'angleDeg', COUNTED_FROM, COUNTED_STEP],
  talks,
  lines: readLessons().map(({ finds, said }) => ({ finds, said })),
};
const [out] = process.argv.slice(2);
if (!out) throw new Error('Name the file to write: node dist/src/bench/close-lessons.js OUT.json');
writeFileSync(out, JSON.stringify(lessons));
console.log(`${talks.length} talks, ${lessons.lines.length} lines`);
