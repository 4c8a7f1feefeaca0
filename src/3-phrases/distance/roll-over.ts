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
/** The last reading before the turn is not far from it. */
const LEAST_BEFORE_FEET = 75;

const finder = buildCueFinder(
  [
    {
      cue: 'rolled-over',
      words: [
        'roll|rolls|rolled|rolling|flip|flips|flipped|wrap|wraps|wrapped|tick|ticks|ticked|click|clicked over|round|around',
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
  let last: { readonly feet: number; readonly from: number } | null = null;
  let most = 0;
  let isTurned = false;
  let isGoingBack = false;
  const shown = (feet: number): number =>
    isTurned && feet < TURN_FEET && !(isGoingBack && feet + TURN_FEET > most) ? feet + TURN_FEET : feet;
  return phrases.flatMap((phrase, index): Phrase[] => {
    if (phrase.family === 'camera') {
      // "Goes back to zero" tells what the counter does, and is no new start.
      if (phrase.cue === 'zero' && turnsBefore(index)) return [];
      if (phrase.cue === 'pull-back') isGoingBack = isTurned;
      if (phrase.cue === 'zero' || phrase.cue === 'next-run') isTurned = false;
    }
    if (phrase.family !== 'distance' || isTop(phrase)) return [phrase];
    const { distance } = phrase;
    if (!isTurned && turnsBefore(index)) isTurned = true;
    const feet = shown(distance.feet);
    const toFeet = distance.toFeet === null ? null : shown(distance.toFeet);
    last = { feet: toFeet ?? feet, from: phrase.from };
    most = Math.max(most, last.feet);
    const also = distance.alsoFeet ? { alsoFeet: distance.alsoFeet.map(shown) } : {};
    return [{ ...phrase, distance: { ...distance, feet, toFeet, ...also } }];
  });

  /** Whether the counter turned between the last reading and the next one: somebody says so there, and nothing else happens. */
  function turnsBefore(index: number): boolean {
    if (last === null || last.feet < LEAST_BEFORE_FEET || last.feet >= TURN_FEET) return false;
    const at = phrases.findIndex((phrase, place) => place >= index && phrase.family === 'distance' && !isTop(phrase));
    const next = phrases[at];
    if (next?.family !== 'distance') return false;
    const { from } = last;
    const isMoved = phrases.some(
      (phrase) =>
        phrase.from > from &&
        phrase.from < next.from &&
        (phrase.family === 'heading' || (phrase.family === 'camera' && phrase.cue !== 'zero')),
    );
    const isSaid = said.some((cue) => cue.from > from && cue.from <= next.to);
    return isSaid && !isMoved && (next.distance.feet >= TURN_FEET || last.feet - next.distance.feet >= LEAST_FALL_FEET);
  }
}

/** "After ninety nine": where it turns, not where anything is. */
const isTop = (phrase: Phrase): boolean => phrase.family === 'distance' && phrase.distance.feet === TURN_FEET - 1;
