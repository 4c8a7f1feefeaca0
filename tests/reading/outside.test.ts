/** The reader held against things that were not made here: a number library, published lists, rules and names. */

// @ts-expect-error The library brings no types.
import numberToWords from 'number-to-words';
import { describe, expect, it } from 'vitest';
import { phrasesOf } from '../../src/3-phrases/phrase.ts';
import { familyValues } from './family-values.ts';
import { compareReadings } from './judge-example.ts';
import { draftSentence, phrasesIn } from './read-sentence.ts';

const inWords = (value: number): string => (numberToWords as { toWords(value: number): string }).toWords(value);
const numbersIn = (text: string): number[] => phrasesIn(text).numbers.map((number) => number.value);
const feetIn = (text: string): number[] =>
  phrasesOf(phrasesIn(text).phrases, 'distance').map((phrase) => phrase.distance.feet);
const range = (from: number, to: number): number[] => Array.from({ length: to - from + 1 }, (_, index) => from + index);

/** All cases of a kind in one test: which of them are read otherwise than wanted. */
function misread(
  cases: readonly (readonly [text: string, value: number])[],
  read: (text: string) => number[],
): string[] {
  return cases
    .map(([text, value]) => [text, value, read(text)] as const)
    .filter(([, value, found]) => found.length !== 1 || found[0] !== value)
    .map(([text, value, found]) => `${text}: ${JSON.stringify(found)}, not ${value}`);
}

/** Texts that are read wrongly as yet; each is expected to fail. */
const notYet = new Set([
  'Roots at twenty feet was ruled out.',
  'Roots at twenty feet, no increase since last time.',
  'From thirty feet on it is vitrified clay pipe, six inch.',
]);
const check = (title: string, text: string, holds: () => void): void => {
  if (notYet.has(text)) it.fails(`not yet: ${title}`, holds);
  else it(title, holds);
};

/** Words from number-to-words 1.2.4 (MIT), an independent library; it writes "one hundred five" and "twenty-one". */
describe('the number grammar against number-to-words, 0 to 300 ft', () => {
  const whole = range(0, 300);

  it.each([
    ['as the library writes them', (words: string) => words],
    ['without hyphens', (words: string) => words.replaceAll('-', ' ')],
    ['with "and" after the hundred', (words: string) => words.replace('hundred ', 'hundred and ')],
    ['with "a hundred"', (words: string) => words.replace('one hundred', 'a hundred')],
    ['with a bare hundred', (words: string) => words.replace('one hundred', 'hundred')],
  ])('reads whole numbers %s', (_, write) => {
    expect(
      misread(
        whole.map((value) => [`${write(inWords(value))} feet`, value]),
        numbersIn,
      ),
    ).toEqual([]);
    expect(
      misread(
        whole.slice(1).map((value) => [`roots at ${write(inWords(value))} feet`, value]),
        feetIn,
      ),
    ).toEqual([]);
  });

  it('reads tenths said with "point"', () => {
    const cases = whole.flatMap((value) =>
      range(0, 9).map((tenth): [string, number] => [
        `crack at ${inWords(value)} point ${inWords(tenth)} feet`,
        Number(`${value}.${tenth}`),
      ]),
    );
    expect(misread(cases, numbersIn)).toEqual([]);
  });

  it.each([
    ['a half', 0.5],
    ['one half', 0.5],
    ['a quarter', 0.25],
    ['one quarter', 0.25],
    ['three quarters', 0.75],
  ])('reads "and %s"', (words, part) => {
    const cases = whole
      .slice(1)
      .map((value): [string, number] => [`at ${inWords(value)} and ${words} feet`, value + part]);
    expect(misread(cases, numbersIn)).toEqual([]);
    expect(misread(cases, feetIn)).toEqual([]);
  });

  it('reads figures spoken one by one: "one oh five", "two twelve", "one forty two"', () => {
    const cases = range(101, 299)
      .filter((value) => value % 100 !== 0)
      .map((value): [string, number] => {
        const rest = value % 100;
        const words = rest < 10 ? `oh ${inWords(rest)}` : inWords(rest);
        return [`offset at ${inWords(Math.floor(value / 100))} ${words} feet`, value];
      });
    expect(misread(cases, feetIn)).toEqual([]);
  });

  it('reads printed figures: "105", "105.5", "105½", "105 and a half"', () => {
    expect(
      misread(
        whole.slice(1).map((value) => [`at ${value} feet`, value]),
        feetIn,
      ),
    ).toEqual([]);
    const tenths = whole.flatMap((value) => range(0, 9).map((tenth) => Number(`${value}.${tenth}`)));
    expect(
      misread(
        tenths.map((value) => [`roots at ${value.toFixed(1)} feet`, value]),
        numbersIn,
      ),
    ).toEqual([]);
    expect(
      misread(
        whole.slice(1).map((value) => [`at ${value}½ feet`, value + 0.5]),
        feetIn,
      ),
    ).toEqual([]);
    expect(
      misread(
        whole.slice(1).map((value) => [`at ${value} and a half feet`, value + 0.5]),
        feetIn,
      ),
    ).toEqual([]);
  });
});

