/**
 * A phrase: a stretch of talk that a rule has given a meaning. Each keeps its family, the shape that found it and
 * the tokens it covers, so that the reading can always be explained.
 */
import type { Degree, Direction, Position } from '../../shared/vocabulary/attributes.ts';
import type { KindName } from '../../shared/vocabulary/kinds/index.ts';
import type { MaterialName } from '../../shared/vocabulary/materials.ts';
import type { ServiceName } from '../../shared/vocabulary/services.ts';
import type { AssertionCue } from './assertion/lexicon.ts';
import type { CameraCue } from './camera/lexicon.ts';
import type { CorrectionCue } from './correction/lexicon.ts';

export interface Respelling {
  readonly heard: string;
  readonly taken: string;
}

/** How a distance was given, from the surest frame to the barest number. */
export type DistanceFrame = 'unit' | 'counter' | 'at' | 'bare';

export interface DistanceValue {
  readonly feet: number;
  /** The other end, when a stretch was said. */
  readonly toFeet: number | null;
  readonly frame: DistanceFrame;
  /** Several places said in one breath for one thing ("41, 43 and 47"). */
  readonly alsoFeet?: readonly number[];
  /** True where the words say where a stretch ends, not where it starts ("out of it at 38"). */
  readonly isEnd?: boolean;
  readonly respelled?: Respelling;
}

export interface RelativeValue {
  /** Feet from the anchor, negative when short of it; null for "halfway" and "in the middle". */
  readonly feet: number | null;
  /** Where the words naming the anchor start and end; null means the place at hand. */
  readonly anchor: { readonly from: number; readonly to: number } | null;
  readonly shape: 'offset' | 'inside' | 'middle' | 'start' | 'end' | 'same' | 'between';
}

export type PhraseValue =
  | { readonly family: 'distance'; readonly distance: DistanceValue }
  | { readonly family: 'relative'; readonly relative: RelativeValue }
  | { readonly family: 'clock'; readonly hour: number; readonly toHour: number | null }
  | { readonly family: 'share'; readonly percent: number; readonly isBare: boolean }
  | { readonly family: 'inches'; readonly inches: number }
  | { readonly family: 'diameter'; readonly inches: number }
  | { readonly family: 'angle'; readonly degrees: number; readonly count: number; readonly isNoun: boolean }
  | { readonly family: 'count'; readonly what: string }
  /** How long a thing is along the pipe. */
  | { readonly family: 'length'; readonly feet: number }
  | {
      readonly family: 'thing';
      readonly kind: KindName;
      readonly source: 'word' | 'sign' | 'weak';
      /** The word means something else about as often. */
      readonly isDoubtful?: true;
      readonly respelled?: Respelling;
    }
  | { readonly family: 'material'; readonly material: MaterialName; readonly respelled?: Respelling }
  | { readonly family: 'position'; readonly position: Position }
  | { readonly family: 'degree'; readonly degree: Degree }
  | { readonly family: 'service'; readonly service: ServiceName }
  | { readonly family: 'heading'; readonly direction: Direction; readonly isPlain: boolean }
  | { readonly family: 'assertion'; readonly cue: AssertionCue }
  | { readonly family: 'correction'; readonly cue: CorrectionCue }
  | { readonly family: 'camera'; readonly cue: CameraCue };

export type Phrase = PhraseValue & {
  readonly from: number;
  readonly to: number;
  /** The shape that found it. */
  readonly rule: string;
};

export type PhraseOf<Family extends PhraseValue['family']> = Extract<Phrase, { family: Family }>;

/** The phrases of one family, in order. */
export function phrasesOf<Family extends PhraseValue['family']>(
  phrases: readonly Phrase[],
  family: Family,
): PhraseOf<Family>[] {
  return phrases.filter((phrase): phrase is PhraseOf<Family> => phrase.family === family);
}
