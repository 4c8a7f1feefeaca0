/** Whether talk of a material or a size says what the pipe is, or that it changes. */

import type { MaterialName } from '../../shared/vocabulary/materials.ts';
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import {
  beginsAfter,
  beginsBefore,
  changesAround,
  changesBetween,
  comparesBetween,
  leadsInto,
} from './change-words.ts';
import type { Reading, RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

const definite = /^(the|this|that|your|our|these|those|of|in|any|like|with|no|not|for|than|or|was|were)$/;
const notPipes =
  /^(cleanout|cap|plug|stack|vent|riser|fitting|guy|days|one|line was|ever|everywhere|was|came|always|never|lasts|lasted|tends|usually|doesn't|does|don't|house|houses|pipe ever|couplings|coupling|tee|wye|elbow|bend|sleeve|band|trap|tap|saddle|fitting|fittings|patch|repair|splice|insert|cover|lid|grate|shard|shards|piece|pieces|chunk|chunks|dust|shavings|soil|ground|dirt|rusts|scales|cracks|breaks|rots|corrodes|joint|joints|hub|hubs|bell|flange|valve|reducer|bushing|strap|screw|screws|nail|bolt|wire|ones|guys|people|only|itself)$/;

/** How near a cue must stand to bear on a material, in tokens. */
export const NEAR_TOKENS = 12;

export type MaterialPhrase = PhraseOf<'material'>;

const partOf =
  /\b(end|chunk|bit|shard|edge|lip|part|half|remains|stub|tail|corner|lump|sliver|fragment|kind|lot|lots) of (a|an|the|some|old|that|this|our|their|your|\d|inch| )*$/;

/** Whether a material is the pipe's and not that of a fitting or of pieces of it. */
export function namesPipe(reading: Reading, phrase: MaterialPhrase): boolean {
  const { tokens } = reading.phrases;
  if ((tokens[phrase.to - 1]?.breakAfter ?? 'stop') !== 'none') return true;
  const next = tokens[phrase.to]?.text ?? '';
  // "A plastic feed sack": an article and a noun make it what a thing is of.
  const before = tokens[phrase.from - 1];
  const opens = before === undefined || before.breakAfter !== 'none';
  const isOfThing =
    tokens[phrase.to - 1]?.text === 'plastic' &&
    (opens || /^(a|an|another|some|little|small|big|old)$/.test(before.text));
  return !notPipes.test(next) && (!isOfThing || afterPipeWord.test(next));
}

/** What may follow "a plastic" or a "plastic" said first where the pipe is meant. */
const afterPipeWord =
  /^(pipe|pipes|piping|line|lines|lateral|drain|drains|sewer|run|stub|section|sections|system|main|conduit|building|house|wye|tee|coupling|fitting|schedule|sdr|two|three|four|six|eight|\d.*|from|in|at|to|into|and|or|but|with|here|there|that|which|on|by|now|of|all|again|for|is|'s|then|after|until|till|pvc|abs|replacement|repair|job|riser|stack|bend|one|piece|length|spool|sleeve|liner|tile|tail|stretch|starts?|begins?|joins?|goes|going|runs?|continues|comes?|takes?|meets?|picks|through|throughout|past|beyond|ahead|onward|onwards|new|newer|has|was|ends|stops|looks|we|i|it|so|still|this|first|over|out|up|down|under|because|as|between|begun|started|replaced|transition|joint|joints)$/;

export function isStated(reading: Reading, phrase: MaterialPhrase): boolean {
  const { tokens } = reading.phrases;
  if (!namesPipe(reading, phrase)) return false;
  const before = tokens[phrase.from - 1];
  const two = tokens[phrase.from - 2];
  const isJoinedBefore = before !== undefined && before.breakAfter === 'none';
  if (!isJoinedBefore) return true;
  // "the tip of an iron bar", "a length of clay they put in": of something, not the pipe at hand.
  if (partOf.test(textOf(tokens, Math.max(0, phrase.from - 7), phrase.from))) return false;
  if (before.text === 'in' || before.text === 'of')
    return /^('re|'m|'s|are|am|is|be|was|here|now|back|start|starts|started|starting|begin|begins|beginning|off|length|piece|run|runs|stretch|section|made|out|built|laid|put|ran|still|all|only|feet)$/.test(
      two?.text ?? '',
    );
  if (before.text === 'with')
    return /^(start|starts|started|starting|begin|begins|began|beginning)$/.test(two?.text ?? '');
  // "It's the old clay" says what the pipe is; "the clay is cracked" speaks of it.
  if (before.text === 'the') return /^('s|is|be|becomes|became|into|in)$/.test(two?.text ?? '');
  return !definite.test(before.text);
}

export const distinct = (materials: readonly MaterialPhrase[]): MaterialPhrase[] =>
  materials.filter((phrase, index) => materials.findIndex((other) => other.material === phrase.material) === index);

/** "not clay", "no, that's not PVC": materials that are named to be ruled out. */
export function deniedMaterials(sentence: Sentence, materials: readonly MaterialPhrase[]): Set<MaterialPhrase> {
  const denying = phrasesOf(sentence.phrases, 'assertion').filter(
    (cue) => cue.cue.axis === 'denied' && cue.cue.reaches === 'forward',
  );
  return new Set(
    materials.filter((phrase) =>
      denying.some((cue) => cue.to <= phrase.from && phrase.from - cue.to <= 2 && !/^(no|zero)$/.test(cue.rule)),
    ),
  );
}

export const lastStated = (stated: readonly MaterialPhrase[]): MaterialPhrase | null => stated.at(-1) ?? null;

export interface Pair {
  readonly fromMaterial: MaterialName | null;
  readonly toMaterial: MaterialName;
  readonly phrases: readonly MaterialPhrase[];
}

export function changePair(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  materials: readonly MaterialPhrase[],
  all: readonly MaterialPhrase[],
  hasPlace: boolean,
): Pair | null {
  const { tokens } = reading.phrases;
  const hasChangeWord = sentence.phrases.some(
    (phrase) => phrase.family === 'thing' && phrase.kind === 'material-change',
  );
  if (materials.length >= 2) {
    const [first, second] = [materials[0]!, materials[1]!];
    const between = textOf(tokens, first.to, second.from);
    const after = textOf(tokens, second.to, Math.min(sentence.to, second.to + 6));
    const before = textOf(tokens, sentence.from, first.from);
    const known = run.material;
    const isSaidToChange =
      changesBetween.test(between) ||
      hasChangeWord ||
      changesAround.test(before) ||
      (/\band\b/.test(between) && changesAround.test(after));
    // "The copper's thin at six, and behind it there's iron": what the pipe was and what it is, with a place for the second.
    const fresh = first.material === known ? second : second.material === known ? first : null;
    const isToldApart = fresh !== null && hasPlace && isStated(reading, fresh);
    if (
      (isSaidToChange || isToldApart) &&
      !comparesBetween.test(between) &&
      materials.every((phrase) => namesPipe(reading, phrase))
    ) {
      // "plastic, and before that clay", "tied to the old clay with PVC": order of words is the order of the pipe.
      const isTold = reading.items.some(
        (item) =>
          item.run === run.n &&
          !item.isWithdrawn &&
          item.kind === 'material-change' &&
          item.fields.toMaterial === second.material &&
          sentence.index - item.sentence <= 4,
      );
      const isReversed = !isTold && known !== null && second.material === known && first.material !== known;
      const [from, to] = isReversed ? [second, first] : [first, second];
      return { fromMaterial: from.material, toMaterial: to.material, phrases: materials };
    }
    return null;
  }
  const only = materials[0];
  if (!only || run.material === null || run.material === only.material || !namesPipe(reading, only)) return null;
  const before = textOf(tokens, Math.max(sentence.from, only.from - 12), only.from);
  const after = textOf(tokens, only.to, Math.min(sentence.to, only.to + 5));
  const startsHere = beginsAfter.test(after) || beginsBefore.test(before);
  if (leadsInto(before) || hasChangeWord || (startsHere && all.length === 1))
    return { fromMaterial: run.material, toMaterial: only.material, phrases: [only] };
  return null;
}
