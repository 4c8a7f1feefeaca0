/**
 * Finds the words of every kind, material and service in the talk. The words live in the vocabulary, one file a
 * kind; nothing here knows them. Longer matches win over shorter ones; a stretch listed as `notWords` hides what it holds.
 */
import type { Kind, Misheard } from '../../../shared/vocabulary/kind.ts';
import { type KindName, kinds } from '../../../shared/vocabulary/kinds/index.ts';
import { type Material, type MaterialName, materials } from '../../../shared/vocabulary/materials.ts';
import { type ServiceName, services } from '../../../shared/vocabulary/services.ts';
import { buildLexicon, type LexiconEntry, matchAt } from '../lexicon/pattern.ts';
import type { PhraseOf, Respelling } from '../phrase.ts';
import type { Token } from '../token/token.ts';

type Source = 'word' | 'sign' | 'weak';

type Named =
  | { readonly sort: 'kind'; readonly kind: KindName; readonly source: Source; readonly misheard?: Misheard }
  | { readonly sort: 'material'; readonly material: MaterialName; readonly misheard?: Misheard }
  | { readonly sort: 'service'; readonly service: ServiceName }
  | { readonly sort: 'not' };

/** A noun also matches in the plural. */
const withPlural = (pattern: string): string[] => {
  const last = pattern.split(' ').at(-1) ?? '';
  if (/[|?*]|s$/.test(last) || last.length < 3) return [pattern];
  return [
    pattern,
    /(?:ch|sh|x|z)$/.test(last)
      ? `${pattern}es`
      : last.endsWith('y') && !/[aeiou]y$/.test(last)
        ? `${pattern.slice(0, -1)}ies`
        : `${pattern}s`,
  ];
};

function kindEntries(kind: Kind): LexiconEntry<Named>[] {
  const name = kind.name as KindName;
  const entry = (pattern: string, source: Source): LexiconEntry<Named> => ({
    pattern,
    value: { sort: 'kind', kind: name, source },
  });
  return [
    ...kind.words.flatMap(withPlural).map((pattern) => entry(pattern, 'word')),
    ...(kind.signs ?? []).map((pattern) => entry(pattern, 'sign')),
    ...(kind.weakWords ?? []).flatMap(withPlural).map((pattern) => entry(pattern, 'weak')),
    ...(kind.misheard ?? []).map(
      (misheard): LexiconEntry<Named> => ({
        pattern: misheard.heard,
        value: { sort: 'kind', kind: name, source: 'word', misheard },
      }),
    ),
    ...(kind.notWords ?? []).map((pattern): LexiconEntry<Named> => ({ pattern, value: { sort: 'not' } })),
  ];
}

const knownMaterials: readonly (Material & { readonly name: MaterialName })[] = materials;

const lexicon = buildLexicon<Named>([
  ...kinds.flatMap((kind) => kindEntries(kind)),
  ...knownMaterials.flatMap((material) => [
    ...material.words.map(
      (pattern): LexiconEntry<Named> => ({ pattern, value: { sort: 'material', material: material.name } }),
    ),
    ...(material.misheard ?? []).map(
      (misheard): LexiconEntry<Named> => ({
        pattern: misheard.heard,
        value: { sort: 'material', material: material.name, misheard },
      }),
    ),
    ...(material.notWords ?? []).map((pattern): LexiconEntry<Named> => ({ pattern, value: { sort: 'not' } })),
  ]),
  ...services.flatMap((service) =>
    service.words.map(
      (pattern): LexiconEntry<Named> => ({ pattern, value: { sort: 'service', service: service.name } }),
    ),
  ),
]);

export type Thing = PhraseOf<'thing'> | PhraseOf<'material'> | PhraseOf<'service'>;

/** Asks whether a misheard word stands in the frame it needs to be believed. */
export type FrameTest = (need: Misheard['needs'], from: number, to: number) => boolean;

/** Every named thing, none overlapping: at each token the longest match, kinds before materials before services. */
export function findThings(tokens: readonly Token[], isInFrame: FrameTest): Thing[] {
  const found: Thing[] = [];
  for (let at = 0; at < tokens.length; ) {
    const best = matchAt(lexicon, tokens, at).find((match) => {
      const { value } = match;
      if (value.sort !== 'kind' && value.sort !== 'material') return true;
      return value.misheard === undefined || isInFrame(value.misheard.needs, match.from, match.to);
    });
    if (!best) {
      at += 1;
      continue;
    }
    const heard = tokens
      .slice(best.from, best.to)
      .map((token) => token.text)
      .join(' ');
    const respelling = (misheard: Misheard | undefined): { respelled?: Respelling } =>
      misheard ? { respelled: { heard, taken: misheard.said } } : {};
    const place = { from: best.from, to: best.to, rule: best.pattern };
    if (best.value.sort === 'kind')
      found.push({
        family: 'thing',
        kind: best.value.kind,
        source: best.value.source,
        ...respelling(best.value.misheard),
        ...place,
      });
    else if (best.value.sort === 'material')
      found.push({ family: 'material', material: best.value.material, ...respelling(best.value.misheard), ...place });
    else if (best.value.sort === 'service') found.push({ family: 'service', service: best.value.service, ...place });
    at = best.to;
  }
  return found;
}
