/** Whether something is found though no run was announced: then one has begun all the same, and all that follows lies in it. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { assertClaim } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { limitKinds, openingKinds } from './kind-roles.ts';
import type { Reading } from './reading.ts';
import { type Sentence, tellsOfOther } from './sentence.ts';
import { FIRST_RUN_SUM, gatherSigns } from './weigh-start.ts';

/** What the pipe is, told in no more words than this. */
const PIPE_TOKENS = 12;
const SHORT_PIPE_TOKENS = 6;
/** A thing told by itself, and how many sentences on its number may stand by itself. */
const BIT_TOKENS = 4;
const BITS_AHEAD = 2;
/** From this chance on the close reader finds a thing; below the next, a run that begins here had begun before. */
const FOUND = 0.5;
const UNDER_WAY = 0.5;
/** So many sentences on a run may still be announced. */
const AHEAD_SENTENCES = 25;

export function needsRun(reading: Reading, sentence: Sentence, claims: readonly Claim[]): boolean {
  if (sentence.isQuestion) return false;
  const { tokens } = reading.phrases;
  const isFound = (claim: Claim): boolean => {
    const { aside, isDenied } = assertClaim(claim, claims, sentence, tokens);
    // "A two foot wrench won't turn it": a hindrance is met on the way, or before there is one.
    return claim.source !== 'weak' && !limitKinds.has(claim.kind) && aside === null && !isDenied;
  };
  const hasAccess = reading.sentences
    .slice(0, sentence.index)
    .some((other) => phrasesOf(other.phrases, 'camera').some((cue) => cue.cue === 'access'));
  const isPlaced = ({ place }: Claim): boolean => place !== null && (hasAccess || place.distance.frame !== 'bare');
  if (claims.some((claim) => isPlaced(claim) && isFound(claim))) return true;
  if (claims.some((claim) => isFound(claim) && isFoundUnderWay(reading, sentence, claim))) return true;
  const tokensLong = sentence.to - sentence.from;
  const isPipe =
    phrasesOf(sentence.phrases, 'material').length > 0 && tokensLong <= PIPE_TOKENS && !tellsOfOther(sentence);
  if (isPipe && hasAccess) return true;
  const isSized = isPipe && tokensLong <= SHORT_PIPE_TOKENS && phrasesOf(sentence.phrases, 'diameter').length > 0;
  const isBit = (claim: Claim): boolean =>
    tokensLong <= BIT_TOKENS && !openingKinds.has(claim.kind) && isFound(claim) && hasPlaceBeside(reading, sentence);
  return (isSized || claims.some(isBit)) && !isAnnouncedLater(reading, sentence);
}

/** Whether the close reader finds the thing here as well, and holds that the run had begun before. */
const isFoundUnderWay = ({ close }: Reading, { from, to }: Sentence, { kind }: Claim): boolean =>
  close !== null && close.chance(kind, from, to) > FOUND && close.startChance(from, to) < UNDER_WAY;

/** "Tee. Washer. Four.": the number stands by itself beside the thing. */
function hasPlaceBeside({ sentences }: Reading, { index, phrases }: Sentence): boolean {
  const isPlace = (other: Sentence | undefined): boolean =>
    other !== undefined &&
    other.to - other.from <= BIT_TOKENS &&
    other.phrases.length === 1 &&
    other.phrases[0]!.family === 'distance';
  return (
    phrasesOf(phrases, 'distance').length > 0 ||
    isPlace(sentences[index - 1]) ||
    sentences.slice(index + 1, index + 1 + BITS_AHEAD).some(isPlace)
  );
}

/** Whether a run is announced soon: what comes before it is talk of what lies ahead. */
const isAnnouncedLater = (reading: Reading, { index }: Sentence): boolean =>
  reading.sentences.slice(index + 1, index + 1 + AHEAD_SENTENCES).some((later) => {
    const window = gatherSigns(reading, later);
    return (
      window !== null && window.sum >= FIRST_RUN_SUM && (window.signals.direction !== null || window.signals.isZero)
    );
  });
