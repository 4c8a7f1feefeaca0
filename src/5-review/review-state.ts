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
import { subjectKey, subjectsOf } from './subject.ts';

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

export function openDraft(draft: Draft): ReviewState {
  const subjects = subjectsOf(draft);
  const keys = subjects.observations.map(subjectKey);
  const unflagged = keys.filter((_, index) => draft.observations[index]!.review.length === 0);
  const asideKeys = [...subjects.absent, ...subjects.setAside].map(subjectKey);
  const drawn = draw(draft.recording.sha256, unflagged, drawSize(unflagged.length));
  const drawnAsides = draw(draft.recording.sha256, asideKeys, Math.min(asideDraw, asideKeys.length));

  const hold = <T extends object>(item: T, subject: Subject): Held<T & { subject: Subject }> => ({
    item: { ...item, subject },
    subject,
    key: subjectKey(subject),
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
    observations: draft.observations.map((o, index) =>
      hold(
        { ...o, ...fresh(o.review), source: 'draft' as const, isDrawn: drawn.has(keys[index]!) },
        subjects.observations[index]!,
      ),
    ),
    runs: draft.runs.map((run, index) =>
      hold({ ...run, ...fresh(run.review), source: 'draft' as const, counterStart: 0 }, subjects.runs[index]!),
    ),
    absent: draft.absent.map((a, index) =>
      hold({ ...a, ...freshAside('unflagged', subjectKey(subjects.absent[index]!)) }, subjects.absent[index]!),
    ),
    unplaced: draft.unplaced.map((a, index) =>
      hold({ ...a, ...freshAside('open', ''), becameId: null }, subjects.unplaced[index]!),
    ),
    setAside: draft.setAside.map((a, index) =>
      hold(
        { ...a, ...freshAside('unflagged', subjectKey(subjects.setAside[index]!)), becameId: null },
        subjects.setAside[index]!,
      ),
    ),
    site: new Map(
      Object.entries(draft.site).map(([name, field]) => [
        name,
        hold({ ...field, ...fresh(field.review) }, { what: 'site', name }),
      ]),
    ),
    orphans: [],
  };
}
