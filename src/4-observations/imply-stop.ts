/**
 * Some things are never met without another: where the main was not reached, or the last thing seen fills the pipe, the camera
 * stopped there, in whatever words that was said. Listed so, it is always flagged.
 */
import { kindTakes } from './claim.ts';
import { addItem, newEvidence } from './items.ts';
import { impliedKinds, lastKinds, lastPlaceKinds } from './kind-roles.ts';
import { type Item, liveItems, type Reading, type RunState } from './reading.ts';

export function implyStop(reading: Reading, run: RunState): void {
  const items = liveItems(reading, run.n);
  const cause = items.findLast((item) => isLast(item, run));
  const kind = cause && impliedKinds.get(cause.kind);
  // Of one finding by itself nothing follows: it may be told of a line that goes on.
  const isOfMany = items.some((item) => item !== cause && !kindTakes(item.kind, 'material'));
  if (!cause || !kind || !isOfMany || items.some((item) => item.kind === kind)) return;
  if (run.end !== null && run.end.reason !== 'other' && run.end.reason !== 'stopped') return;
  const item = addItem(reading, reading.sentences[cause.sentence]!, {
    kind,
    from: cause.from,
    to: cause.to,
    at: cause.at,
    basis: cause.at === null ? null : 'nearby',
    evidence: newEvidence(reading.sentences[cause.sentence]!, {
      source: 'computed',
      rule: `goes with ${cause.kind}`,
      placeRule: 'where its run ends',
    }),
  });
  item.run = run.n;
  item.flags.push({ reason: 'word-unsure', about: 'kind', detail: 'not said in so many words: the run ends there' });
  run.end = { at: cause.at ?? run.end?.at ?? null, reason: 'stopped' };
}

/** What lies at the end of its run by nature, or fills the pipe at the furthest place of it. */
const isLast = ({ kind, status, at }: Item, { end }: RunState): boolean =>
  lastPlaceKinds.has(kind)
    ? status === 'present'
    : lastKinds[kind] !== undefined && end?.reason === 'stopped' && end.at === at;
