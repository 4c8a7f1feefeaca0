/** Decisions about single items: confirm, reject, change, add, merge, split. Each gives null or why it does not fit. */
import type { Changes, EnteredObservation, Subject } from '../../shared/schemas/decision.ts';
import type { Flag } from '../../shared/schemas/draft.ts';
import type { ReviewedObservation } from '../../shared/schemas/reviewed.ts';
import { changeRun } from './apply-run-deeds.ts';
import { type Found, findObservation, findOther } from './find-subject.ts';
import type { Held, ReviewState } from './review-state.ts';
import { changesFit, noteChange, readField, setFields, valuesOf } from './set-fields.ts';
import type { Deed } from './standing-decisions.ts';
import { plainWords, subjectKey } from './subject.ts';

export interface DeedContext {
  readonly state: ReviewState;
  readonly spokenFor: ReadonlySet<string>;
  /** Added observations that a later draft found by itself: the added subject's key to the draft's item. */
  readonly aliases: Map<string, Held<ReviewedObservation>>;
}

type ItemDeed = Exclude<Deed, { action: 'start-run' | 'join-run' }>;
const goneFromDraft = 'What it was about is not in this draft.';
const readsOtherwise = 'It reads otherwise now than when this was decided.';

/** How a flag is named when a decision settles it. */
export function flagName(flag: Pick<Flag, 'reason' | 'about'>): string {
  return `${flag.reason}|${flag.about ?? ''}`;
}

export function applyObservationDeed(deed: ItemDeed, context: DeedContext): string | null {
  if (deed.action === 'add') return add(deed, context);
  if (deed.subject.what === 'observation' || deed.subject.what === 'added') {
    const run = context.state.runs.find(({ key }) => key === subjectKey(deed.subject));
    if (run && 'changes' in deed) return settleRun(deed, run, context);
    return onObservation(deed, context);
  }
  if (deed.action === 'merge' || deed.action === 'split') return goneFromDraft;
  return onOther(deed, context);
}

function onObservation(deed: Exclude<ItemDeed, { action: 'add' }>, context: DeedContext): string | null {
  const found = find(deed.subject, context, 'changes' in deed ? deed.changes : undefined);
  if (!found) return goneFromDraft;
  const { item } = found.held;
  const changes = ('changes' in deed ? deed.changes : undefined) ?? {};
  if (!changesFit(changes, (field) => readField(item, field))) return readsOtherwise;
  switch (deed.action) {
    case 'reject':
      // Better heard words may well name something real: a rejection holds only for what was rejected.
      if (found.isNear) return 'It was rejected, and this draft heard other words for it: look at it again.';
      settle(found.held, deed, 'rejected');
      found.held.wasWrong = true;
      return null;
    case 'change':
      setFields(item, changes, deed);
      item.openFlags = item.openFlags.filter(
        (flag) => !deed.answers?.includes(flagName(flag)) && !(flag.about !== undefined && flag.about in changes),
      );
      if (Object.keys(changes).length > 0) found.held.wasWrong = true;
      if (item.openFlags.length === 0 && item.reopened.length === 0) settle(found.held, deed, 'confirmed');
      return null;
    case 'confirm': {
      setFields(item, changes, deed);
      if (Object.keys(changes).length > 0) found.held.wasWrong = true;
      const reopened = Object.entries(deed.values).flatMap(([field, confirmed]) => {
        const now = readField(item, field);
        return now === undefined || now === confirmed ? [] : [{ field, confirmed, now }];
      });
      if (reopened.length > 0) {
        item.reviewState = 'open';
        item.reopened = reopened;
        return null;
      }
      settle(found.held, deed, 'confirmed');
      return null;
    }
    case 'merge':
      return merge(deed, found.held, context);
    case 'split': {
      setFields(item, changes, deed);
      found.held.wasWrong = true;
      settle(found.held, deed, 'confirmed');
      insert(deed, deed.observation, 'split', context.state);
      return null;
    }
  }
}

function find(subject: Subject, context: DeedContext, changes?: Changes): Found<ReviewedObservation> | null {
  const alias = context.aliases.get(subjectKey(subject));
  if (alias) return { held: alias, isNear: false };
  return findObservation(context.state, subject, context.spokenFor, changes);
}

function settle<T extends { reviewState: string; decidedBy: unknown }>(
  held: Held<T>,
  deed: Deed,
  reviewState: 'confirmed' | 'rejected',
): void {
  Object.assign(held.item, { reviewState, decidedBy: { person: deed.person, time: deed.time, decision: deed.id } });
  if ('openFlags' in held.item) Object.assign(held.item, { openFlags: [], reopened: [] });
}

