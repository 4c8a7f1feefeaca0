/** What the number keys offer, from the words of an inspection of our own. */
import { describe, expect, test } from 'vitest';
import type { Draft } from '../../shared/schemas/draft.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { hintTalk } from '../../src/4-observations/hint-talk.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { type Choice, choicesOf } from '../../src/5-review/offer-choices.ts';
import { itemsByKey } from '../../src/5-review/queue.ts';
import { subjectKey } from '../../src/5-review/subject.ts';
import { flags, makeDraft, makeObservation, wordsOf } from './make-inspection.ts';

const spoken = (...sentences: string[]) =>
  sentences.map((text, index) => ({ start: index * 4, end: index * 4 + 3, text }));

function wordsFrom(sentences: readonly { start: number; end: number; text: string }[]): Words {
  const setAside = sentences.map((heard) => ({ heard, why: 'chat' }));
  return wordsOf(makeDraft({ observations: [], absent: [], unplaced: [], setAside, runs: [], site: {} }));
}

const short = (choice: Choice): string =>
  choice.what === 'finding'
    ? `+${choice.finding.kind ?? '?'}@${choice.finding.at}`
    : `${choice.flag ? '!' : ''}${choice.field}=${choice.value}${choice.to === undefined ? '' : `-${choice.to}`}`;

/** The choices at the first observation; without one, what was left out. */
function choicesAt(given: Partial<Draft>, sentences: readonly { start: number; end: number; text: string }[]) {
  const draft = makeDraft({ observations: [], absent: [], unplaced: [], setAside: [], site: {}, ...given });
  const reviewed = applyDecisions(draft, []);
  const [o] = reviewed.observations;
  const item = o ? itemsByKey(reviewed).get(subjectKey(o.subject))! : null;
  return choicesOf(item, reviewed, hintTalk(wordsFrom(sentences)));
}

describe('a sentence by itself', () => {
  test.each([
    ['There are roots at 23 feet.', 'roots', 23, {}],
    ['Standing water from 10 to 14.', 'belly', 10, { to: 14 }],
    ['Something is hanging at 31, on the left.', null, 31, { position: 'left' }],
    ['SDR35 here at 4.5, an offset joint, half an inch.', 'offset-joint', 4.5, { inches: 0.5 }],
    ['Possibly a crack at 12, top.', 'crack', 12, { position: 'top' }],
    ['Cast iron turns to clay at 16.', 'material-change', 16, { fromMaterial: 'cast-iron', toMaterial: 'clay' }],
  ])('%s', (text, kind, at, values) => {
    expect(hintTalk(wordsFrom(spoken(text)))[0]!.findings[0]).toMatchObject({ kind, at, values });
  });
  test('two things in it have each their own part of the words', () => {
    const [hint] = hintTalk(wordsFrom(spoken('At 12 a wye on the left and at 15 a bend.')));
    expect(hint!.findings.map(({ kind, at, heard }) => [kind, at, heard.text])).toEqual([
      ['wye', 12, 'At 12 a wye on the left and'],
      ['bend', 15, 'at 15 a bend.'],
    ]);
  });
  test('a denial and a question are not meant', () => {
    const hints = hintTalk(wordsFrom(spoken('No roots at 12.', 'Is that a crack at 14?')));
    expect(hints.flatMap(({ findings }) => findings.map(({ isMeant }) => isMeant))).toEqual([false, false]);
  });
});

describe('the number keys', () => {
  test('the offers of a flag keep their numbers, then come the other values of the doubted field', () => {
    const [heard, after] = spoken('A wye at 41, no, on the left.', '44, I think.') as [never, never];
    const o = makeObservation({ kind: 'wye', at: 41, heard, review: [flags.distance] });
    expect(
      choicesAt({ observations: [o] }, [heard, after])
        .slice(0, 4)
        .map(short),
    ).toEqual(['!at=41', '!at=42', '!at=44', 'position=left']);
  });
  test('a sentence that names something else offers nothing of its own', () => {
    const sentences = spoken('Roots here.', 'A bend at 30, on the right.', '33.');
    const o = makeObservation({ kind: 'roots', at: null, heard: sentences[0]!, review: [flags.missing] });
    expect(choicesAt({ observations: [o] }, sentences).map(short)).not.toContain('!at=30');
    expect(choicesAt({ observations: [o] }, sentences).map(short)).not.toContain('!at=33');
  });
  test('what else the words name can be added', () => {
    const sentences = spoken('Roots at 23 and a crack at 25 on top.');
    const o = makeObservation({ kind: 'roots', at: 23, heard: sentences[0]! });
    expect(choicesAt({ observations: [o] }, sentences).map(short)).toContain('+crack@25');
  });
  test('a number that sounds like it, and a stretch, are offered whole', () => {
    const sentences = spoken('Water at 15.', 'From 50 to 56.');
    const o = makeObservation({ kind: 'belly', at: 15, heard: sentences[0]!, review: [flags.missing] });
    expect(
      choicesAt({ observations: [o] }, sentences)
        .map(short)
        .slice(0, 2),
    ).toEqual(['!at=50-56', '!at=50']);
  });
  test('without an item: what was named and is no finding, denials left out', () => {
    const sentences = spoken('A cleanout at 12.', 'Yeah, nothing here.', 'No cracks.', 'Roots at 30, light.');
    expect(choicesAt({}, sentences).map(short)).toEqual(['+cleanout@12', '+roots@30']);
  });
  test('nine at most', () => {
    const many = Array.from({ length: 14 }, (_, n) => `Roots at ${20 + n}.`);
    expect(choicesAt({}, spoken(...many))).toHaveLength(9);
  });
});
