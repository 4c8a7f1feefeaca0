/** Whether talk of a material or a size says what the pipe is, or that it changes. */

import type { MaterialName } from '../../shared/vocabulary/materials.ts';
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import type { Reading, RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

const changeVerb =
  /\b(goes|go|going|went|turns|turn|turned|becomes|become|changes|change|changed|changing|switches|switch|switched|transitions|transition|transitioned|transitioning|converts|converted|gives way|gave way|over|meets|tied|ties|tie|quits|quit|stops|stop|ends|end|left off|starts|start|finish|leaves|hands off|swaps|swapped|spliced|drops into|picks up|begins|begin|turning|adapts|adapted|jumps|moves|runs out|takes over|comes off|trades|shifts|flips|cut over|hits|connects|joins|connected|joined|leave|leaving|butts|into|to)\b/;
const firmChange =
  /\b(goes|go|going|went|turns|turned|turning|becomes|become|changes|change|changed|changing|switches|switched|transitions|transition|transitioned|transitioning|converts|gives way|gave way|takes over|quits|quit|swaps|swapped|adapts|hands off|flips|trades|picks up|meets|tied|ties|over to|cut over|runs out|stops|ends|begins|starts|start|where)\b/;
export const fromHere =
  /\b(from here|from there|from that point|from this point|from then on|here on|there on|after that|from now on|now we 're|now it 's|and now|again|we 're in|i 'm in|we are in|in here|back in|back to|back into|after it|the rest|rest of the way|on out|past that|onward|beyond)\b/;
const definite = /^(the|this|that|your|our|these|those|of|in|any|like|with|no|not|for|than|or|was|were)$/;
const notPipes =
  /^(cleanout|cap|plug|stack|vent|riser|fitting|guy|days|one|line was|ever|everywhere|was|came|always|never|lasts|lasted|tends|usually|doesn't|does|don't|house|houses|pipe ever|couplings|coupling|tee|wye|elbow|bend|sleeve|band|trap|tap|patch|repair|splice|insert|cover|lid|shards|pieces|chunks|dust|shavings|soil|ground|dirt|rusts|scales|cracks|breaks|rots|joint|joints|flange)$/;

/** How near a cue must stand to bear on a material, in tokens. */
export const NEAR_TOKENS = 12;

export type MaterialPhrase = PhraseOf<'material'>;

export function isStated(reading: Reading, phrase: MaterialPhrase): boolean {
  const { tokens } = reading.phrases;
  const before = tokens[phrase.from - 1];
  const two = tokens[phrase.from - 2];
  const isJoinedBefore = before !== undefined && before.breakAfter === 'none';
  const after = (tokens[phrase.to - 1]?.breakAfter ?? 'stop') === 'none' ? (tokens[phrase.to]?.text ?? '') : '';
  if (notPipes.test(after)) return false;
  if (!isJoinedBefore) return true;
  if (before.text === 'in' || before.text === 'of')
    return /^('re|'m|are|am|is|here|now|back|start|off|length|piece|run)$/.test(two?.text ?? '');
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
      denying.some((cue) => cue.to <= phrase.from && phrase.from - cue.to <= 2 && cue.rule !== 'no'),
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
    const isChange =
      changeVerb.test(between) ||
      hasChangeWord ||
      firmChange.test(before) ||
      (/\band\b/.test(between) && firmChange.test(after));
    if (isChange && !/\b(not|isn't|instead of|rather than|or)\b/.test(between)) {
      // "plastic, and before that clay", "tied to the old clay with PVC": order of words is the order of the pipe.
      const known = run.material;
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
  if (!only || run.material === null || run.material === only.material) return null;
  const before = textOf(tokens, Math.max(sentence.from, only.from - 12), only.from);
  const after = textOf(tokens, only.to, Math.min(sentence.to, only.to + 5));
  const goesTo =
    /\b(goes|go|going|went|turns|turned|turning|changes|changed|changing|switches|switched|transitions|transition|converts|becomes|become|over|gives way|adapts|swaps|cut over|flips|ties|tied|tie|turn|change|switch|shifts|moves|jumps)[\w' ]{0,32}$/.test(
      before,
    ) && !/\bgoing (up|down|out)$/.test(before);
  const startsHere =
    /^(starts|begins|picks up|takes over|start|begin|now starts)\b/.test(after) ||
    /\b(start|starts|begins)$/.test(before);
  if (goesTo || hasChangeWord || (startsHere && all.length === 1))
    return { fromMaterial: run.material, toMaterial: only.material, phrases: [only] };
  return null;
}