function onOther(deed: Extract<ItemDeed, { action: 'confirm' | 'reject' | 'change' }>, context: DeedContext) {
  const { state, spokenFor } = context;
  const subject = deed.subject;
  if (subject.what === 'run') {
    const run = findOther(state.runs, subject, spokenFor)?.held;
    return run ? settleRun(deed, run, context) : 'The run it was about is not in this draft.';
  }
  if (subject.what === 'site') {
    const field = state.site.get(subject.name);
    if (!field) return goneFromDraft;
    const change = 'changes' in deed ? deed.changes?.value : undefined;
    if (change) {
      if (field.item.value !== change.was && field.item.value !== change.now) return readsOtherwise;
      if (field.item.value !== change.now) {
        noteChange(field.item, 'value', { was: field.item.value, now: change.now }, deed);
        field.item.value = change.now ?? '';
        field.wasWrong = true;
      }
    } else if (deed.action === 'confirm' && 'value' in deed.values && deed.values.value !== field.item.value) {
      return readsOtherwise;
    }
    settle(field, deed, deed.action === 'reject' ? 'rejected' : 'confirmed');
    return null;
  }
  const list = subject.what === 'absent' ? state.absent : subject.what === 'unplaced' ? state.unplaced : state.setAside;
  const found = findOther<{ reviewState: string; decidedBy: unknown }>(list, subject, spokenFor);
  if (!found) return goneFromDraft;
  settle(found.held, deed, deed.action === 'reject' ? 'rejected' : 'confirmed');
  found.held.wasWrong = deed.action === 'reject';
  return null;
}

function settleRun(deed: ItemDeed, run: ReviewState['runs'][number], { state }: DeedContext): string | null {
  const changes = ('changes' in deed ? deed.changes : undefined) ?? {};
  const why = changeRun(state, run, changes, { person: deed.person, time: deed.time });
  if (why === null) settle(run, deed, 'confirmed');
  return why;
}

function add(deed: Extract<Deed, { action: 'add' }>, context: DeedContext): string | null {
  const { state, spokenFor } = context;
  const entered = deed.observation;
  const twin = findObservation(
    state,
    { what: 'observation', kind: entered.kind, at: entered.at, words: plainWords(entered.heard.text), nth: 0 },
    spokenFor,
  );
  const isFoundByDraft =
    twin !== null &&
    twin.held.item.source === 'draft' &&
    twin.held.item.heard.start < entered.heard.end &&
    entered.heard.start < twin.held.item.heard.end &&
    twin.held.item.decidedBy === null;
  const from = deed.from && markTaken(deed.from, deed, context, `added-${deed.id}`);
  if (isFoundByDraft && !from) {
    // The new draft found by itself what had been added by hand: one thing, as the person entered it.
    const { item } = twin.held;
    const changes = Object.fromEntries(
      Object.entries(valuesOf({ ...item, ...entered })).map(([field, now]) => [
        field,
        { was: readField(item, field)!, now },
      ]),
    );
    setFields(item, changes, deed);
    settle(twin.held, deed, 'confirmed');
    context.aliases.set(`added|${deed.id}`, twin.held);
    return null;
  }
  insert(deed, entered, 'added', state);
  return deed.from && !from
    ? 'It stands, but the stretch it was made of is gone: see that it is not there twice.'
    : null;
}

/** Notes on the stretch what became of it. False when the stretch is not in this draft. */
function markTaken(from: Subject, deed: Deed, { state, spokenFor }: DeedContext, becameId: string): boolean {
  if (from.what === 'observation' || from.what === 'added') return true;
  if (from.what === 'absent') {
    const held = findOther(state.absent, from, spokenFor)?.held;
    if (!held) return false;
    settle(held, deed, 'rejected');
    held.wasWrong = true;
    return true;
  }
  const held = findOther(from.what === 'unplaced' ? state.unplaced : state.setAside, from, spokenFor)?.held;
  if (!held) return false;
  settle(held, deed, 'rejected');
  held.item.becameId = becameId;
  held.wasWrong = true;
  return true;
}

function insert(deed: Deed, entered: EnteredObservation, source: 'added' | 'split', state: ReviewState): void {
  const subject = { what: 'added', id: deed.id } as const;
  const item: ReviewedObservation = {
    ...entered,
    subject,
    id: `added-${deed.id}`,
    again: [],
    confidence: 1,
    review: [],
    reviewState: 'confirmed',
    decidedBy: { person: deed.person, time: deed.time, decision: deed.id },
    changed: {},
    openFlags: [],
    reopened: [],
    isDrawn: false,
    source,
  };
  const after = state.observations.findLastIndex((held) => held.item.heard.start <= item.heard.start);
  state.observations.splice(after + 1, 0, { item, subject, key: subjectKey(subject), wasWrong: false, isGone: false });
}

/** What is the same thing becomes one: the others' talk goes to `again`, and fields nobody named are taken over. */
function merge(
  deed: Extract<Deed, { action: 'merge' }>,
  kept: Held<ReviewedObservation>,
  context: DeedContext,
): string | null {
  const others = deed.others.map((subject) => find(subject, context)?.held);
  if (others.some((held) => !held || held === kept)) return 'One of those it joined is not in this draft.';
  for (const other of others as Held<ReviewedObservation>[]) {
    const given = Object.entries(valuesOf(other.item)).filter(
      ([field, value]) => value !== null && readField(kept.item, field) === null,
    );
    setFields(kept.item, Object.fromEntries(given.map(([field, now]) => [field, { was: null, now }])), deed);
    kept.item.again = [...kept.item.again, other.item.heard, ...other.item.again].sort((a, b) => a.start - b.start);
    other.isGone = true;
  }
  kept.wasWrong = true;
  settle(kept, deed, 'confirmed');
  return null;
}
