/**
 * Finds the words of every kind, material and service in the talk. The words live in the vocabulary, one file a
 * kind; nothing here knows them. Longer matches win over shorter ones; a stretch listed as `notWords` hides what it holds.
 */
import type { Kind, Misheard } from '../../../shared/vocabulary/kind.ts';
import { type KindName, kinds } from '../../../shared/vocabulary/kinds/index.ts';
import { type Material, type MaterialName, materials } from '../../../shared/vocabulary/materials.ts';
import { type ServiceName, services } from '../../../shared/vocabulary/services.ts';
import { buildLexicon, type LexiconEntry, type LexiconMatch, matchAll, matchAt } from '../lexicon/pattern.ts';
import type { PhraseOf, Respelling } from '../phrase.ts';
import { type Token, textOf } from '../token/token.ts';

type Source = 'word' | 'sign' | 'weak';

type Named =
  | { readonly sort: 'kind'; readonly kind: KindName; readonly source: Source; readonly misheard?: Misheard }
  | { readonly sort: 'material'; readonly material: MaterialName; readonly misheard?: Misheard }
  | { readonly sort: 'service'; readonly service: ServiceName }
  /** Hides the words of one kind or material, not those of others. */
  | { readonly sort: 'not'; readonly of: string };

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

/** `<service>` in a pattern stands for any of the services, by any of their names. */
const serviceChoices = services
  .flatMap((service) => service.words)
  .map((words) => words.replaceAll(' ', '_'))
  .join('|');
const fillIn = (pattern: string): string => pattern.replaceAll('<service>', serviceChoices);

function kindEntries(kind: Kind): LexiconEntry<Named>[] {
  const name = kind.name as KindName;
  const entry = (pattern: string, source: Source): LexiconEntry<Named> => ({
    pattern,
    value: { sort: 'kind', kind: name, source },
  });
  return [
    ...kind.words.flatMap(withPlural).map((pattern) => entry(pattern, 'word')),
    ...(kind.signs ?? []).map((pattern) => entry(fillIn(pattern), 'sign')),
    ...(kind.weakWords ?? []).flatMap(withPlural).map((pattern) => entry(pattern, 'weak')),
    ...(kind.misheard ?? []).map(
      (misheard): LexiconEntry<Named> => ({
        pattern: misheard.heard,
        value: { sort: 'kind', kind: name, source: 'word', misheard },
      }),
    ),
    ...(kind.notWords ?? []).map((pattern): LexiconEntry<Named> => ({ pattern, value: { sort: 'not', of: name } })),
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
    ...(material.notWords ?? []).map(
      (pattern): LexiconEntry<Named> => ({ pattern, value: { sort: 'not', of: material.name } }),
    ),
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

const serviceLexicon = buildLexicon<ServiceName>(
  services.flatMap((service) => service.words.map((pattern) => ({ pattern, value: service.name }))),
);

const nameOf = (value: Named): string =>
  value.sort === 'kind'
    ? value.kind
    : value.sort === 'material'
      ? value.material
      : value.sort === 'service'
        ? value.service
        : '';

/** The kind or material a match names, or hides the words of. */
const ownerOf = (value: Named): string => (value.sort === 'not' ? value.of : nameOf(value));

/** Of the longest matches at one token: the name of something, unless the words are listed as none of it. */
function chooseMatch(matches: readonly LexiconMatch<Named>[]): LexiconMatch<Named> | null {
  const longest = matches.filter((match) => match.to === matches[0]?.to);
  const hidden = new Set(longest.flatMap(({ value }) => (value.sort === 'not' ? [value.of] : [])));
  const named = longest.find(({ value }) => value.sort !== 'not' && !hidden.has(nameOf(value)));
  return named ?? longest.find(({ value }) => value.sort === 'not') ?? longest[0] ?? null;
}

/** Every named thing. Of matches that overlap the longest stands, and of equal ones the first. */
export function findThings(tokens: readonly Token[], isInFrame: FrameTest): Thing[] {
  const candidates = tokens.flatMap((_, at) => {
    const best = chooseMatch(
      matchAt(lexicon, tokens, at).filter(
        ({ value, from, to }) =>
          value.sort === 'not' ||
          value.sort === 'service' ||
          value.misheard === undefined ||
          isInFrame(value.misheard.needs, from, to),
      ),
    );
    return best ? [best] : [];
  });
  const isNot = (match: (typeof candidates)[number]): number => (match.value.sort === 'not' ? 0 : 1);
  candidates.sort((a, b) => b.to - b.from - (a.to - a.from) || isNot(a) - isNot(b) || a.from - b.from);
  const isTaken = new Array<boolean>(tokens.length).fill(false);
  const found: Thing[] = [];
  const hidden = new Set<string>();
  for (const match of candidates) {
    if (isTaken.slice(match.from, match.to).some(Boolean)) continue;
    const keys = tokens.slice(match.from, match.to).map((_, index) => `${match.from + index} ${ownerOf(match.value)}`);
    if (match.value.sort === 'not') {
      for (const key of keys) hidden.add(key);
      continue;
    }
    if (keys.some((key) => hidden.has(key))) continue;
    isTaken.fill(true, match.from, match.to);
    const heard = textOf(tokens, match.from, match.to);
    const respelling = (misheard: Misheard | undefined): { respelled?: Respelling } =>
      misheard ? { respelled: { heard, taken: misheard.said } } : {};
    const place = { from: match.from, to: match.to, rule: match.pattern };
    const { value } = match;
    if (value.sort === 'kind') {
      found.push({ family: 'thing', kind: value.kind, source: value.source, ...respelling(value.misheard), ...place });
      // "the tub ties in": the description also says what is served.
      for (const inner of value.source === 'sign' ? matchAll(serviceLexicon, tokens.slice(match.from, match.to)) : []) {
        found.push({
          family: 'service',
          service: inner.value,
          from: match.from + inner.from,
          to: match.from + inner.to,
          rule: inner.pattern,
        });
      }
    } else if (value.sort === 'material')
      found.push({ family: 'material', material: value.material, ...respelling(value.misheard), ...place });
    else if (value.sort === 'service') found.push({ family: 'service', service: value.service, ...place });
  }
  return found.sort((a, b) => a.from - b.from);
}
