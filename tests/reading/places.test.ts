/** Small talks in which a place is not said with its thing: what it is given, and what the inspector is told of that. */
import { describe, expect, it } from 'vitest';
import { breathsOf } from '../../src/4-observations/breaths.ts';
import { cutSentences } from '../../src/4-observations/sentence.ts';
import { draftSentence, phrasesIn } from './read-sentence.ts';

const placesIn = (talk: string): string[] =>
  draftSentence(talk)
    .observations.filter(({ kind }) => kind !== 'pipe')
    .map(({ kind, at }) => `${kind} ${at}`);

const flagsOf = (talk: string, kind: string): (string | undefined)[] =>
  draftSentence(talk)
    .observations.filter((item) => item.kind === kind)
    .flatMap(({ review }) => review.map(({ detail }) => detail));

const endOf = (talk: string) => draftSentence(talk).runs.at(-1)?.end;

describe('a thing without a place', () => {
  it('is given where the camera was, and flagged', () => {
    const talk =
      "Roots at nine. Keep going. Nice. Good. Fine. A crack. That's a nice bit of pipe, really. Tee at twenty.";
    expect(placesIn(talk)).toEqual(['roots 9', 'crack 9', 'tee 20']);
    expect(flagsOf(talk, 'crack')).toContain('no distance was said; the camera was about here');
  });

  it('is flagged when its number comes in another breath', () => {
    const talk = "Roots at nine. Then there's a crack. Fourteen and some. Tee at twenty.";
    expect(placesIn(talk)).toEqual(['roots 9', 'crack 14', 'tee 20']);
    expect(flagsOf(talk, 'crack')).toContain('the distance was not said in one breath with it');
  });

  it('lies at the start when words say so, and is flagged', () => {
    const talk = 'Roots right off, light. Crack at twelve.';
    expect(placesIn(talk)).toEqual(['roots 0', 'crack 12']);
    expect(flagsOf(talk, 'roots')).toContain('said to be where the run begins, without a number');
  });

  it('is talk when its run ended some sentences before', () => {
    const after = (rest: string) => placesIn(`Main at forty. Lovely. Nice and easy. Good weather for it. ${rest}`);
    expect(after('A crack.')).toEqual(['main-connection 40']);
    expect(after('Crack at twelve.')).toEqual(['main-connection 40', 'crack 12']);
  });
});

describe('what ends a run', () => {
  it('lies at the furthest number said beside it', () => {
    expect(placesIn("Roots at nine. There's the main. Sixty one.")).toEqual(['roots 9', 'main-connection 61']);
  });

  it('is doubted when the camera went on past it', () => {
    expect(flagsOf('Stopped at twelve. Roots at nineteen.', 'stopped')).toContain(
      'the camera went on to 19 ft after it',
    );
  });

  it('is none when it was only spoken of on the way', () => {
    const talk = "Roots at nine. Clean to the street. That's the main up there. Crack at thirty.";
    expect(placesIn(talk)).toEqual(['roots 9', 'crack 30']);
    expect(endOf(talk)).toEqual({ at: 30, reason: 'other' });
  });

  it('is where what was not reached is put', () => {
    const talk = 'We never made it to the main. Roots at nine. Stopped at thirty.';
    expect(placesIn(talk)).toEqual(['not-reached 30', 'roots 9', 'stopped 30']);
  });
});

describe('breaths', () => {
  it('end where a stop is longer than the short ones of the talk', () => {
    const phrases = phrasesIn('One crack. Nine feet. Two cracks. Ten feet.');
    const sentences = cutSentences(phrases);
    const stopping = (...stops: number[]) =>
      phrases.tokens.map((token, index) => {
        const at = sentences.findIndex(({ from }) => from === index);
        return { ...token, pauseBeforeSeconds: stops[at - 1] ?? 0 };
      });
    expect(breathsOf(sentences, stopping(0.1, 0.8, 0.1))).toEqual([0, 0, 1, 1]);
    expect(breathsOf(sentences, stopping(1, 1.1, 1))).toEqual([0, 0, 0, 0]);
  });
});

describe('what is taken back', () => {
  it('is what the sentence itself had raised, and not what was listed before', () => {
    const talk =
      'Light grease at twelve. Thought there was a hole at sixteen but it was a bug on the glass, forget it. Tee at twenty.';
    expect(placesIn(talk)).toEqual(['grease 12', 'tee 20']);
    expect(placesIn('Roots at nine. No coupling on that one, but never mind. Tee at twenty.')).toEqual([
      'roots 9',
      'tee 20',
    ]);
  });

  it('stays when it is kept in the same breath', () => {
    expect(placesIn('Heavy roots at nine. Strike that, hang on, no, leave it. Tee at twenty.')).toEqual([
      'roots 9',
      'tee 20',
    ]);
  });

  it('goes when it is all that is spoken of', () => {
    expect(placesIn("Roots at nine. That's a thread on the lens, scratch that. Tee at twenty.")).toEqual(['tee 20']);
  });
});
