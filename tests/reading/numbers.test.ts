/** Which number belongs to which thing: the speaker's habit, numbers put right, and where stretches end. */
import { describe, expect, test } from 'vitest';
import { draftSentence } from './read-sentence.ts';

/** Everything found, as "kind at" or "kind at-to"; the pipe at the start aside. */
const found = (text: string): string =>
  draftSentence(text)
    .observations.filter((item) => item.kind !== 'pipe')
    .map((item) => `${item.kind} ${item.at}${item.to === null ? '' : `-${item.to}`}`)
    .sort()
    .join(', ');

const isFlagged = (text: string): boolean =>
  draftSentence(text).observations.some((item) => item.kind !== 'pipe' && item.review.length > 0);

describe('a speaker says the number before the thing, or after it', () => {
  const log = 'crack 14, main-connection 30, scale 9, wye 4';
  test.each([
    'Four. Wye, left. Nine. Scale, light. Fourteen. Crack. Thirty. Main.',
    'Wye, left. Four. Scale, light. Nine. Crack. Fourteen. Main. Thirty.',
    'Station four. Wye, left. Station nine. Scale, light. Station fourteen. Crack. Station thirty. Main.',
    "So there's a wye coming in on the left. Four feet. There's some scale. Nine feet. And I see a crack. Fourteen. And this is the main. Thirty.",
    "Four feet. So there's a wye coming in on the left. Nine feet. There's some scale. Fourteen. And I see a crack. Thirty. And this is the main.",
    '4 feet wye on the left 9 feet scale light 14 feet crack on top 30 feet city main',
    'wye on the left 4 feet scale light 9 feet crack on top 14 feet city main 30 feet',
  ])('%s', (text) => {
    expect(found(text)).toBe(log);
  });

  test.each([
    [
      'Roots, heavy. Twelve to fifteen. Sag. Eighteen to twenty four. Hole. Twenty six.',
      'belly 18-24, hole 26, roots 12-15',
    ],
    [
      'Twelve to fifteen. Roots, heavy. Eighteen to twenty four. Sag. Twenty six. Hole.',
      'belly 18-24, hole 26, roots 12-15',
    ],
    ['Crack. Hole. Twelve. Roots. Fifteen. Offset. Twenty.', 'crack 12, hole 12, offset-joint 20, roots 15'],
    ['Twelve. Crack. Hole. Fifteen. Roots. Twenty. Offset.', 'crack 12, hole 12, offset-joint 20, roots 15'],
    ['Tee on the left. Shower. Fifteen. Crack. Nineteen. Offset. Twenty two.', 'crack 19, offset-joint 22, tee 15'],
  ])('%s', (text, log) => {
    expect(found(text)).toBe(log);
  });
});

describe('a number put right', () => {
  test.each([
    ['There is a crack at three. Four. It is four feet.', 'crack 4'],
    ["Offset at seventeen or, no, I'll say eighteen.", 'offset-joint 18'],
    ["That's a wye at twenty six, or twenty seven if we're fussy, twenty seven.", 'wye 27'],
    ["Wye at twenty. I said twenty, that's twenty two.", 'wye 22'],
    ["Roots at twelve. That's not twelve. That's fourteen.", 'roots 14'],
    ['Roots at twelve. Light. No wait, fourteen.', 'roots 14'],
    ['Belly from four to ten. Twelve, really.', 'belly 4-12'],
    ['Belly from ten to eighteen. It starts at eleven, actually.', 'belly 11-18'],
    ['Offset at thirty five. Strike that. Twenty five.', 'offset-joint 25'],
    ['crack at 19 no 20 and roots at 30', 'crack 20, roots 30'],
    ['Twenty one. Correct that to twenty one and a half. Roots. Thirty. Hole.', 'hole 30, roots 21.5'],
    ['Six feet. Tee on top. Make that seven. Eleven feet. Roots.', 'roots 11, tee 7'],
  ])('%s', (text, log) => {
    expect(found(text)).toBe(log);
  });

  test.each([
    ['Crack at nineteen. Twenty. Roots. Twenty five. Hole.', 'crack 19, hole 25, roots 20'],
    ['Crack at nineteen. Well, the house is older than me. Twenty four, wye.', 'crack 19, wye 24'],
    ["Crack at nineteen. I'm at twenty five now.", 'crack 19'],
    ["Crack at fourteen. That's two cracks now.", 'crack 14'],
    ['Crack at nineteen. Wait for the water. Twenty four. Wye.', 'crack 19, wye 24'],
  ])('%s is no correction', (text, log) => {
    expect(found(text)).toBe(log);
  });
});

describe('where a stretch ends', () => {
  test.each([
    ["There's a belly at forty. It doesn't come back up till forty seven.", 'belly 40-47'],
    ["From eleven on there's scale, and I don't see it let up until, oh, eighteen.", 'scale 11-18'],
    ['Into a sag at twenty two. Roots at twenty five. Out of the sag at thirty.', 'belly 22-30, roots 25'],
    ['Sag. Eighteen. Out. Twenty four. Hole. Twenty six.', 'belly 18-24, hole 26'],
    ['Scale at nine. Last of the scale at twelve.', 'scale 9-12'],
    ['Belly from thirty, hole at thirty five, belly ends at forty.', 'belly 30-40, hole 35'],
    ['Sag. Twelve to twenty. Another. Thirty to thirty six.', 'belly 12-20, belly 30-36'],
    ['Belly from thirty to, where are we, thirty eight.', 'belly 30-38'],
  ])('%s', (text, log) => {
    expect(found(text)).toBe(log);
  });

  test.each([
    ["Crack at fourteen. We'll push until forty.", 'crack 14'],
    ['Crack at fourteen. Fifteen feet. Clear. Twenty feet. Clear.', 'crack 14'],
    ['Belly at thirty. Wye at thirty four.', 'belly 30, wye 34'],
  ])('%s ends nothing', (text, log) => {
    expect(found(text)).toBe(log);
  });
});

test('where it shows too little which number is whose, both are offered', () => {
  expect(isFlagged('Four. Wye. Nine. The view is nice. Roots. Fourteen.')).toBe(true);
});
