/** What one sentence says of the camera: an opening, a way to go, the counter at nought, another run. */
import type { Direction } from '../../shared/vocabulary/attributes.ts';
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Sentence } from './sentence.ts';

export interface Signals {
  direction: Direction | null;
  isPlain: boolean;
  hasAccess: boolean;
  isEntering: boolean;
  isZero: boolean;
  /** The counter is set to nought on purpose, which alone begins a run. */
  isZeroed: boolean;
  /** That is done at a place read off the counter before ("cleanout at twenty four, I zero here"): the next run begins after it. */
  isZeroedAtPlace: boolean;
  isNext: boolean;
  /** Another run is told of only by "now", which may as well go on with this one. */
  isNextLoose: boolean;
  /** The number of the run that is announced ("run two"), where one is said. */
  number: number | null;
  /** The sentence opens by counting on: "Second." "Next," */
  isOrdinal: boolean;
  isSameAccess: boolean;
  /** The camera is turned about, so that it goes the other way than before. */
  isTurnedAbout: boolean;
  /** The camera goes the way it went before. */
  isSameWay: boolean;
  /** Said of what is done now: "I'm", "let me", "here we". */
  isDoing: boolean;
  /** The run is ended here by choice, or at what it was to reach. */
  isFinish: boolean;
  isPullBack: boolean;
  isSummary: boolean;
}

export const noSignals: Signals = {
  direction: null,
  isPlain: false,
  hasAccess: false,
  isEntering: false,
  isZero: false,
  isZeroed: false,
  isZeroedAtPlace: false,
  isNext: false,
  isNextLoose: false,
  number: null,
  isOrdinal: false,
  isSameAccess: false,
  isTurnedAbout: false,
  isSameWay: false,
  isDoing: false,
  isFinish: false,
  isPullBack: false,
  isSummary: false,
};

/** What was meant to be done and was not, or is only to be done some day. */
const notDone =
  /\b(wanted to|would have|would 've|'d have|meant to|hoped to|was going to|could have|tried to|planned to|i tried|couldn't|could not|wasn't|wouldn't|another day|if you want|if you 'd like|after this|when i 'm done|later on|next time|should|you 'd have to|i 'd come|won't let|the plan is|plan is|next door|next house|next job|next stop|tomorrow|another time)\b/;

/** "I was hoping to go on toward the street": an opening and a way that were not taken, where nothing else follows. */
const wished =
  /\b(wanted to|did want to|would have (liked|gone|used|preferred)|would 've|'d have|meant to|hoped to|was hoping to|was going to|tried to|planned to|i tried)\b(?!.*\b(but|so|instead)\b.*\b(i 'm|we 're|i am|we are|i 'll|we 'll|going|heading|using|from|zero)\b)/;

/** The counter's nought named by itself: "Zero.", "zero going up". */
const bareZero =
  /^(okay |and |so |now )?(zero|0|nought)( again)?$|(?<!point )\b(zero|0) (going|heading|headed|again|once more|and going)\b|(?<!point )\b(zero|0)$/;
/** "Back at zero" may only be the end of the pull; these begin a count. */
const setsToZero =
  /\b(zero it|zero her|zeroed|zeroing|rezero|rezeroed|re zero|re zeroed|reset|resetting|resets|zero the|zero out|zero me out|set to (zero|0)|setting (it|the \w+) to (zero|0)|i zero|new count|fresh count|fresh (zero|0)|starts over|start over|started over|count from|counting from|measured from|wound the|clear the)\b/;
const numbered =
  /^(?:.*?\b)?(?:run|pass|survey|round|part|look|test|exercise|number|leg)( number)? (two|three|four|five|six|2|3|4|5|6)\b|\b(second|third|fourth|fifth) (?:run|pass|survey|look|push|test|traverse|exercise|round|leg)\b/;
const numberWords = ['', 'one', 'two', 'three', 'four', 'five', 'six'];
const ordinalWords = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth'];
/** A run spoken of, not begun: "roots on run two", "run two is done". */
const spokenOf =
  /\b(on|of|for|from|in|with|at|that was|that 's|end of) (the )?(run|pass|survey|second|third|fourth|fifth|round|part|look|test|leg|number)\b|\b(two|three|four|five|run|pass|survey|look|push|line|one) ('s |is |was |are |now )?(over|done|finished|complete|completed|ended|ends|concluded|closed)\b/;
