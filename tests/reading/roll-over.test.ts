import { describe, expect, test } from 'vitest';
import { draftSentence } from './read-sentence.ts';

/** Kind and place of what a talk gives; the talk is put after the opening of a run. */
const placesIn = (talk: string): string[] =>
  draftSentence(talk)
    .observations.filter(({ kind }) => kind !== 'pipe' && kind !== 'debris')
    .map(({ kind, at }) => `${kind} ${at}`);

// Common practice, no source: small reels show two figures, and their users add the hundred in their heads.
describe('a counter with two figures that begins again after ninety nine', () => {
  const whole = ['wye 12', 'coupling 88', 'cleanout 104', 'belly 122', 'main-connection 135'];
  test.each([
    "Twelve feet, wye on the left. Eighty eight, a coupling. This counter only has two digits, so it's rolled over. Four, a cleanout. Twenty two, a belly. Main at thirty five.",
    'Twelve feet, wye on the left. Eighty eight, a coupling. It goes back to zero after ninety nine, so add a hundred from here on. Four feet, a cleanout. Twenty two feet, a belly. Thirty five and there is the main.',
    'Twelve feet, wye on the left. Eighty eight, a coupling. Display just flipped over to zero zero. Four, a cleanout. Twenty two past the hundred, a belly. Main is at thirty five.',
  ])('%s', (talk) => {
    expect(placesIn(talk)).toEqual(whole);
  });

  test('without the fall nothing is added, and without a word of it nothing either', () => {
    expect(placesIn('Twelve feet, wye on the left. The camera rolled over. Fourteen, a coupling.')).toEqual([
      'wye 12',
      'coupling 14',
    ]);
    expect(placesIn('Eighty eight, wye on the left. Ninety four, a coupling. Main at four.')).toContain(
      'main-connection 4',
    );
  });

  test('on the way back it shows less than the hundred again', () => {
    expect(
      placesIn(
        "Eighty eight, wye on the left. The counter rolled over. Twenty two, a coupling. Main at thirty five. Pulling back. There's a cleanout at ten that I missed. And a vent at sixty.",
      ),
    ).toEqual(['wye 88', 'coupling 122', 'main-connection 135', 'cleanout 110', 'vent 60']);
  });
});
