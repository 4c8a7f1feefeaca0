/** Talk printed without stops: where its silences stand between statements, a number stays with what is said in its breath. */
import { describe, expect, it } from 'vitest';
import { draftWords } from '../../src/4-observations/draft-words.ts';
import { OPENING, wordsOf } from './read-sentence.ts';

const SILENCE_SECONDS = 0.7;

/** The findings of breaths with a silence between them and no stops, in which the run begins as usual. */
function findingsIn(breaths: readonly string[]): string[] {
  const said = wordsOf([OPENING, ...breaths].join(' '));
  const starts = new Set<number>();
  let at = OPENING.split(' ').length;
  for (const breath of breaths) {
    starts.add(at);
    at += breath.split(' ').length;
  }
  let late = 0;
  const words = said.words.map((word, index) => {
    if (starts.has(index)) late += SILENCE_SECONDS;
    return { ...word, startSeconds: word.startSeconds + late, endSeconds: word.endSeconds + late };
  });
  const { observations } = draftWords({ ...said, words });
  return observations.filter(({ kind }) => kind !== 'pipe').map(({ kind, at: feet }) => `${kind} ${feet}`);
}

describe('silences in talk without stops', () => {
  const placed = [
    'wye 11',
    'roots 19',
    'offset-joint 23',
    'scale 31',
    'crack 38',
    'open-joint 44',
    'main-connection 52',
  ];

  it('keep the number with the thing said before it', () => {
    const breaths = [
      'wye on the left eleven',
      'roots at the top nineteen',
      'offset joint twenty three',
      'scale all round thirty one',
      'crack on the right thirty eight',
      'open joint forty four',
      'and the main fifty two',
    ];
    expect(findingsIn(breaths)).toEqual(placed);
  });

  it('keep the number with the thing said after it', () => {
    const breaths = [
      'eleven wye on the left',
      'nineteen roots at the top',
      'twenty three offset joint',
      'thirty one scale all round',
      'thirty eight crack on the right',
      'forty four open joint',
      'fifty two and the main',
    ];
    expect(findingsIn(breaths)).toEqual(placed);
  });

  it('tell nothing where they tear words apart', () => {
    const breaths = ['there is a wye at', 'eleven and some', 'roots on the', 'left nineteen and a', 'crack at thirty'];
    expect(findingsIn(breaths)).toEqual(['wye 11', 'roots 19', 'crack 30']);
  });

  it('stand for stops where only commas are printed', () => {
    const breaths = [
      "okay, so, that's a wye, on the left, at eleven,",
      'um, still going, still going, this old thing, you know,',
      'nineteen, some roots, up top, nothing wild,',
      'my uncle had a house like this one, same deal,',
      'there is an offset joint, twenty three, not bad,',
      "and thirty one, scale, all the way round, and that's about it,",
      'thirty eight, crack, on the right side, long one,',
      'moving on, moving on, the joint is open, forty four,',
      "fifty two, and that's the main,",
    ];
    expect(findingsIn(breaths)).toEqual(placed);
  });
});
