/** What one file in `kinds/` says: everything the program knows about one kind of observation. */
import type { AttributeName, EndReason } from './attributes.ts';

/**
 * What an example sentence must give. The kind is that of the file and the status "present" unless said otherwise;
 * attributes that are not named must be empty, and no other observation may come out of the sentence.
 */
export interface ExampleReading {
  readonly kind?: string;
  readonly status?: string;
  readonly at?: number | null;
  readonly to?: number | null;
  readonly [field: string]: unknown;
}

export interface Example {
  readonly text: string;
  readonly gives: ExampleReading | readonly ExampleReading[];
}

export interface FlaggedExample extends Example {
  /** The review reason that must be raised, or "suspected" where the status itself is the warning. */
  readonly flag: string;
}

export interface Misheard {
  /** What the recogniser prints, in the notation of `words`. */
  readonly heard: string;
  /** The word that was said. */
  readonly said: string;
  /** What must stand near for the respelling to be believed. */
  readonly needs: 'distance' | 'article' | 'material' | 'nothing';
}

export interface ReportWording {
  /** One sentence for a buyer: what this means for the line. */
  readonly meaning: string;
  /** What to do next when nothing in the grade rules says otherwise. */
  readonly next: string;
  /** The glossary entry: what the word means. */
  readonly glossary: string;
}

/**
 * Notation of `words`: space-separated words; `a|b` either; a word ending in `?` may be left out;
 * `*` stands for up to three words of any sort; `^` and `$` for the edges of a sentence; `<service>` or `<liner>` for any name of a service or of that material.
 */
export interface Kind {
  readonly name: string;
  readonly group: 'fitting' | 'defect' | 'limit';
  /** Singular and plural as the report and the page print them. */
  readonly title: string;
  readonly plural: string;
  readonly takes: readonly AttributeName[];
  /** "opening": the thing is also a way in, or what the camera heads for, and then no finding. */
  readonly role?: 'opening';
  /** True when it is also what is done about a pipe: "you'll need a patch at thirty" finds none. */
  readonly isRemedy?: boolean;
  /** What is found at the far end of a stretch of it ("liner from twelve to fifty"). */
  readonly endsAs?: string;
  /** True when it has no place in the pipe. */
  readonly isPlaceless?: boolean;
  /** What is found at the same place wherever a run ends with it. */
  readonly implies?: string;
  /** True when it lies where its run ends, wherever in the talk it is told of. */
  readonly liesAtEnd?: boolean;
  /** True when a description of it needs an opening named with it or just before ("it won't turn"). */
  readonly signsNeedOpening?: boolean;
  /** True when a description of it gives way to another thing named beside it ("roots coming in from the top" is no branch). */
  readonly signsYield?: boolean;
  /** True when it is at one place: an end told after it is that of something else. */
  readonly isSpot?: boolean;
  /** The kind that a description of this one belongs to when both are named in one sentence. */
  readonly yieldsTo?: string;
  /** True when a share said with it can be that of another thing: "roots, sixty percent blocked". */
  readonly tellsShare?: boolean;
  /** Kinds it begins as: one of them named in the same breath is the same thing ("cracked, and a piece is gone"). */
  readonly outgrows?: readonly string[];
  /**
   * What an everyday word of it needs to be believed: a size or share; being pointed at; or any sign that it was noticed here
   * (a place, a size, being pointed at, standing alone).
   */
  readonly weakNeeds?: 'measure' | 'pointing' | 'notice';
  /** True when only left and right are said of it. */
  readonly isSideways?: boolean;
  /** True when it joins two sizes of pipe. */
  readonly changesSize?: boolean;
  /** What it is called when the camera goes with the flow. */
  readonly whenDownstream?: string;
  /** The reason it gives where the talk says that a run ends at it; passed on the way it ends nothing. */
  readonly mayEnd?: EndReason;
  /** The reason it gives where nothing is seen past it. */
  readonly endsWhenLast?: EndReason;
  /** The reason it gives for the end of a run. */
  readonly ends?: EndReason;
  /** Names of the thing. */
  readonly words: readonly string[];
  /** Descriptions that amount to the thing without naming it ("a piece is missing"). */
  readonly signs?: readonly string[];
  /** Descriptions that amount to the thing only where the camera goes up the line. */
  readonly signsUpstream?: readonly string[];
  /** Everyday words that mean the thing only where a place stands with them ("ball", "bag"). */
  readonly weakWords?: readonly string[];
  /** Everyday words that mean the thing about as often as something else: read like `weakWords`, and always flagged. */
  readonly doubtfulWords?: readonly string[];
  /** Stretches that hold a word of this kind and mean something else ("root cause", "scale of one to ten"). */
  readonly notWords?: readonly string[];
  readonly misheard?: readonly Misheard[];
  readonly examples: {
    /** Must give it. */
    readonly says: readonly Example[];
    /** Must give it, with a flag. */
    readonly unsure?: readonly FlaggedExample[];
    /** Holds its words and must give no observation of this kind. */
    readonly never: readonly string[];
    /** Read wrongly as yet. An empty `gives` stands for a sentence that belongs to `never`. */
    readonly notYet?: readonly (Example | FlaggedExample)[];
  };
  readonly report: ReportWording;
}