/** Our own number study, its kinds of phrase written anew: of 52, three published libraries read 36, 36 and 28. */
const numberStudy: readonly (readonly [text: string, values: readonly number[]])[] = [
  ['eleven and a half feet', [11.5]],
  ['11 and a half feet', [11.5]],
  ['11. And a half.', [11.5]],
  ['forty-two and a quarter', [42.25]],
  ['forty two and three quarters feet', [42.75]],
  ['a hundred and five feet', [105]],
  ['hundred and five feet', [105]],
  ['one oh five', [105]],
  ['one twenty feet', [120]],
  ['two twelve', [212]],
  ['fifty two five', [52.5]],
  ['52 five', [52.5]],
  ['52.5 feet', [52.5]],
  ["We're at 52. 5 feet here.", [52.5]],
  ['fifty two point five', [52.5]],
  ['a couple feet', [2]],
  ['a couple of feet', [2]],
  ['half inch offset', [0.5]],
  ['three quarter inch', [0.75]],
  ['built in nineteen sixty two', [1962]],
  ['31-38 feet', [31, 38]],
  ['31 to 38', [31, 38]],
  ['between 31 and 38', [31, 38]],
  ['eighteen to nineteen feet', [18, 19]],
  ['four inch', [4]],
  ['a four-inch line', [4]],
  ['25 percent', [25]],
  ["three o'clock", [3]],
  ['SDR 35', [35]],
  ['schedule forty', [40]],
  ['forty five degree', [45]],
  ['about thirty feet', [30]],
  ['call it sixty', [60]],
  ['sixty eight and change', [68]],
  ['a hundred and twenty one and a half feet', [121.5]],
  ['seventeen feet, eighteen feet', [17, 18]],
  ['zero', [0]],
  ['thirty', [30]],
];
/** What the number is for, from the same study: the family that must claim it, and its value. */
const roleStudy: readonly (readonly [text: string, family: string, value: unknown])[] = [
  ['a foot and a half past the wye', 'distance', { further: 1.5, shape: 'offset' }],
  ['an inch and a half', 'size', { inches: 1.5 }],
  ['half inch offset', 'size', { inches: 0.5 }],
  ['roots at ten foot six', 'distance', { feet: 10.5 }],
  ['roots at 5\'6"', 'distance', { feet: 5.5 }],
  ['two forty fives back to back', 'angle', { degrees: 45, count: 2 }],
  ['one of those at thirty feet', 'distance', { feet: 30 }],
  ["that one's at forty", 'distance', { feet: 40 }],
  ['31-38 feet', 'distance', { feet: 31, toFeet: 38 }],
  ['between 31 and 38', 'distance', { feet: 31, toFeet: 38 }],
  ['four inch clay', 'size', { diameterIn: 4 }],
  ['25 percent full', 'share', 25],
  ["at three o'clock", 'clock', { hour: 3, toHour: null }],
  ['built in nineteen sixty two', 'count', 'year'],
];

describe('the number study', () => {
  it.each(numberStudy)('%s', (text, values) => {
    expect(numbersIn(text)).toEqual(values);
  });
  for (const [text, family, value] of roleStudy)
    check(`${text} is a matter of ${family}`, text, () => expect(familyValues[family]!(text)).toEqual([value]));
});

/**
 * Clock spans run clockwise, so "three to nine" is the lower half and "nine to three" the upper:
 * BFR Abwasser (Germany, federal guidelines), Tab. A-3-3, which gives points to 03-09.
 */