const ordinalStart =
  /^(?:(?:okay|ok|alright|all right|and|now|so|well|um|uh|then|on to|onto|right|good) )*(?:the )?(second|third|fourth|fifth|last|next|final|number two|number three|part two|part three|round two|round three|one more)\b/;
/** "No, the other way." answers; it announces nothing. */
const answers = /^no\b/;
const turnedAbout =
  /\b(other (way|direction|leg|half|side|end)|opposite|reverse (direction|way)|turn(ed|ing)? (it |her |him |the camera |the head |this |that )?(around|round)|spun|spinning|spin (it|her)? ?around|flip(ped|ping)?( it| her)? around|flip side|reversed|swapp(ed|ing)|switch(ed|ing)? (directions|sides|ends))\b/;
const sameWay = /\bsame (direction|way)\b/;
const doing =
  /\b(i 'm|we 're|i am|we are|i 'll|we 'll|let me|let 's|here we|here i|i 've|we 've|i (go|look|push|send|put|feed|start|shoot|open|opened|pulled|took|lifted|drop|run|turn|moved|zero)|we (go|look|push|start|open|opened|pulled|drop|run)|gonna|she 's|he 's)\b/;

/** Rules of "another run" that only begin with "now" or "then". */
const loosely = /^(now i|now\|next\|then (i|up)|in through|going up)/;

function numberOf(text: string): number | null {
  const match = numbered.exec(text);
  const said = match?.[2] ?? match?.[3];
  if (!said) return null;
  const at = Math.max(numberWords.indexOf(said), ordinalWords.indexOf(said));
  return at > 0 ? at : Number(said);
}

const namesSide = /^(side|half|end|leg|section|portion|way|direction)$/;
const namesNoGoal = /^(up|down|out|away|uphill|downhill|go|goes)$/;

/** "First up to the house", "the street side first": the way that is gone now. */
const isTakenFirst = ({ from, to }: PhraseOf<'heading'>, tokens: readonly Token[]): boolean =>
  tokens[to]?.text === 'first' || /(^|\s)first( the)?$/.test(textOf(tokens, Math.max(0, from - 2), from));

/** Of several ways named in a sentence: a plain one, else one that names its goal, a bare "down", the side something is on. */
function chooseHeading(
  headings: readonly PhraseOf<'heading'>[],
  tokens: readonly Token[],
  text: string,
): PhraseOf<'heading'> | null {
  const plain = headings.filter((heading) => heading.isPlain);
  const first = plain.find((heading) => text.includes(`${heading.rule} first`));
  if (plain.length > 0) return first ?? plain.at(-1)!;
  const named = headings.find((heading) => isTakenFirst(heading, tokens));
  if (named) return named;
  const lastWord = (heading: PhraseOf<'heading'>): string => tokens[heading.to - 1]?.text ?? '';
  const isSide = (heading: PhraseOf<'heading'>): boolean => namesSide.test(lastWord(heading));
  return (
    headings.find((heading) => !isSide(heading) && !namesNoGoal.test(lastWord(heading))) ??
    headings.find((heading) => !isSide(heading)) ??
    headings[0] ??
    null
  );
}

const refused =
  /\b(not|can't|cannot|couldn't|won't|wouldn't|didn't|never|no way to|instead of|rather than)( [\w']+){0,3}$|\b(that 's|that was|there 's|so much for|(done|finished|good|happy) (with|on)|enough of|that does it for|that covers|covers|covered)( the| all of the)?$/;
