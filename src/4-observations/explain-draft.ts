/** Says why: for each observation the words, the rules, the certainty, the doubts, and what was considered and left. */

import type { Words } from '../../shared/schemas/word.ts';
import { textOf } from '../3-phrases/token/token.ts';
import { comparedFieldsOf } from './claim.ts';
import {
  type CloseOpinion,
  chanceOfField,
  closeOpinionOf,
  type JudgedField,
  likelyPlaces,
} from './close/close-opinion.ts';
import type { Likely } from './close/heads.ts';
import { readWordsClosely } from './draft-words.ts';
import { nameOfObservation } from './name-observation.ts';
import type { Item, Reading } from './reading.ts';

export interface ExplanationNode {
  readonly title: string;
  readonly seconds: number | null;
  /** Why the inspector should look, a sentence each. */
  readonly flags: readonly string[];
  readonly children: readonly ExplanationNode[];
}

export type Explanation = readonly ExplanationNode[];

/** The rule tree of a talk, in the order things were first said. */
export async function explainDraft(words: Words): Promise<Explanation> {
  const reading = await readWordsClosely(words);
  const kept = reading.items.filter((item) => !item.isWithdrawn).map((item) => explainItem(reading, item));
  const dropped = [
    ...reading.items
      .filter((item) => item.isWithdrawn)
      .map((item) =>
        leaf(
          reading,
          item.from,
          `${nameOfObservation(item, reading.phrases.unit)}: ${item.evidence.notes.at(-1) ?? 'taken back'}`,
        ),
      ),
    ...reading.considered.map((entry) => leaf(reading, entry.token, `${entry.rule}: ${entry.because}`)),
  ].sort((a, b) => (a.seconds ?? 0) - (b.seconds ?? 0));
  return dropped.length === 0
    ? kept
    : [...kept, { title: 'Considered and not taken', seconds: null, flags: [], children: dropped }];
}

const leaf = (reading: Reading, token: number, title: string): ExplanationNode => ({
  title,
  seconds: reading.phrases.tokens[token]?.startSeconds ?? null,
  flags: [],
  children: [],
});

function explainItem(reading: Reading, item: Item): ExplanationNode {
  const { tokens, phrases } = reading.phrases;
  const sentence = reading.sentences[item.sentence];
  const used = sentence ? phrases.filter((phrase) => phrase.from >= sentence.from && phrase.from < sentence.to) : [];
  const children: ExplanationNode[] = [
    leaf(reading, item.from, `${item.kind}: ${item.evidence.source} "${item.evidence.rule}"`),
    leaf(
      reading,
      item.from,
      item.at === null
        ? `no place: ${item.evidence.placeRule}`
        : `place ${item.at} ${reading.phrases.unit} (${item.basis ?? 'unknown'}): ${item.evidence.placeRule}`,
    ),
    ...explainClosely(reading, item),
    ...item.evidence.notes.map((note) => leaf(reading, item.from, note)),
    ...item.respelled.map((entry) => leaf(reading, item.from, `heard "${entry.heard}", taken as ${entry.taken}`)),
    ...item.corrected.map((entry) =>
      leaf(reading, entry.from, `${entry.field} was ${entry.was ?? 'nothing'} before it was corrected`),
    ),
    {
      title: `said: "${sentence?.text ?? ''}"`,
      seconds: tokens[sentence?.from ?? item.from]?.startSeconds ?? null,
      flags: [],
      children: used.map((phrase) =>
        leaf(reading, phrase.from, `${phrase.family} "${textOf(tokens, phrase.from, phrase.to)}" by ${phrase.rule}`),
      ),
    },
    ...item.again.map((span) => leaf(reading, span.from, `spoken of again: "${textOf(tokens, span.from, span.to)}"`)),
  ];
  const hearing = item.certainty.hearing === null ? 'not known' : item.certainty.hearing.toFixed(2);
  return {
    title: `${nameOfObservation(item, reading.phrases.unit)} (run ${item.run}, reading ${item.certainty.reading.toFixed(2)}, hearing ${hearing})`,
    seconds: tokens[item.from]?.startSeconds ?? null,
    flags: item.flags.map((flag) => `${flag.reason}: ${flag.detail ?? flag.about ?? ''}`),
    children,
  };
}

/** What the close reader holds of the item, and what it would read instead where it holds that likelier. */
function explainClosely(reading: Reading, item: Item): ExplanationNode[] {
  const opinion = closeOpinionOf(reading, item);
  if (!opinion) return [];
  const fields = ['at' as const, ...comparedFieldsOf(item.kind)].map((field) => {
    const best = likeliest(opinion, field);
    const chance = chanceOfField(opinion, item, field);
    const instead = best && best.chance > chance ? ` (rather ${best.value ?? 'none'}, ${best.chance.toFixed(2)})` : '';
    return leaf(reading, item.from, `${field} ${chance.toFixed(2)}${instead}`);
  });
  const title = `second reading: ${item.kind} ${opinion.own.toFixed(2)}, another kind ${opinion.other.toFixed(2)}`;
  return [{ ...leaf(reading, item.from, title), children: fields }];
}

/** What it holds likeliest of a field; a place may be counted from other numbers. */
function likeliest({ fields }: CloseOpinion, field: JudgedField): Likely | undefined {
  const said = fields.get(field) ?? [];
  if (field !== 'at') return said[0];
  const [place] = likelyPlaces(fields);
  const none = said.find(({ value }) => value === null);
  if (!place || (none && none.chance >= place.chance)) return none;
  const isCounted = place.countedChance > place.chance / 2;
  return { value: isCounted ? `${place.feet} counted from other numbers` : place.feet, chance: place.chance };
}
