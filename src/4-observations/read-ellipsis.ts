/** Things named without their name: "second one", "another at 47", "there they are". */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { setField } from './assign-attributes.ts';
import { ACROSS, type Claim, kindTakes, newClaim } from './claim.ts';
import { farEnds, upstreamSigns } from './kind-roles.ts';
import { currentRun, focusedIn, furthestOf, type Reading } from './reading.ts';
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
  const claim: Claim = { ...newClaim(denied.kind, 'there they are', place, 1), place };
  for (const phrase of sentence.phrases) setField(claim.fields, phrase, claim.kind);
  return claim;
}

const another = /^(second|third|fourth|another|next|other|one|more|again)$/;
const lots = /^(batch|bunch|lot|set|stretch|clump|spot|section|cluster|mess|bit)$/;
const isSound = /\b(tight|fine|okay|ok|good|clear|clean|dry|sound|nothing|not bad|intact|perfect)\b/;
/** "Another. Thirty to thirty six." */
export const isAnotherAlone = (text: string): boolean =>
  /^(and |then )*(another|again|a second)( one)?( here)?$/.test(text);
/** "Ditto at eighteen", "same story, fourteen", "another batch of those at sixty": the thing before is met once more. */
const oncemore =
  /\b(ditto|likewise|same (thing|deal|story|again|sort|kind|as before|as above|as that|business|idea)|the same (at|again|here|thing|story|(?=[\w.]+( and a half)? (feet|foot|more|on|further|past)\b))|same \w+ (?=[\w.]+( and a half)? (feet|foot) (on|further|past|along|later|down|up)\b)|more of (the same|them|those|it|that|this)|(a few|some|lots|plenty|even|still|a couple|a bit|a little) more\b(?! (feet|foot|inch|inches|of a|time|minutes|than))|its (twin|mate|brother|sister|match|double)|(another|next|second|third) (bunch|batch|lot|set|bit|patch|crop|round|clump|mess|stretch|spot|like it|of them|of those|such)|(they|it) ('re|'s|are|is|come|comes|start|starts|show|shows|pick|picks) (right )?(back|up again|again)(?= (at|in|here|,)|$)|does it again|happens again|(some|a bit) more ,? ?\d*$|more ,? (again|still)|once more|one more (at|like|of)|(?<=^|and |then |next |okay |so |now |there 's |here 's |got )(a|another) (real |really |pretty )?(heavy|heavier|light|lighter|big|bigger|small|smaller|bad|worse|little|deep|deeper|long|longer|short|shorter|ugly|slight|moderate|nasty|mean|good|second|third|fourth) one|too$|as well$)\b|^(and |then |okay |so )*(again|more)( ,| at| here| just| in| on| up| from| by| past| (a|two|three|four|five|six|\d+) )|\b(and|then) again (at|,|in|on)\b/;
/** Said of what is seen once more, or of what is back to normal. */
const notOncemore =
  /\b(clear|clean|dry|good|fine|round|smooth|straight|normal|okay|open|back|see (it|them|that)|look|looking|way) (here |there )?again\b|\bon the way\b/;

/** "And across from it, nine o'clock", "another one straight opposite": the same thing in the same place, on another side. */
const oppositeSide =
  /\b((straight |right |directly )?(across|opposite)( from| of| to)?( (it|that|there|them|this|him|her))?|(on )?the (other|opposite|far) (side|wall)( too| as well| of it)?)\b/;

