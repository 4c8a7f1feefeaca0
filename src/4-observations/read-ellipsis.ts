/** Things named without their name: "second one", "another at 47", "there they are". */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { setField } from './assign-attributes.ts';
import { type Claim, kindTakes } from './claim.ts';
import { currentRun, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** "No scale yet. … 41, there it is": what was looked for is found. */
export function pointedAgain(
  reading: Reading,
  sentence: Sentence,
  claims: readonly Claim[],
  place: PhraseOf<'distance'> | null,
): Claim | null {
  const run = currentRun(reading);
  const denied = reading.absent.at(-1);
  if (claims.length > 0 || !place || !run || !denied || denied.run !== run.n || run.way === 'back') return null;
  if (!/\b(there|here) (they|it|we|he|she) (are|is|go|goes|comes|come)\b|\bspoke too soon\b/.test(sentence.text))
    return null;
  const claim: Claim = {
    kind: denied.kind,
    source: 'word',
    rule: 'there they are',
    from: place.from,
    to: place.to,
    things: [{ from: place.from, to: place.to }],
    respelled: [],
    place,
    relative: null,
    isRelativeNearer: false,
    fields: {},
    count: 1,
    placeTokens: 1,
    isRejected: false,
  };
  for (const phrase of sentence.phrases) setField(claim.fields, phrase, claim.kind);
  return claim;
}

const another = /^(second|third|fourth|another|next|other|one)$/;

/** "Forty feet, second one, right side": the kind is that of the thing before. */
export function readEllipsis(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim[] {
  const { tokens } = reading.phrases;
  const before = claims.at(-1);
  const last = reading.focus.findLast((item) => !item.isWithdrawn);
  const isFresh =
    last !== undefined &&
    sentence.index - reading.focusSentence <= 4 &&
    last.kind !== 'pipe' &&
    last.kind !== 'material-change';
  const kind = before?.kind ?? (isFresh ? last.kind : null);
  const places = phrasesOf(sentence.phrases, 'distance').filter(
    (phrase) => phrase.distance.isEnd !== true && !claims.some((claim) => claim.place === phrase),
  );
  const relatives = phrasesOf(sentence.phrases, 'relative').filter(
    (phrase) => phrase.relative.shape === 'offset' && !claims.some((claim) => claim.relative === phrase),
  );
  const pointed = pointedAgain(reading, sentence, claims, places[0] ?? null);
  if (pointed) return [pointed];
  if (kind === null || (before && before.to >= sentence.to)) return [];
  for (let at = before?.to ?? sentence.from; at < sentence.to; at += 1) {
    const text = tokens[at]?.text ?? '';
    const next = tokens[at + 1]?.text ?? '';
    const names =
      another.test(text) &&
      (/^(one|1)$/.test(next) ||
        (text === 'another' && (tokens[at]?.breakAfter !== 'none' || /^(at|here|there|on)$/.test(next))) ||
        (text === 'one' && next === 'more') ||
        // "Two wyes, one on the left at fourteen and one on the right at sixteen".
        (text === 'one' &&
          /^(on|at|to|from|off|coming)$/.test(next) &&
          tokens.slice(before?.to ?? sentence.from, at).some((token) => token.text === 'one')));
    if (!names) continue;
    const place = before ? (places.find((phrase) => phrase.from > before.to) ?? null) : (places[0] ?? null);
    const relative = place === null ? (relatives[0] ?? null) : null;
    if (place === null && relative === null) continue;
    const claim: Claim = {
      kind,
      source: 'word',
      rule: 'another one',
      from: at,
      to: at + 1,
      things: [{ from: at, to: at + 2 }],
      respelled: [],
      place,
      relative,
      isRelativeNearer: place === null,
      fields: before ? { ...(before.fields.angleDeg !== undefined ? { angleDeg: before.fields.angleDeg } : {}) } : {},
      count: 1,
      placeTokens: 1,
      isRejected: false,
    };
    for (const phrase of sentence.phrases) if (!before || phrase.from > at) setField(claim.fields, phrase, claim.kind);
    const end = phrasesOf(sentence.phrases, 'distance').find((phrase) => phrase.distance.isEnd === true);
    const toFeet = place?.distance.toFeet ?? end?.distance.feet ?? null;
    if (toFeet !== null && kindTakes(claim.kind, 'to')) claim.fields.to = toFeet;
    return [claim];
  }
  return [];
}