const shut =
  /^(one |part |access |end |side |half |leg |run |pass |survey |section |line |direction )*('s |is |was |are |got |has been |been |already )*(all )?(blocked|plugged|buried|paved|locked|stuck|seized|capped|closed|inaccessible|no good|out of|not |can't|couldn't|won't|isn't|done|finished|complete|completed|over|later|after that|afterwards|afterward|another day|can wait)\b/;

/** "Upstream is blocked by a bush", "I couldn't go upstream", "street side's done": a way that is not taken now. */
function isRuledOut(heading: PhraseOf<'heading'>, sentence: Sentence, tokens: readonly Token[]): boolean {
  return (
    refused.test(textOf(tokens, Math.max(sentence.from, heading.from - 5), heading.from)) ||
    shut.test(textOf(tokens, heading.to, Math.min(sentence.to, heading.to + 5)))
  );
}

/** The signs in a stretch of a sentence: all of it, or what follows the word that the camera is pulled back. */
function signsIn(sentence: Sentence, from: number, text: string, tokens: readonly Token[]): Signals {
  const phrases = sentence.phrases.filter((phrase) => phrase.from >= from);
  // "Heavy scale from zero to six": where a stretch begins, and nothing of the counter.
  const stretches = phrasesOf(phrases, 'distance').filter(({ distance }) => distance.toFeet !== null);
  const isOfStretch = (cue: { from: number; to: number }): boolean =>
    stretches.some((stretch) => stretch.from < cue.to && stretch.to > cue.from);
  const cues = new Set(
    phrasesOf(phrases, 'camera')
      .filter((phrase) => phrase.cue !== 'zero' || !isOfStretch(phrase))
      .map((phrase) => phrase.cue),
  );
  const headings = phrasesOf(phrases, 'heading').filter((heading) => !isRuledOut(heading, sentence, tokens));
  const isWished = wished.test(text);
  const isZero = cues.has('zero') || bareZero.test(text);
  const zeroedAt = isZero ? text.search(setsToZero) : -1;
  const isBeforeZero = ({ from: at, distance }: PhraseOf<'distance'>): boolean =>
    distance.feet > 0 && textOf(tokens, from, at).length < zeroedAt;
  const heading = isWished ? null : chooseHeading(headings, tokens, text);
  const number = spokenOf.test(text) ? null : numberOf(text);
  return {
    direction: heading?.direction ?? null,
    isPlain: heading !== null && (heading.isPlain || isTakenFirst(heading, tokens)),
    hasAccess: cues.has('access') && !isWished,
    isEntering: cues.has('enter'),
    isZero,
    isZeroed: zeroedAt >= 0,
    isZeroedAtPlace: phrasesOf(phrases, 'distance').some(isBeforeZero),
    isNext:
      (cues.has('next-run') || number !== null) && !notDone.test(text) && !spokenOf.test(text) && !answers.test(text),
    isNextLoose:
      number === null &&
      phrasesOf(phrases, 'camera').every((phrase) => phrase.cue !== 'next-run' || loosely.test(phrase.rule)),
    number,
    isOrdinal: ordinalStart.test(text) && !spokenOf.test(text),
    isSameAccess: cues.has('same-access'),
    isTurnedAbout: turnedAbout.test(text) && !notDone.test(text) && !answers.test(text),
    isSameWay: sameWay.test(text),
    isDoing: doing.test(text) && !notDone.test(text),
    isFinish: cues.has('finish'),
    isPullBack: cues.has('pull-back'),
    isSummary: cues.has('summary'),
  };
}

export function readSignals(sentence: Sentence, tokens: readonly Token[]): Signals {
  const whole = signsIn(sentence, sentence.from, sentence.text, tokens);
  if (!whole.isPullBack) return whole;
  // "Then the other way, counter at zero, heading back to the house": back is only where that way leads.
  if (whole.isZero && (whole.isNext || whole.isTurnedAbout) && whole.direction !== null)
    return { ...whole, isPullBack: false };
  // "Pulling back, and now the other way, zeroed": what comes after may begin a run all the same.
  const last = phrasesOf(sentence.phrases, 'camera').findLast((phrase) => phrase.cue === 'pull-back');
  if (!last) return whole;
  const rest = signsIn(sentence, last.to, textOf(tokens, last.to, sentence.to), tokens);
  const core = [rest.isZeroed, rest.isNext, rest.isSameAccess, rest.direction !== null, rest.hasAccess];
  const begins = core.filter(Boolean).length >= 2 && (rest.isZeroed || rest.isNext || rest.isSameAccess);
  return begins ? { ...rest, isPullBack: false } : whole;
}
