/**
 * What the inspector goes through, one at a time. Pure. First everything flagged, in order of site, run and distance,
 * then stretches that could not be placed, then the unflagged items drawn for listening. Settled items keep their
 * place, so that one can go back to them.
 */
import type { Heard } from '../../shared/schemas/draft.ts';
import type {
  Reviewed,
  ReviewedAbsent,
  ReviewedAside,
  ReviewedObservation,
  ReviewedRun,
  ReviewedSiteField,
} from '../../shared/schemas/reviewed.ts';
import { subjectKey } from './subject.ts';

export type QueueItem = {
  /** The key of its subject. */
  readonly key: string;
  readonly isSettled: boolean;
  /** `listen`: it carries no flag and was drawn. `other`: chosen by the person from the line or the talk. */
  readonly why: 'flagged' | 'listen' | 'other';
  readonly heard: Heard | null;
} & (
  | { readonly what: 'site'; readonly name: string; readonly item: ReviewedSiteField }
  | { readonly what: 'run'; readonly item: ReviewedRun }
  | { readonly what: 'observation'; readonly item: ReviewedObservation }
  | { readonly what: 'absent'; readonly item: ReviewedAbsent }
  | { readonly what: 'unplaced' | 'set-aside'; readonly item: ReviewedAside }
);

/** Every item of the inspection by the key of its subject. */
export function itemsByKey(reviewed: Reviewed): Map<string, QueueItem> {
  const items: QueueItem[] = [
    ...Object.entries(reviewed.site).map(([name, item]) => of({ what: 'site' as const, name, item })),
    ...reviewed.runs.map((item) => of({ what: 'run' as const, item })),
    ...reviewed.observations.map((item) => of({ what: 'observation' as const, item })),
    ...reviewed.absent.map((item) => of({ what: 'absent' as const, item })),
    ...reviewed.unplaced.map((item) => of({ what: 'unplaced' as const, item })),
    ...reviewed.setAside.map((item) => of({ what: 'set-aside' as const, item })),
  ];
  return new Map(items.map((item) => [item.key, item]));
}

/** The queue in its order. */
export function queueOf(items: ReadonlyMap<string, QueueItem>): QueueItem[] {
  const all = [...items.values()];
  const flagged = all.filter((item) => item.why === 'flagged' && item.what !== 'unplaced');
  const unplaced = all.filter((item) => item.what === 'unplaced');
  const listens = all.filter((item) => item.why === 'listen');
  return [...flagged.sort(byRunAndDistance(all)), ...unplaced.sort(byTime), ...listens.sort(byRunAndDistance(all))];
}

/** The next item that is not settled after `key`, going round; null when all are. */
export function nextOpen(queue: readonly QueueItem[], key: string | null): QueueItem | null {
  const from = queue.findIndex((item) => item.key === key);
  for (let step = 1; step <= queue.length; step++) {
    const item = queue[(from + step + queue.length) % queue.length]!;
    if (!item.isSettled && item.key !== key) return item;
  }
  const same = queue[from];
  return same && !same.isSettled ? same : null;
}

type Bare = Omit<Extract<QueueItem, { what: 'site' }>, 'key' | 'isSettled' | 'why' | 'heard'>;
type AnyBare =
  | Bare
  | { what: 'run'; item: ReviewedRun }
  | { what: 'observation'; item: ReviewedObservation }
  | { what: 'absent'; item: ReviewedAbsent }
  | { what: 'unplaced' | 'set-aside'; item: ReviewedAside };

function of(bare: AnyBare): QueueItem {
  const { item } = bare;
  const isFlagged =
    bare.what === 'unplaced' || ('review' in item && item.review.length > 0) || item.reviewState === 'open';
  const isDrawn = item.isDrawn;
  return {
    ...bare,
    key: subjectKey(item.subject),
    why: isFlagged ? 'flagged' : isDrawn ? 'listen' : 'other',
    isSettled: item.reviewState === 'open' ? false : isFlagged || item.decidedBy !== null,
    heard: item.heard,
  } as QueueItem;
}

function byTime(a: QueueItem, b: QueueItem): number {
  return (a.heard?.start ?? 0) - (b.heard?.start ?? 0);
}

/** Site first, then run by run; what has no distance goes where it was said. */
function byRunAndDistance(all: readonly QueueItem[]): (a: QueueItem, b: QueueItem) => number {
  const placed = all
    .flatMap((item) => (item.what === 'observation' && item.item.at !== null ? [item] : []))
    .sort(byTime)
    .map(({ item }) => ({ run: item.run, seconds: item.heard.start, at: item.at! }));
  const place = new Map<string, [number, number]>();
  const placeOf = (item: QueueItem): [number, number] => {
    const known = place.get(item.key);
    if (known) return known;
    const found = runAndDistance(item, placed);
    place.set(item.key, found);
    return found;
  };
  return (a, b) => {
    const [runA, atA] = placeOf(a);
    const [runB, atB] = placeOf(b);
    return runA - runB || atA - atB || byTime(a, b);
  };
}

function runAndDistance(
  item: QueueItem,
  placed: readonly { run: number; seconds: number; at: number }[],
): [number, number] {
  switch (item.what) {
    case 'site':
      return [0, 0];
    case 'run':
      return [item.item.n, -1];
    case 'observation': {
      if (item.item.at !== null) return [item.item.run, item.item.at];
      const before = placed.findLast((o) => o.run === item.item.run && o.seconds <= item.item.heard.start);
      return [item.item.run, before?.at ?? 0];
    }
    case 'absent':
      return [item.item.run, Number.MAX_VALUE];
    default:
      return [Number.MAX_VALUE, 0];
  }
}
