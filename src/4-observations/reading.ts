/** What is known while a talk is being read: runs, items, and where the camera is. */

import type { Flag } from '../../shared/schemas/draft.ts';
import type {
  Degree,
  Direction,
  DistanceBasis,
  EndReason,
  Position,
  Status,
} from '../../shared/vocabulary/attributes.ts';
import type { KindName } from '../../shared/vocabulary/kinds/index.ts';
import type { MaterialName } from '../../shared/vocabulary/materials.ts';
import type { ServiceName } from '../../shared/vocabulary/services.ts';
import type { Phrases } from '../3-phrases/find-phrases.ts';
import type { DistanceFrame, Phrase } from '../3-phrases/phrase.ts';
import type { Claim } from './claim.ts';
import type { CloseReading } from './close/read-closely.ts';
import type { PlacePlan } from './plan-places.ts';
import type { RunPlan } from './plan-runs.ts';
import type { Sentence } from './sentence.ts';
import type { TaughtReading } from './taught/read-taught.ts';

export interface Fields {
  to: number | null;
  position: Position | null;
  clock: number | null;
  clockTo: number | null;
  degree: Degree | null;
  percent: number | null;
  inches: number | null;
  material: MaterialName | null;
  diameterIn: number | null;
  fromMaterial: MaterialName | null;
  toMaterial: MaterialName | null;
  serves: ServiceName | null;
  angleDeg: number | null;
}

export type FieldName = keyof Fields;

/** How an item came to be believed; features of the doubt about it. */
export interface Evidence {
  /** The thing was named, described by a sign, or only weakly named. */
  source: 'word' | 'sign' | 'weak' | 'computed';
  /** The rule that found the thing, and the one that gave the place. */
  rule: string;
  placeRule: string;
  /** How many things and places the sentence held. */
  thingsInSentence: number;
  placesInSentence: number;
  /** How many tokens lie between the thing and its place; null when the place was not in the sentence. */
  placeTokens: number | null;
  /** Sentences between the thing and its place. */
  placeSentences: number;
  isRespelled: boolean;
  isOnWayBack: boolean;
  isHedged: boolean;
  /** How the place was given, when it was said with the thing. */
  frame: DistanceFrame | null;
  hasExistential: boolean;
  sentenceTokens: number;
  notes: string[];
}

export interface Item {
  readonly n: number;
  run: number;
  kind: KindName;
  status: Status;
  at: number | null;
  basis: DistanceBasis | null;
  fields: Fields;
  /** Token range it was first said in. */
  from: number;
  to: number;
  sentence: number;
  again: { from: number; to: number }[];
  corrected: { field: string; was: string | number | null; from: number; to: number }[];
  respelled: { heard: string; taken: string }[];
  flags: Flag[];
  /** Those of them that only weighing raised, not a single sign of something wrong. */
  readonly softFlags: Set<Flag>;
  /** Those that weighing both readings may not lift: they rest on what was heard, was not said, or is told by one reading alone. */
  readonly firmFlags: Set<Flag>;
  evidence: Evidence;
  isWithdrawn: boolean;
  /** Withdrawn because it was only asked or half seen, or because a second reading does not find it; not because it was taken back. */
  isWithheld: boolean;
  confidence: number;
  certainty: { hearing: number | null; reading: number; fields: Record<string, number> };
}

export interface RunState {
  n: number;
  access: string | null;
  direction: Direction | null;
  isDirectionPlain: boolean;
  /** True when it was only said to be the other way than before. */
  isDirectionImplied: boolean;
  /** True when it was said to be another way than that of the run before, whichever that is. */
  isOppositeWay: boolean;
  /** True when the direction was not said and had to be assumed. */
  isDirectionAssumed: boolean;
  sentence: number;
  /** The last sentence of its announcement. */
  announcedTo: number;
  from: number;
  to: number;
  /** Where the camera is, in feet, and the furthest it has been. */
  here: number;
  furthest: number;
  way: 'out' | 'back';
  /** The sentence after which it goes back, where that sentence tells of something first. */
  turnsAfter: number | null;
  material: MaterialName | null;
  diameterIn: number | null;
  end: { at: number | null; reason: EndReason } | null;
  /** Where the talk says that the run is ended, without a reason in the pipe; null until it does. */
  finishedAt: number | null;
  /** The sentence that says so. */
  finishedIn: number;
  hasFindings: boolean;
  /** Places the counter was read at, and whether the camera was still on its way out. */
  track: { token: number; feet: number; sentence: number; isOut: boolean }[];
  landmarks: { words: string; feet: number; sentence: number }[];
}

export type Owner =
  | { readonly sort: 'item'; readonly item: Item; readonly isAgain: boolean }
  | { readonly sort: 'absent'; readonly kind: KindName; readonly run: number }
  | { readonly sort: 'run'; readonly run: number }
  | { readonly sort: 'site' }
  | { readonly sort: 'aside'; readonly why: string }
  | { readonly sort: 'unplaced'; readonly why: string };

/** A place said but not yet used by a thing. */
export interface PendingPlace {
  readonly feet: number;
  readonly toFeet: number | null;
  readonly sentence: number;
  readonly token: number;
  readonly rule: string;
}