describe('clock spans', () => {
  const hoursOf = (text: string): number[] => {
    const [span] = phrasesOf(phrasesIn(text).phrases, 'clock');
    if (!span || span.toHour === null) return [];
    const length = (span.toHour - span.hour + 12) % 12;
    return range(0, length).map((step) => ((span.hour - 1 + step) % 12) + 1);
  };
  it('from three to nine is the lower half', () => {
    expect(hoursOf("cracked from three to nine o'clock")).toEqual([3, 4, 5, 6, 7, 8, 9]);
  });
  it('from nine to three is the upper half', () => {
    expect(hoursOf("cracked from nine to three o'clock")).toEqual([9, 10, 11, 12, 1, 2, 3]);
  });
  it('keeps its way round in the draft', () => {
    const [crack] = draftSentence("Crack at 20 feet from nine o'clock to three o'clock.").observations.slice(1);
    expect(crack).toMatchObject({ kind: 'crack', at: 20, clock: 9, clockTo: 3 });
  });
});

/** "Verbalize the side sewer with a station such as 1+64": Silver Lake Water and Sewer District Code 6.20.410. */
describe('stations', () => {
  for (const text of ['side sewer at station 1+64', 'wye at 1+64', 'wye at station one plus sixty four'])
    check(`${text} is 164 ft`, text, () => expect(feetIn(text)).toEqual([164]));
});

/** "Footage to nearest 0.10 ft": City of Decatur, Illinois, sewer televising specification (document 766610, p. 4). */
describe('counter readings', () => {
  it('keeps every tenth of a foot', () => {
    const tenths = range(10, 1500).map((value) => value / 10);
    const wrong = tenths.filter((feet) => feetIn(`crack at ${feet.toFixed(1)}`)[0] !== feet);
    expect(wrong).toEqual([]);
    for (const feet of [0.5, 23.4, 57.9, 101.1]) {
      expect(draftSentence(`Crack at ${feet.toFixed(1)} feet.`).observations[1]).toMatchObject({
        kind: 'crack',
        at: feet,
      });
    }
  });
});

/**
 * Triggers of NegEx (Chapman and others, Journal of Biomedical Informatics 34:301, 2001; the list of the authors' program
 * of 2014, its clinical entries left out) in sentences of our own. The entry stands first.
 */
const statusOf = (text: string, kind: string): string => {
  const draft = draftSentence(text);
  return draft.observations.find((item) => item.kind === kind)?.status ?? 'none';
};
const beforeTriggers: readonly (readonly [trigger: string, text: string])[] = [
  ['absence of', 'Absence of roots at the joint at twenty feet.'],
  ['cannot see', 'I cannot see any roots at twenty feet.'],
  ['free of', 'The joint at twenty feet is free of roots.'],
  ['negative for', 'Twenty feet, negative for roots.'],
  ['never had', 'This one never had roots.'],
  ['no', 'No roots at twenty feet.'],
  ['no evidence', 'No evidence of roots at twenty feet.'],
  ['no sign of', 'No sign of roots at twenty feet.'],
  ['no signs of', 'I see no signs of roots at twenty feet.'],
  ['no new', 'No new roots at twenty feet.'],
  ['no significant', 'No significant roots at twenty feet.'],
  ['no suggestion of', 'No suggestion of roots at twenty feet.'],
  ['not appreciate', 'I do not appreciate any roots at twenty feet.'],
  ['not demonstrate', 'The joint at twenty feet does not demonstrate roots.'],
  ['not exhibit', 'This section does not exhibit roots.'],
  ['not have', 'The joint at twenty feet does not have roots.'],
  ['not reveal', 'The picture at twenty feet does not reveal roots.'],
  ['not see', 'I do not see roots at twenty feet.'],
  ['with no', 'Twenty feet, clean joint with no roots.'],
  ['without', 'Twenty feet, a joint without roots.'],
  ['without any evidence of', 'Twenty feet, without any evidence of roots.'],
  ['without sign of', 'Twenty feet, without sign of roots.'],
  ['ruled out', 'I have ruled out roots at twenty feet.'],
  ['can rule out', 'I can rule out roots at twenty feet.'],
];
const afterTriggers: readonly (readonly [trigger: string, text: string])[] = [
  ['was ruled out', 'Roots at twenty feet was ruled out.'],
  ['have been ruled out', 'Roots have been ruled out.'],
  ['free', 'This whole section is root free.'],
];
/** They look like a denial and are none: the thing is there, or in doubt. */
const pseudoTriggers: readonly (readonly [trigger: string, text: string])[] = [
  ['no increase', 'Roots at twenty feet, no increase since last time.'],
  ['no change', 'No change in the roots at twenty feet.'],
  ['not extend', 'Roots at twenty feet but they do not extend past the joint.'],
  ['not cause', 'Roots at twenty feet, they do not cause a backup yet.'],
  ['not drain', 'There is a belly at twenty feet, it does not drain.'],
  ['not certain if', 'Not certain if those are roots at twenty feet.'],
  ['not certain whether', 'Not certain whether that is a crack at twenty feet.'],
  ['not necessarily', 'Roots at twenty feet, not necessarily from that tree.'],
  ['not only', 'Not only scale but roots at twenty feet.'],
  ['without difficulty', 'I push past the roots at twenty feet without difficulty.'],
];
/** Where the reach of a denial ends. */
const endTriggers = [
  'but',
  'however',
  'nevertheless',
  'yet',
  'though',
  'although',
  'still',
  'except',
  'aside from that',
  'apart from that',
];

