/** Where a claimed thing is, and how that was found out. */
import type { DistanceBasis } from '../../shared/vocabulary/attributes.ts';

export interface Placing {
  at: number | null;
  to: number | null;
  basis: DistanceBasis | null;
  rule: string;
  /** Sentences back to where the place was said. */
  sentencesBack: number;
  /** True when the rule itself is a guess. */
  isGuess: boolean;
}
