/** Undo and redo without limit: which decisions count, and what can be taken back or put back next. */
import type { Decision } from '../../shared/schemas/decision.ts';

export type Deed = Exclude<Decision, { action: 'undo' | 'redo' }>;

export interface StandingDecisions {
  /** The decisions that count, in the order they were made. */
  readonly deeds: readonly Deed[];
  /** Ids, the one to take back next comes last. */
  readonly undoable: readonly string[];
  /** Ids, the one to put back next comes last. */
  readonly redoable: readonly string[];
}

/** An undo of what is not standing, and a redo of what is, change nothing. A new decision ends redoing. */
export function standingDecisions(decisions: readonly Decision[]): StandingDecisions {
  const standing = new Map<string, Deed>();
  const order = new Map<string, number>();
  let redoable: Deed[] = [];
  for (const decision of decisions) {
    if (decision.action === 'undo') {
      const deed = standing.get(decision.of);
      if (!deed) continue;
      standing.delete(decision.of);
      redoable.push(deed);
    } else if (decision.action === 'redo') {
      const deed = redoable.find((candidate) => candidate.id === decision.of);
      if (!deed) continue;
      redoable = redoable.filter((candidate) => candidate !== deed);
      standing.set(deed.id, deed);
    } else {
      standing.set(decision.id, decision);
      order.set(decision.id, decision.n);
      redoable = [];
    }
  }
  const deeds = [...standing.values()].sort((a, b) => order.get(a.id)! - order.get(b.id)!);
  return { deeds, undoable: deeds.map((deed) => deed.id), redoable: redoable.map((deed) => deed.id) };
}
