/** The draft opened up for decisions: every item with its subject, ready to be changed in a copy. */
import type { Subject } from '../../shared/schemas/decision.ts';
import type { Draft } from '../../shared/schemas/draft.ts';
import type {
  OrphanedDecision,
  ReviewedAbsent,
  ReviewedAside,
  ReviewedObservation,
  ReviewedRun,
  ReviewedSiteField,
} from '../../shared/schemas/reviewed.ts';
import { draw, drawSize } from './silent-errors.ts';
import { type DraftSubjects, subjectKey, subjectsOf } from './subject.ts';

/** An item and how decisions name it. `wasWrong`: a person had to correct it. */
export interface Held<T> {
  item: T;
  readonly subject: Subject;
  readonly key: string;
  wasWrong: boolean;
  isGone: boolean;
}

export interface ReviewState {
  observations: Held<ReviewedObservation>[];
  runs: Held<ReviewedRun>[];
  readonly absent: Held<ReviewedAbsent>[];
  readonly unplaced: Held<ReviewedAside>[];
  readonly setAside: Held<ReviewedAside>[];
  readonly site: Map<string, Held<ReviewedSiteField>>;
  readonly orphans: OrphanedDecision[];
}

/** How many of the stretches set aside and the denials are listened to. */
const asideDraw = 2;

interface Prepared {
  readonly subjects: DraftSubjects;
  readonly keys: Readonly<Record<keyof DraftSubjects, readonly string[]>>;
  readonly drawn: ReadonlySet<string>;
  readonly drawnAsides: ReadonlySet<string>;
}

/** What hangs on the draft alone is worked out once: the page lays decisions over the same draft at every key. */
const preparedDrafts = new WeakMap<Draft, Prepared>();

function prepare(draft: Draft): Prepared {
  const known = preparedDrafts.get(draft);
  if (known) return known;
  const subjects = subjectsOf(draft);
  const keys = {
    observations: subjects.observations.map(subjectKey),
    runs: subjects.runs.map(subjectKey),
    absent: subjects.absent.map(subjectKey),
    unplaced: subjects.unplaced.map(subjectKey),
    setAside: subjects.setAside.map(subjectKey),
  };
  const unflagged = keys.observations.filter((_, index) => draft.observations[index]!.review.length === 0);
  const asideKeys = [...keys.absent, ...keys.setAside];
  const prepared = {
    subjects,
    keys,
    drawn: draw(draft.recording.sha256, unflagged, drawSize(unflagged.length)),
    drawnAsides: draw(draft.recording.sha256, asideKeys, Math.min(asideDraw, asideKeys.length)),
  };
  preparedDrafts.set(draft, prepared);
  return prepared;
}

/** Copies the draft into items that decisions may change. The draft itself must not be changed after this. */
export function openDraft(original: Draft): ReviewState {
  const { subjects, keys, drawn, drawnAsides } = prepare(original);
  const draft = structuredClone(original);

  // Added to the copy in place: spreading hundreds of wide records at every key would be felt.
  const hold = <T extends object, More extends object>(item: T, more: More, subject: Subject, key: string) => ({
    item: Object.assign(item, more, { subject }),
    subject,
    key,
    wasWrong: false,
    isGone: false,
  });
  const fresh = (review: ReviewedObservation['review']) => ({
    reviewState: review.length > 0 ? ('open' as const) : ('unflagged' as const),
    decidedBy: null,
    changed: {},
    openFlags: [...review],
    reopened: [],
    isDrawn: false,
  });
  const freshAside = (reviewState: 'open' | 'unflagged', key: string) => ({
    reviewState,
    decidedBy: null,
    isDrawn: drawnAsides.has(key),
  });

  return {
    observations: draft.observations.map((o, index) => {
      const key = keys.observations[index]!;
      const more = { ...fresh(o.review), source: 'draft' as const, isDrawn: drawn.has(key) };
      return hold(o, more, subjects.observations[index]!, key);
    }),
    runs: draft.runs.map((run, index) => {
      const more = { ...fresh(run.review), source: 'draft' as const, counterStart: 0 };
      return hold(run, more, subjects.runs[index]!, keys.runs[index]!);
    }),
    absent: draft.absent.map((a, index) => {
      const key = keys.absent[index]!;
      return hold(a, freshAside('unflagged', key), subjects.absent[index]!, key);
    }),
    unplaced: draft.unplaced.map((a, index) => {
      const key = keys.unplaced[index]!;
      return hold(a, { ...freshAside('open', key), becameId: null }, subjects.unplaced[index]!, key);
    }),
    setAside: draft.setAside.map((a, index) => {
      const key = keys.setAside[index]!;
      return hold(a, { ...freshAside('unflagged', key), becameId: null }, subjects.setAside[index]!, key);
    }),
    site: new Map(
      Object.entries(draft.site).map(([name, field]) => [
        name,
        hold(field, fresh(field.review), { what: 'site', name } as const, `site|${name}`),
      ]),
    ),
    orphans: [],
  };
}
