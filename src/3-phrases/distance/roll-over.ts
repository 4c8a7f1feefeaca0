/**
 * A counter with two figures begins again after ninety nine: what it shows from there on is a hundred more. It is only
 * believed where somebody says so and the readings fall as they then must.
 */
import { buildCueFinder, findCues } from '../lexicon/find-cues.ts';
import type { NumberPhrase } from '../number/read-number.ts';
import type { Phrase } from '../phrase.ts';
import type { Token } from '../token/token.ts';

const TURN_FEET = 100;
/** The readings before and after must lie this far apart: nearer, and the camera was pulled back. */
const LEAST_FALL_FEET = 40;
/** Words this near to where it is said belong to it: "goes back to zero after ninety nine". */
const REACH_TOKENS = 10;

const finder = buildCueFinder(
  [
    {
      cue: 'rolled-over',
      words: [
        'roll|rolls|rolled|rolling|flip|flips|flipped|wrap|wraps|wrapped|tick|ticks|ticked|click|clicked|turn|turns|turned|went|gone|goes over|round|around',
        'start|starts|started|starting|begin|begins|began|begun over|again|afresh',
        'two|2|double digit|digits|figure|figures',
        'third digit|figure',
        'hundreds digit|figure|place|column|wheel',
        'only|just? goes|counts|reads|shows up? to ninety_nine|99',
        'back|round|down|over to|at zero|nought|0|nothing|zero_zero|double_zero',
        'add|adding|plus|put a|one|another? hundred|100',
        'past|over|beyond|above the|a|one? hundred|100',
        'drops|dropped|loses|lost|no|missing|without the hundred|one_hundred|hundreds',
      ],
    },
  ],
  [],
);

/** "Twenty two past the hundred", "ten after it rolled over": what follows the number. */
const pastTurn =
  /^(past|over|beyond|above|after|since) ((the|that|my|it|one|a) ){0,2}(hundred|roll|rolled|rollover|turnover|turned over|flip|flipped)\b/;
const turnWords = /^(mark|over)$/;

/** "Twenty two past the hundred" is one number. */
export function joinPastHundred(tokens: readonly Token[], numbers: readonly NumberPhrase[]): NumberPhrase[] {
  const joined: NumberPhrase[] = [];
  for (const number of numbers) {
    if (number.from < (joined.at(-1)?.to ?? 0)) continue;
    const after = tokens.slice(number.to, number.to + 5).map(({ text }) => text);
    const unit = /^(feet|foot|ft)$/.test(after[0] ?? '') ? 1 : 0;
    const match = number.value < TURN_FEET ? pastTurn.exec(after.slice(unit).join(' ')) : null;
    if (!match) {
      joined.push(number);
      continue;
    }
    const to = number.to + unit + match[0].split(' ').length;
    joined.push({
      ...number,
      value: number.value + TURN_FEET,
      to: turnWords.test(tokens[to]?.text ?? '') ? to + 1 : to,
    });
  }
  return joined;
}

/** The phrases with the readings after a turn of the counter a hundred higher. */
export function addTurns(tokens: readonly Token[], phrases: readonly Phrase[]): readonly Phrase[] {
  const said = findCues(finder, tokens);
  if (said.length === 0) return phrases;
  let isTurned = false;
  let isGoingBack = false;
  let last = 0;
  let most = 0;
  const isNear = (phrase: Phrase): boolean =>
    said.some(
      (cue) => Math.abs(cue.from - phrase.from) <= REACH_TOKENS || Math.abs(cue.to - phrase.to) <= REACH_TOKENS,
    );
  const shown = (feet: number): number => {
    const isBelow = feet < TURN_FEET;
    if (!isTurned || !isBelow || (isGoingBack && feet + TURN_FEET > most)) return feet;
    return feet + TURN_FEET;
  };
  return phrases.flatMap((phrase): Phrase[] => {
    if (phrase.family === 'camera') {
      // "Goes back to zero" tells what the counter does, and is no new start.
      if (phrase.cue === 'zero' && isNear(phrase) && (isTurned || turnsAt(phrase.from))) return [];
      if (phrase.cue === 'pull-back') isGoingBack = isTurned;
      if (phrase.cue === 'zero' || phrase.cue === 'next-run') isTurned = false;
    }
    if (phrase.family !== 'distance') return [phrase];
    const { distance } = phrase;
    if (!isTurned && distance.feet < last && turnsAt(phrase.from)) isTurned = true;
    const feet = shown(distance.feet);
    const toFeet = distance.toFeet === null ? null : shown(distance.toFeet);
    last = toFeet ?? feet;
    most = Math.max(most, last);
    const also = distance.alsoFeet ? { alsoFeet: distance.alsoFeet.map(shown) } : {};
    return [{ ...phrase, distance: { ...distance, feet, toFeet, ...also } }];
  });

  /** Whether it is said before `at` that the counter turned, and the next reading from there is that much lower. */
  function turnsAt(at: number): boolean {
    const next = phrases.find((phrase) => phrase.family === 'distance' && phrase.from >= at && !isTop(phrase));
    if (next?.family !== 'distance' || last < TURN_FEET - LEAST_FALL_FEET || last >= 2 * TURN_FEET) return false;
    return (
      last - next.distance.feet >= LEAST_FALL_FEET &&
      said.some((cue) => cue.from < next.to + REACH_TOKENS && cue.from > next.from - 6 * REACH_TOKENS)
    );
  }
}

/** "After ninety nine": where it turns, not where anything is. */
const isTop = (phrase: Phrase): boolean => phrase.family === 'distance' && phrase.distance.feet === TURN_FEET - 1;
