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
import { asideReader } from './asides.ts';

type Source = 'word' | 'sign' | 'weak';

type Named =
  | {
      readonly sort: 'kind';
      readonly kind: KindName;
      readonly source: Source;
      readonly misheard?: Misheard;
      readonly isDoubtful?: true;
    }
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

/** `<service>` in a pattern stands for any of the services, `<liner>` for that material, each by any of its names. */
const serviceChoices = services
  .flatMap((service) => service.words)
  .map((words) => words.replaceAll(' ', '_'))
  .join('|');
const choicesOf = new Map([
  ['service', serviceChoices],
  ...materials.map(
    ({ name, words }) =>
      [name, words.flatMap((word: string) => (word.includes('|') ? [] : word.replaceAll(' ', '_'))).join('|')] as const,
  ),
]);
const fillIn = (pattern: string): string =>
  pattern.replaceAll(/<([a-z-]+)>/g, (whole, name: string) => choicesOf.get(name) ?? whole);

function kindEntries(kind: Kind): LexiconEntry<Named>[] {
  const name = kind.name as KindName;
  const entry = (pattern: string, source: Source): LexiconEntry<Named> => ({
    pattern,
    value: { sort: 'kind', kind: name, source },
  });
  return [
    ...kind.words
      .map(fillIn)
      .flatMap(withPlural)
      .map((pattern) => entry(pattern, 'word')),
    ...[...(kind.signs ?? []), ...(kind.signsUpstream ?? [])].map((pattern) => entry(fillIn(pattern), 'sign')),
    ...(kind.weakWords ?? [])
      .map(fillIn)
      .flatMap(withPlural)
      .map((pattern) => entry(pattern, 'weak')),
    ...(kind.doubtfulWords ?? [])
      .map(fillIn)
      .flatMap(withPlural)
      .map(
        (pattern): LexiconEntry<Named> => ({
          pattern,
          value: { sort: 'kind', kind: name, source: 'weak', isDoubtful: true },
        }),
      ),
    ...(kind.misheard ?? []).map(
      (misheard): LexiconEntry<Named> => ({
        pattern: fillIn(misheard.heard),
        value: { sort: 'kind', kind: name, source: 'word', misheard },
      }),
    ),
    ...(kind.notWords ?? []).map(
      (pattern): LexiconEntry<Named> => ({ pattern: fillIn(pattern), value: { sort: 'not', of: name } }),
    ),
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
    service.words
      .flatMap(withPlural)
      .map((pattern): LexiconEntry<Named> => ({ pattern, value: { sort: 'service', service: service.name } })),
  ),
]);

export type Thing = PhraseOf<'thing'> | PhraseOf<'material'> | PhraseOf<'service'>;

/** Asks whether a misheard word stands in the frame it needs to be believed. */
export type FrameTest = (need: Misheard['needs'], from: number, to: number) => boolean;

const serviceLexicon = buildLexicon<ServiceName>(
  services.flatMap((service) => service.words.flatMap(withPlural).map((pattern) => ({ pattern, value: service.name }))),
);

const nameOf = (value: Named): string =>
  value.sort === 'kind'
    ? value.kind
    : value.sort === 'material'
      ? value.material
      : value.sort === 'service'
        ? value.service
        : '';

/**
 * Of the matches at one token: the longest name, and every longer stretch that is listed as none of something. A name listed
 * as none of itself in its very words is no name.
 */
function chooseMatches(matches: readonly LexiconMatch<Named>[]): LexiconMatch<Named>[] {
  const hiding = matches.filter(({ value }) => value.sort === 'not');
  const named = matches.find(
    (match) =>
      match.value.sort !== 'not' &&
      !hiding.some(({ value, to }) => to >= match.to && value.sort === 'not' && value.of === nameOf(match.value)),
  );
  return named ? [...hiding, named] : hiding;
}

/** A description may be parted by words that say something else; a name stands together. */
const mayBeParted = (value: Named): boolean => value.sort === 'kind' && value.source === 'sign';

/** Every named thing. Of matches that overlap the longest stands, and of equal ones the first. */
export function findThings(
  tokens: readonly Token[],
  isInFrame: FrameTest,
  numbers: readonly { readonly from: number; readonly to: number }[] = [],
): Thing[] {
  const lengths = new Map(numbers.map((number) => [number.from, number.to - number.from]));
  const numberLengthAt = (at: number): number => lengths.get(at) ?? 0;
  const asidesAt = asideReader(tokens, numberLengthAt);
  const candidates = tokens.flatMap((_, at) => {
    return chooseMatches(
      matchAt(lexicon, tokens, at, numberLengthAt, asidesAt).filter(
        ({ value, from, to, parted }) =>
          (parted === undefined || mayBeParted(value)) &&
          (value.sort === 'not' ||
            value.sort === 'service' ||
            value.misheard === undefined ||
            isInFrame(value.misheard.needs, from, to)),
      ),
    );
  });
  const isNot = (match: (typeof candidates)[number]): number => (match.value.sort === 'not' ? 0 : 1);
  const lengthOf = ({ from, to, parted }: (typeof candidates)[number]): number => to - from - (parted ?? 0);
  candidates.sort((a, b) => lengthOf(b) - lengthOf(a) || isNot(a) - isNot(b) || a.from - b.from);
  const isTaken = new Array<boolean>(tokens.length).fill(false);
  const hiddenFrom = new Map<string, Set<number>>();
  const found: Thing[] = [];
  for (const match of candidates) {
    if (isTaken.slice(match.from, match.to).some(Boolean)) continue;
    if (match.value.sort === 'not') {
      const hidden = hiddenFrom.get(match.value.of) ?? new Set();
      hiddenFrom.set(match.value.of, hidden);
      for (let at = match.from; at < match.to; at += 1) hidden.add(at);
      continue;
    }
    const hidden = hiddenFrom.get(nameOf(match.value));
    if (hidden && (hidden.has(match.from) || hidden.has(match.to - 1))) continue;
    isTaken.fill(true, match.from, match.to);
    const heard = textOf(tokens, match.from, match.to);
    const respelling = (misheard: Misheard | undefined): { respelled?: Respelling } =>
      misheard ? { respelled: { heard, taken: misheard.said } } : {};
    const place = { from: match.from, to: match.to, rule: match.pattern };
    const { value } = match;
    if (value.sort === 'kind') {
      const doubt = value.isDoubtful ? { isDoubtful: true as const } : {};
      found.push({
        family: 'thing',
        kind: value.kind,
        source: value.source,
        ...doubt,
        ...respelling(value.misheard),
        ...place,
      });
      // "the tub ties in": the description also says what is served.
      for (const inner of value.source === 'sign' || value.misheard
        ? matchAll(serviceLexicon, tokens.slice(match.from, match.to))
        : []) {
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
  // A description that gave way to a longer one beside it leaves the service it held.
  for (const { value, from, to, pattern } of matchAll(serviceLexicon, tokens)) {
    const hidden = hiddenFrom.get(value);
    if (isTaken.slice(from, to).some(Boolean) || hidden?.has(from) || hidden?.has(to - 1)) continue;
    found.push({ family: 'service', service: value, from, to, rule: pattern });
  }
  return found.sort((a, b) => a.from - b.from);
}
