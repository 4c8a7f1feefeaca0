/** A job in metres: places in metres as the counter shows them, pipes by their size in millimetres. */
import { describe, expect, it } from 'vitest';
import { draftWords } from '../../src/4-observations/draft-words.ts';
import { phrasesIn, wordsOf } from './read-sentence.ts';

const draftOf = (talk: string) => draftWords(wordsOf(talk));
const placesIn = (talk: string) =>
  draftOf(talk).observations.map(({ kind, at, to }) => `${kind} ${at}${to === null ? '' : `-${to}`}`);

describe('a job in metres', () => {
  const talk =
    'In at the front gully, heading downstream to the sewer. Hundred mil clay. Crack at 4.2 metres. Five point one metres, a branch on the left. Roots at six point three, light. Belly from seven point five to nine metres. Fifteen point four and that is the public sewer.';

  it('keeps places in metres and says so', () => {
    expect(draftOf(talk).unit).toBe('m');
    expect(placesIn(talk)).toEqual([
      'pipe 0',
      'crack 4.2',
      'branch 5.1',
      'roots 6.3',
      'belly 7.5-9',
      'main-connection 15.4',
    ]);
  });

  it('offers places in the unit of the job', () => {
    const guessed =
      'In at the front gully, heading downstream. Clay. Roots at nine metres. Keep going. Nice. Good. Fine. A crack.';
    const labels = draftOf(guessed).observations.flatMap(({ review }) =>
      review.flatMap(({ about, offers }) => (about === 'at' ? (offers ?? []).map(({ label }) => label) : [])),
    );
    expect(labels).toEqual(['9 m']);
  });

  it('is none for a water meter or a stray metre', () => {
    const feet =
      'Front cleanout, heading downstream. Four inch clay. The water meter is here. Roots at nine feet. A metre of mud on my boots.';
    expect(draftOf(feet).unit).toBe('ft');
    expect(placesIn(feet)).toContain('roots 9');
  });
});

// DN and NPS, ISO 6708 and ASME B36.10; from memory.
it.each([
  ['a hundred mil clay pipe', 4],
  ['150mm vitrified clay', 6],
  ['two hundred and twenty five millimetre concrete', 9],
  ['110 mm plastic', 4],
])('reads "%s" as the nominal size it is', (talk, inches) => {
  const { phrases } = phrasesIn(talk);
  expect(phrases.flatMap((phrase) => (phrase.family === 'diameter' ? [phrase.inches] : []))).toEqual([inches]);
});

it.each([
  ['nought point six', 0.6],
  ['oh point eight', 0.8],
  ['zero point two five', 0.25],
])('reads "%s" as a number below one', (talk, value) => {
  expect(phrasesIn(talk).numbers.map((number) => number.value)).toEqual([value]);
});
