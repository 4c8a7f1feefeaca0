/**
 * What a sentence of the talk may hold, taken by itself and believed by nobody: what the review offers to a person who
 * adds a finding or corrects one. Never written to a file.
 */
import type { AttributeName, Status } from '../vocabulary/attributes.ts';
import type { KindName } from '../vocabulary/kinds/index.ts';
import type { Heard } from './draft.ts';

/** A thing the sentence may name, with what is said of it. `kind` is null where no name was understood. */
export interface FindingHint {
  readonly kind: KindName | null;
  readonly status: Status;
  readonly at: number | null;
  /** The place stands in its own sentence, and is not that of something before. */
  readonly isPlaced: boolean;
  /** Said as being there now; not denied, asked, told of another time or taught. */
  readonly isMeant: boolean;
  readonly values: Readonly<Partial<Record<AttributeName, string | number>>>;
  /** Its own part of the sentence. */
  readonly heard: Heard;
}

/** One value that was said. `distance` may be where a thing begins or ends; `number` is one nobody found a use for. */
export interface ValueHint {
  readonly field: 'kind' | 'distance' | 'number' | Exclude<AttributeName, 'to' | 'fromMaterial' | 'toMaterial'>;
  readonly value: string | number;
  /** Where a stretch was said, its other end. */
  readonly to?: number;
}

export interface TalkHint {
  readonly heard: Heard;
  readonly findings: readonly FindingHint[];
  readonly values: readonly ValueHint[];
}
