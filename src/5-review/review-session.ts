/**
 * One open review: the draft, the log of decisions, and everyone who looks on. Decisions are judged here before they
 * are written: one that would not fit is refused with a sentence, so that the log holds none that never applied.
 */
import { z } from 'zod';
import {
  type Decision,
  type DecisionBody,
  decisionBodySchema,
  type EnteredObservation,
} from '../../shared/schemas/decision.ts';
import { observationSchema, runSchema } from '../../shared/schemas/draft.ts';
import type { TalkHint } from '../../shared/schemas/hint.ts';
import type { Reviewed } from '../../shared/schemas/reviewed.ts';
import { endReasons } from '../../shared/vocabulary/attributes.ts';
import { applyDecisions } from './apply-decisions.ts';
import type { DecisionLog } from './decision-log.ts';
import type { Inspection } from './inspection.ts';
import { readHints } from './read-hints.ts';
import { ReviewError } from './review-error.ts';
import { standingDecisions } from './standing-decisions.ts';

/** A decision as the page sends it. `id` is made by the page: sent twice, it is written once. */
export const requestSchema = z.object({ id: z.string().min(8).max(64), body: decisionBodySchema });

export type ReviewEvent =
  | { readonly type: 'decision'; readonly decision: Decision }
  | { readonly type: 'signed' }
  | { readonly type: 'sound-ready' }
  | { readonly type: 'own-words' }
  | { readonly type: 'problem'; readonly sentence: string };

export interface ReviewSession {
  readonly inspection: Inspection;
  readonly log: DecisionLog;
  reviewed(): Reviewed;
  /** What each sentence of the talk may hold, for the page to offer. Empty without words. */
  hints(): Promise<readonly TalkHint[]>;
  /** @throws ReviewError: it does not fit what is there, or could not be written. */
  decide(request: { id: string; body: DecisionBody }): Promise<Decision>;
  /** Runs `work` while no decision is being written. */
  alone<T>(work: () => Promise<T>): Promise<T>;
  subscribe(listener: (event: ReviewEvent) => void): () => void;
  announce(event: ReviewEvent): void;
}

export function openSession(inspection: Inspection, log: DecisionLog, person: () => string): ReviewSession {
  const listeners = new Set<(event: ReviewEvent) => void>();
  const announce = (event: ReviewEvent) => {
    for (const listener of listeners) listener(event);
  };
  // One after the other: a decision is judged against all that were written before it.
  let queue: Promise<unknown> = Promise.resolve();

  async function decideNow({ id, body }: { id: string; body: DecisionBody }): Promise<Decision> {
    const known = log.decisions.find((decision) => decision.id === id);
    if (known) return known;
    const why = whyNot(inspection, log.decisions, id, body);
    if (why) throw new ReviewError(why);
    const decision = await log.append(body, { id, person: person() });
    announce({ type: 'decision', decision });
    return decision;
  }

  function alone<T>(work: () => Promise<T>): Promise<T> {
    const done = queue.then(work);
    queue = done.catch(() => undefined);
    return done;
  }

  let hints: Promise<readonly TalkHint[]> | null = null;
  return {
    inspection,
    log,
    announce,
    alone,
    reviewed: () => applyDecisions(inspection.draft, log.decisions),
    hints() {
      hints ??= inspection.words ? readHints(inspection.words) : Promise.resolve([]);
      return hints;
    },
    decide: (request) => alone(() => decideNow(request)),
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** The sentence why a decision cannot be made, or null when it can. */
function whyNot({ draft }: Inspection, decisions: readonly Decision[], id: string, body: DecisionBody): string | null {
  if (body.action === 'undo' || body.action === 'redo') {
    const { undoable, redoable } = standingDecisions(decisions);
    const isThere = (body.action === 'undo' ? undoable : redoable).includes(body.of);
    return isThere ? null : 'That was changed in another window: look at it again.';
  }
  const badValue = whyValueIsBad(body);
  if (badValue) return badValue;
  const stamp = { n: decisions.length + 1, id, time: '2000-01-01T00:00:00.000Z', person: '', previous: null };
  const after = applyDecisions(draft, [...decisions, { ...body, ...stamp }]);
  const misfit = after.orphanedDecisions.find((orphan) => orphan.decision.id === id);
  if (misfit) return misfit.why;
  if (body.action !== 'confirm') return null;
  const before = applyDecisions(draft, decisions);
  const reopenedBefore = countReopened(before);
  return countReopened(after) > reopenedBefore ? 'It was changed in another window: look at it again.' : null;
}

function countReopened(reviewed: Reviewed): number {
  return reviewed.observations.filter(({ reopened }) => reopened.length > 0).length;
}

const runFieldSchemas: Record<string, z.ZodType> = {
  access: runSchema.shape.access,
  direction: runSchema.shape.direction,
  endAt: z.number().nonnegative().nullable(),
  endReason: z.enum(endReasons).nullable(),
  counterStart: z.number(),
  value: z.union([z.string(), z.number(), z.boolean()]),
};

function whyValueIsBad(body: DecisionBody): string | null {
  const changes = 'changes' in body ? (body.changes ?? {}) : {};
  for (const [field, { now }] of Object.entries(changes)) {
    const schema = runFieldSchemas[field] ?? (observationSchema.shape as Record<string, z.ZodType>)[field];
    if (!schema?.safeParse(now).success) return `"${String(now)}" cannot be the ${field} of this.`;
    if ((field === 'at' || field === 'to') && typeof now === 'number' && now < 0) return 'A distance is 0 or more.';
  }
  const entered: EnteredObservation | null = 'observation' in body ? body.observation : null;
  return entered && entered.at !== null && entered.at < 0 ? 'A distance is 0 or more.' : null;
}