function readOpposite(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim | null {
  const run = currentRun(reading);
  const last = focusedIn(reading, run);
  if (!run || run.way === 'back' || reading.isSummary || !last || last.at === null || claims.length > 0) return null;
  if (sentence.isQuestion || sentence.index - reading.focusSentence > 1 || pipeKinds.test(last.kind)) return null;
  if (!oppositeSide.test(sentence.text) || sentence.to - sentence.from > OPPOSITE_TOKENS) return null;
  const side = sentence.phrases.find(({ family }) => family === 'position' || family === 'clock');
  const hasOther = sentence.phrases.some(({ family }) => family === 'distance' || family === 'assertion');
  if (!side || hasOther || !(kindTakes(last.kind, 'position') || kindTakes(last.kind, 'clock'))) return null;
  const distance = { feet: last.at, toFeet: null, frame: 'unit' as const };
  const place: PhraseOf<'distance'> = { ...side, family: 'distance', distance, rule: 'the same place' };
  const claim: Claim = { ...newClaim(last.kind, ACROSS, sentence, 1), place };
  for (const phrase of sentence.phrases) setField(claim.fields, phrase, claim.kind);
  const isSameSide = claim.fields.position === last.fields.position && claim.fields.clock === last.fields.clock;
  return isSameSide ? null : claim;
}
const OPPOSITE_TOKENS = 14;

/** A thing met again where only its place is new. */
function readOncemore(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim | null {
  const run = currentRun(reading);
  const last = focusedIn(reading, run);
  if (!run || run.way === 'back' || reading.isSummary || !last || claims.length > 0 || sentence.isQuestion) return null;
  if (sentence.index - reading.focusSentence > ONCEMORE_SENTENCES || pipeKinds.test(last.kind)) return null;
  if (!oncemore.test(sentence.text) || notOncemore.test(sentence.text)) return null;
  const isDenied = phrasesOf(sentence.phrases, 'assertion').some((cue) => cue.cue.axis === 'denied');
  if (isDenied || sentence.phrases.some(({ family }) => family === 'material')) return null;
  const place = phrasesOf(sentence.phrases, 'distance').find((phrase) => phrase.distance.isEnd !== true) ?? null;
  const relative =
    place === null
      ? (phrasesOf(sentence.phrases, 'relative').find((phrase) => phrase.relative.shape === 'offset') ?? null)
      : null;
  const waits = reading.pending !== null && sentence.index - reading.pending.sentence <= 1;
  if (place === null && relative === null && !waits) return null;
  const reached = furthestOf(last);
  if (place !== null && place.distance.feet <= reached) return null;
  const claim = newClaim(last.kind, 'the same once more', sentence, 1);
  claim.place = place;
  claim.relative = relative;
  claim.isRelativeNearer = relative !== null;
  for (const phrase of sentence.phrases) setField(claim.fields, phrase, claim.kind);
  if (place?.distance.toFeet != null && kindTakes(claim.kind, 'to')) claim.fields.to = place.distance.toFeet;
  return claim;
}

/** What may stand beside a fixture that is all a sentence names. */
const besideFixture =
  /^(the|a|an|at|on|from|and|that|'s|is|it|feet|foot|ft|line|drain|for|here|there|comes|in|side|hand|okay|so|um|uh|left|right|top|up|upstairs|downstairs|hall|master|guest|half|main|half|point)$/;

/** "Nine, tub, left. Eleven, sink.": in talk this short a fixture with a place is where its drain comes in. */
function readFixture(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim | null {
  const run = currentRun(reading);
  if (!run || run.way === 'back' || reading.isSummary || claims.length > 0 || sentence.isQuestion) return null;
  const services = phrasesOf(sentence.phrases, 'service');
  const place = phrasesOf(sentence.phrases, 'distance')[0] ?? null;
  const isParked =
    place === null && reading.pending !== null && reading.pending.sentence === sentence.index - 1 && run.furthest > 2;
  if (services.length !== 1 || (place === null && !isParked) || place?.distance.feet === 0) return null;
  if (sentence.phrases.some(({ family }) => family === 'heading' || family === 'assertion' || family === 'material'))
    return null;
  const words = reading.phrases.tokens.slice(sentence.from, sentence.to).filter((_, offset) => {
    const at = sentence.from + offset;
    return !sentence.phrases.some((phrase) => phrase.family !== 'camera' && at >= phrase.from && at < phrase.to);
  });
  if (!words.every((token) => besideFixture.test(token.text)) || words.length > FIXTURE_TOKENS) return null;
  const service = services[0]!;
  const claim = { ...newClaim('branch', 'a fixture by itself', service, 1), place };
  claim.source = 'sign';
  for (const phrase of sentence.phrases) setField(claim.fields, phrase, claim.kind);
  return claim;
}
const FIXTURE_TOKENS = 5;

const endsNow =
  /\b(it|that|this|he|she|they)( one)?( ('s|is|'re|are|has|'ve))? ?(just |all )?(ends?|ended|stops?|stopped|quits?|finish(es|ed)?|done|over|out|gone|runs? out|terminates?|lets? go|gives? out)\b|^(and |then |now )*(out of it|end of it|ends|stops|quits|finishes)\b/;

/** "The liner starts at sixteen. … It's finished by twenty one.": where a stretch ends that has a kind of its own for its far end. */
function readFarEnd(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim | null {
  const run = currentRun(reading);
  if (!run || run.way === 'back' || reading.isSummary || sentence.isQuestion) return null;
  // "It ends at twenty" is an end of the line only up the line.
  if (claims.some(({ rule }) => run.direction === 'upstream' || !upstreamSigns.has(rule))) return null;
  const open = focusedIn(reading, run);
  const kind = open ? farEnds.get(open.kind) : undefined;
  const place = phrasesOf(sentence.phrases, 'distance')[0];
  if (!open || kind === undefined || !place || place.distance.feet <= (open.at ?? 0)) return null;
  if (sentence.index - reading.focusSentence > ONCEMORE_SENTENCES || !endsNow.test(sentence.text)) return null;
  return { ...newClaim(kind, 'where it ends', sentence, 1), place, source: 'sign' };
}

/** How many sentences after the thing it may be met again. */
const ONCEMORE_SENTENCES = 3;
const pipeKinds =
  /^(pipe|material-change|main-connection|tank|manhole|end-of-line|stopped|liner-start|liner-end|view-lost|no-access|not-reached)$/;

/** "Forty feet, second one, right side": the kind is that of the thing before. */
export function readEllipsis(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim[] {
  const { tokens } = reading.phrases;
  const again =
    readOpposite(reading, sentence, claims) ??
    readOncemore(reading, sentence, claims) ??
    readFixture(reading, sentence, claims) ??
    readFarEnd(reading, sentence, claims);
  if (again) return [again];
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
  // "Next one, forty, good too.": another joint, and nothing at it.
  if (before === undefined && isSound.test(sentence.text)) return [];
  if (kind === null || (before && before.to >= sentence.to)) return [];
  for (let at = before?.to ?? sentence.from; at < sentence.to; at += 1) {
    const text = tokens[at]?.text ?? '';
    const next = tokens[at + 1]?.text ?? '';
    const names =
      another.test(text) &&
      (/^(one|1)$/.test(next) ||
        (text === 'another' && (tokens[at]?.breakAfter !== 'none' || /^(at|here|there|on|from)$/.test(next))) ||
        (text === 'another' && lots.test(next)) ||
        // "Roots at ten, more at twelve": not "two feet more at the bend".
        (text === 'more' &&
          before !== undefined &&
          /^(at|from)$/.test(next) &&
          !/\d|feet|foot/.test(tokens[at - 1]?.text ?? '')) ||
        isAnotherAlone(sentence.text) ||
        (text === 'one' && next === 'more') ||
        // "Two wyes, one on the left at fourteen and one on the right at sixteen".
        (text === 'one' &&
          /^(on|at|to|from|off|coming)$/.test(next) &&
          tokens.slice(before?.to ?? sentence.from, at).some((token) => token.text === 'one')));
    if (!names) continue;
    const place = before
      ? (places.find((phrase) => phrase.from > before.to) ?? null)
      : (places[0] ?? reading.plan.after.get(sentence.index)?.place ?? null);
    const relative = place === null ? (relatives[0] ?? null) : null;
    if (place === null && relative === null) continue;
    const claim: Claim = {
      ...newClaim(kind, 'another one', { from: at, to: at + 1 }, 1),
      things: [{ from: at, to: at + 2 }],
      place,
      relative,
      isRelativeNearer: place === null,
      fields: before ? { ...(before.fields.angleDeg !== undefined ? { angleDeg: before.fields.angleDeg } : {}) } : {},
    };
    for (const phrase of sentence.phrases) if (!before || phrase.from > at) setField(claim.fields, phrase, claim.kind);
    const end = phrasesOf(sentence.phrases, 'distance').find((phrase) => phrase.distance.isEnd === true);
    const toFeet = place?.distance.toFeet ?? end?.distance.feet ?? null;
    if (toFeet !== null && kindTakes(claim.kind, 'to')) claim.fields.to = toFeet;
    return [claim];
  }
  return [];
}
