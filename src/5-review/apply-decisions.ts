/**
 * Stage 5, the core: a draft and decisions in, the reviewed inspection out. Pure; the page runs it too.
 *
 * In: a draft as stage 4 wrote it, and decisions in the order of `decisions.jsonl`.
 * Out: `Reviewed` (shared/schemas/reviewed.ts): every item of the draft with what a person settled about it. The draft
 * is never changed.
 * Method: undone decisions are dropped, the others are applied one after the other. Each finds its subject by content
 * (`find-subject.ts`), so it holds on a new draft of the same recording. What it cannot find, or what starts from other
 * values than are there, is not applied and comes back in `orphanedDecisions` with a sentence why. A confirmation
 * keeps the values that were on screen: when the new draft reads otherwise, the observation opens again.
 */
import type { Decision } from '../../shared/schemas/decision.ts';
import type { Draft } from '../../shared/schemas/draft.ts';
import type { Reviewed } from '../../shared/schemas/reviewed.ts';
import { applyObservationDeed, type DeedContext } from './apply-observation-deeds.ts';
import { joinRun, startRun } from './apply-run-deeds.ts';
import { nearestByWords } from './find-subject.ts';
import { type Held, openDraft, type ReviewState } from './review-state.ts';
import { listeningResult } from './silent-errors.ts';
import { type Deed, standingDecisions } from './standing-decisions.ts';
import { subjectKey } from './subject.ts';

/** Lays `decisions` over `draft`. Never throws on a decision that does not fit: it is reported instead. */
export function applyDecisions(draft: Draft, decisions: readonly Decision[]): Reviewed {
  const state = openDraft(draft);
  const { deeds, undoable, redoable } = standingDecisions(decisions);
  const context: DeedContext = { state, spokenFor: keysSpokenFor(state, deeds), aliases: new Map() };
  for (const deed of deeds) {
    const why = applyDeed(deed, context);
    if (why !== null) {
      const words = 'subject' in deed && 'words' in deed.subject ? deed.subject.words : '';
      const { previous: _, ...decision } = deed;
      state.orphans.push({ decision, why, nearestId: nearestByWords(state, words)?.item.id ?? null });
    }
  }
  return gatherReviewed(draft, state, undoable, redoable);
}

/** Applies one decision. Gives null, or the sentence why it does not fit. */
function applyDeed(deed: Deed, context: DeedContext): string | null {
  switch (deed.action) {
    case 'start-run':
      return startRun(context.state, deed);
    case 'join-run':
      return joinRun(context.state, deed);
    default:
      return applyObservationDeed(deed, context);
  }
}

/** Items that some decision names exactly are not up for being found by likeness. */
function keysSpokenFor(state: ReviewState, deeds: readonly Deed[]): Set<string> {
  const present = new Set(
    [...state.observations, ...state.runs, ...state.absent, ...state.unplaced, ...state.setAside].map(({ key }) => key),
  );
  const named = deeds.flatMap((deed) => [
    ...('subject' in deed ? [deed.subject] : []),
    ...(deed.action === 'merge' ? deed.others : []),
  ]);
  return new Set(named.map(subjectKey).filter((key) => present.has(key)));
}

function gatherReviewed(
  draft: Draft,
  state: ReviewState,
  undoable: readonly string[],
  redoable: readonly string[],
): Reviewed {
  const items = <T>(list: Iterable<Held<T>>): T[] => [...list].filter((held) => !held.isGone).map((held) => held.item);
  const observations = items(state.observations);
  const runs = items(state.runs);
  const unplaced = items(state.unplaced);
  const site = Object.fromEntries([...state.site].map(([name, held]) => [name, held.item]));
  const isOpen = (item: { reviewState: string }) => item.reviewState === 'open';
  return {
    schema: 'lineword/reviewed@1',
    unit: draft.unit,
    recording: draft.recording,
    site,
    runs,
    observations,
    absent: items(state.absent),
    unplaced,
    setAside: items(state.setAside),
    orphanedDecisions: state.orphans,
    openCount: [...observations, ...runs, ...unplaced, ...Object.values(site)].filter(isOpen).length,
    listening: listened(state.observations),
    asideListening: listened([...state.absent, ...state.setAside]),
    undoable: [...undoable],
    redoable: [...redoable],
  };
}

function listened(list: readonly Held<{ isDrawn: boolean; decidedBy: unknown }>[]) {
  const drawn = list.filter(({ item }) => item.isDrawn);
  const done = drawn.filter(({ item }) => item.decidedBy !== null);
  return listeningResult(drawn.length, done.length, done.filter(({ wasWrong }) => wasWrong).length);
}