describe('published triggers of denial', () => {
  for (const [trigger, text] of [...beforeTriggers, ...afterTriggers])
    check(`${trigger}: ${text}`, text, () => expect(statusOf(text, 'roots')).toBe('none'));
  for (const [trigger, text] of pseudoTriggers) {
    const kind = /belly/.test(text) ? 'belly' : /crack/.test(text) ? 'crack' : 'roots';
    check(`${trigger}, no denial: ${text}`, text, () => expect(statusOf(text, kind)).not.toBe('none'));
  }
  it.each(endTriggers)('a denial ends at "%s"', (word) => {
    const text = `No cracks in here ${word} there are roots at twenty feet.`;
    expect(statusOf(text, 'roots')).toBe('present');
    expect(statusOf(text, 'crack')).toBe('none');
  });
});

/**
 * Known failures of the design on talk, from our own study of 48 joins: where no full stop is printed, "no breaks" bled into
 * the next finding in 42 of 48 at the reach of a sentence, in 7 at eight words, in none at five.
 */
describe('a denial without a full stop', () => {
  const joins = ['and', 'so', 'okay', 'now', 'alright', 'and then', 'here we go', 'um'];
  const starts = [
    "here we've got an offset at forty two feet",
    "there's an offset at forty two feet",
    'at forty two feet an offset',
    'forty two feet offset joint',
    'I see an offset at forty two feet',
    'we come to an offset at forty two',
  ];
  const texts = joins.flatMap((join) => starts.map((start) => `there's no breaks in this section ${join} ${start}`));
  it.each(texts)('%s', (text) => {
    expect(statusOf(text, 'offset-joint')).toBe('present');
    expect(statusOf(text, 'break')).toBe('none');
  });
});

/**
 * Materials by the names of their ASTM standards. Numbers and short forms as in the published scopes; the full titles of
 * C14, D1861, D2661 and C700 are from memory.
 */
describe('materials by the names of their standards', () => {
  const names: readonly (readonly [standard: string, words: string, material: string])[] = [
    ['A74 and A888', 'cast iron soil pipe', 'cast-iron'],
    ['A888', 'hubless cast iron', 'cast-iron'],
    ['D2665', 'polyvinyl chloride', 'pvc'],
    ['D2665', 'PVC schedule 40', 'pvc'],
    ['D3034', 'SDR 35', 'pvc'],
    ['D2661', 'acrylonitrile butadiene styrene', 'abs'],
    ['D2661', 'ABS', 'abs'],
    ['C700', 'vitrified clay pipe', 'clay'],
    ['C700', 'VCP', 'clay'],
    ['C700', 'terra cotta', 'clay'],
    ['C14', 'concrete sewer pipe', 'concrete'],
    ['C428', 'asbestos-cement sewer pipe', 'asbestos-cement'],
    ['C428', 'transite', 'asbestos-cement'],
    ['C428', 'AC pipe', 'asbestos-cement'],
    ['D1861', 'bituminized fiber pipe', 'bituminous-fiber'],
    ['D1861', 'pitch fibre', 'bituminous-fiber'],
    ['D1861', 'Orangeburg', 'bituminous-fiber'],
    ['D1861', 'Bermico', 'bituminous-fiber'],
    ['A746', 'ductile iron', 'ductile-iron'],
    ['F1216', 'cured in place pipe', 'liner'],
    ['F1216', 'CIPP', 'liner'],
  ];
  for (const [standard, words, material] of names) {
    const text = `the pipe is ${words}`;
    check(`ASTM ${standard}: ${words}`, text, () => expect(familyValues.material!(text)).toEqual([material]));
  }

  const pipe = 'From thirty feet on it is vitrified clay pipe, six inch.';
  check(pipe, pipe, () => {
    const { given, wanted } = compareReadings(draftSentence(pipe), 'pipe', { at: 30, material: 'clay', diameterIn: 6 });
    expect(given).toEqual(wanted);
  });
});
