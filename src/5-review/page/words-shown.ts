/** The words of the page that depend on data: states, reasons, stretches. Names of kinds come from the vocabulary. */
import type { Flag } from '../../../shared/schemas/draft.ts';
import type { ReviewState } from '../../../shared/schemas/reviewed.ts';
import { kinds } from '../../../shared/vocabulary/kinds/index.ts';
import { reasonSentences } from '../../../shared/vocabulary/review-reasons.ts';
import type { MarkKind } from '../mark-transcript.ts';

export const kindTitles: ReadonlyMap<string, string> = new Map(kinds.map((kind) => [kind.name, kind.title]));

export function kindTitle(name: string): string {
  return kindTitles.get(name) ?? name;
}

/** Why it is flagged, in one sentence. */
export function flagSentence(flag: Flag): string {
  const reason = reasonSentences[flag.reason];
  const sentence = flag.detail ? `${reason}: ${flag.detail}` : reason;
  return `${sentence[0]!.toUpperCase()}${sentence.slice(1)}${/[.!?]$/.test(sentence) ? '' : '.'}`;
}

/** Each state has a sign of its own, so that it reads without colour. */
export const stateSigns: Readonly<Record<ReviewState, { sign: string; title: string }>> = {
  open: { sign: '?', title: 'to settle' },
  confirmed: { sign: '✓', title: 'confirmed' },
  rejected: { sign: '×', title: 'rejected' },
  unflagged: { sign: '', title: 'not flagged' },
};

export const markTitles: Readonly<Record<MarkKind, string>> = {
  observation: 'finding',
  again: 'same finding again',
  rejected: 'rejected finding',
  absent: 'said not to be there',
  run: 'run',
  site: 'site',
  unplaced: 'not placed',
  dismissed: 'holds nothing to write down',
  'set-aside': 'set aside',
  lost: 'not understood',
  nothing: 'nothing',
};

const setAsideTitles: Readonly<Record<string, string>> = {
  chat: 'chat',
  teaching: 'talk about pipes in general',
  plan: 'what should be done',
  history: 'what was there before',
  question: 'a question',
  summary: 'a summary',
  good: 'said to be good',
};

export function whySetAside(why: string): string {
  return setAsideTitles[why] ?? why;
}

export function siteTitle(name: string): string {
  const words = name
    .replaceAll(/[-_]/g, ' ')
    .replaceAll(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`;
}

export const fieldTitle = (field: string): string => field.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