export interface Reading {
  readonly phrases: Phrases;
  readonly sentences: readonly Sentence[];
  /** What a reader taught from examples makes of each sentence. */
  readonly taught: TaughtReading;
  /** What a network makes of the whole talk; null when it was not asked. */
  readonly close: CloseReading | null;
  /** Which lone place belongs to which thing. */
  readonly plan: PlacePlan;
  /** Where runs begin after the first; null until that has begun. */
  runPlan: RunPlan | null;
  runs: RunState[];
  items: Item[];
  /** Who owns each token; null until given. */
  owners: (Owner | null)[];
  pending: PendingPlace | null;
  /** The item talk is about: the target of a follow-up, a correction or a withdrawal. */
  focus: Item[];
  focusSentence: number;
  /** The item last made or spoken of. */
  latest: Item | null;
  /** The last value given, so that "no, thirty nine" knows what it replaces. */
  lastValue: { item: Item; field: FieldName | 'at'; sentence: number } | null;
  /** Values that were said and that nothing took. */
  readonly unclaimed: Map<Phrase, Sentence>;
  /** A value that was called wrong, waiting for the one that stands for it. */
  wrongValue: { item: Item; old: Phrase; sentence: number } | null;
  /** A yes-or-no question about a thing, waiting for its answer. */
  asked: { kind: KindName; item: Item | null; sentence: number }[];
  isSummary: boolean;
  /** An opening named in talk that came before the run it starts. */
  considered: { token: number; rule: string; because: string; isPlaced: boolean }[];
  absent: { run: number; kind: KindName; from: number; to: number }[];
  /** Something seen that may turn out to be a finding once a size, an end or a name is said. */
  tentative: { item: Item; sentence: number } | null;
  /** The sentence that last took something back. */
  withdrawnSentence: number;
  /** What each way on ("two feet on") came to, by its first token: all that is said in one breath with it lies there. */
  readonly steps: Map<number, number>;
  /** Set when the sentence before was nothing but a correction ("No.", "Correction."). */
  isCorrecting: 'strong' | 'weak' | null;
  /** The sentence that announced a list of what is not there ("Absent from this survey."). */
  denialHeading: number;
  /** Several of a kind, announced and placed one by one, and the sentence that last spoke of them. */
  listed: { readonly claim: Claim; readonly sentence: number; readonly from: number; readonly to: number } | null;
  /** What had its place corrected from afar, and the last sentence of that talk. */
  recalled: { readonly item: Item; readonly until: number } | null;
  /** Where the talk draws to its close. */
  readonly ending: Ending;
}

export interface Ending {
  /** The first sentence of the last stretch of talk, in which no run begins. */
  readonly from: number;
  /** The last sentence that says a place. */
  readonly lastPlace: number;
}

export const emptyFields = (): Fields => ({
  to: null,
  position: null,
  clock: null,
  clockTo: null,
  degree: null,
  percent: null,
  inches: null,
  material: null,
  diameterIn: null,
  fromMaterial: null,
  toMaterial: null,
  serves: null,
  angleDeg: null,
});

export function startReading(
  phrases: Phrases,
  sentences: readonly Sentence[],
  taught: TaughtReading,
  close: CloseReading | null,
  plan: PlacePlan,
  ending: Ending,
): Reading {
  return {
    phrases,
    sentences,
    taught,
    close,
    plan,
    runPlan: null,
    runs: [],
    items: [],
    owners: phrases.tokens.map(() => null),
    pending: null,
    focus: [],
    focusSentence: -1,
    latest: null,
    lastValue: null,
    unclaimed: new Map(),
    wrongValue: null,
    asked: [],
    isSummary: false,
    considered: [],
    absent: [],
    tentative: null,
    withdrawnSentence: -2,
    steps: new Map(),
    isCorrecting: null,
    denialHeading: -2,
    listed: null,
    recalled: null,
    ending,
  };
}

export const currentRun = (reading: Reading): RunState | null => reading.runs.at(-1) ?? null;

/** The place of what was found last, for want of another. */
export const SAME_PLACE = 'same place as the thing before';
/** "Right off", "just inside": words for where the count begins. */
export const RUN_START = 'where the run begins';
/** Rules that gave no place where one is to be expected. */
export const NO_PLACE = /^(no place said|nothing but the start was placed yet|moved on since the last place)$/;
/** The note of an item whose place was taken from what stood near, not said for it. */
export const PLACE_GUESSED = 'place guessed';
/** A note of an item that only a doubtful word names. */
export const DOUBTFUL_WORD = 'a doubtful word';
/** The rule that names what only its likeness to other talk names. */
export const LIKENESS = 'by its likeness to other talk';
export const isPlaceGuessed = (item: Item): boolean => item.evidence.notes.includes(PLACE_GUESSED);

/** How an item was placed whose number came in a sentence of its own after it. */
export const PLACE_AFTER = 'place said after';

/** Gives tokens an owner; what has one keeps it. */
export function own(reading: Reading, from: number, to: number, owner: Owner): void {
  for (let at = from; at < to; at += 1) reading.owners[at] ??= owner;
}

/** The furthest place a thing is said to reach, in feet. */
export const furthestOf = (item: Item): number => Math.max(item.at ?? 0, item.fields.to ?? 0);

export const liveItems = (reading: Reading, run: number): Item[] =>
  reading.items.filter((item) => item.run === run && !item.isWithdrawn);

/** The last of what talk is about, in a run. */
export const focusedIn = ({ focus }: Reading, run: RunState | null): Item | undefined =>
  focus.findLast((item) => !item.isWithdrawn && item.run === run?.n);

/** Gives a sentence to an item; a later one is another mention of it. */
export function ownFor(reading: Reading, sentence: Sentence, item: Item): void {
  own(reading, sentence.from, sentence.to, { sort: 'item', item, isAgain: sentence.index !== item.sentence });
  if (sentence.index !== item.sentence) item.again.push({ from: sentence.from, to: sentence.to });
}
