/**
 * The talk, cut into stretches, each marked with what became of it. Pure. What nothing came of is marked `nothing`,
 * so that an omission can be seen. A stretch may have several marks: one sentence can name two things.
 */
import type { Heard } from '../../shared/schemas/draft.ts';
import type { Reviewed } from '../../shared/schemas/reviewed.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { subjectKey } from './subject.ts';

export type MarkKind =
  | 'observation'
  | 'again'
  | 'rejected'
  | 'absent'
  | 'run'
  | 'site'
  | 'unplaced'
  /** Not placed, and a person says that it holds nothing. */
  | 'dismissed'
  | 'set-aside'
  | 'lost'
  | 'nothing';

export interface TranscriptMark {
  readonly what: MarkKind;
  /** Which item to go to; null for talk that was lost or became nothing. */
  readonly key: string | null;
  /** Kind of the observation, name of the site field, or why it was set aside or not placed. */
  readonly detail: string;
}

export interface Stretch {
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly text: string;
  readonly marks: readonly TranscriptMark[];
}

interface Owner {
  readonly start: number;
  readonly end: number;
  readonly mark: TranscriptMark;
}

/** A stretch that nothing owns is cut at pauses this long. */
const pauseSeconds = 1;
/** Word times and stretch times are rounded apart by this much at most. */
const slackSeconds = 0.06;

/** Cuts the talk. Without words the stretches of the draft itself are given, in order of time. */
export function markTranscript(words: Words | null, reviewed: Reviewed): Stretch[] {
  const owners = ownersOf(reviewed);
  for (const lost of words?.lost ?? []) {
    owners.push({
      start: lost.startSeconds,
      end: lost.endSeconds,
      mark: { what: 'lost', key: null, detail: lost.why },
    });
  }
  if (!words || words.words.length === 0) return stretchesOfDraft(reviewed, owners);
  const stretches = [...stretchesOfWords(words, owners), ...lostStretches(words)];
  return stretches.sort((a, b) => a.startSeconds - b.startSeconds);
}

function ownersOf(reviewed: Reviewed): Owner[] {
  const owners: Owner[] = [];
  const own = (
    heard: Heard | null,
    what: MarkKind,
    item: { subject: Parameters<typeof subjectKey>[0] },
    detail: string,
  ) => {
    if (heard)
      owners.push({ start: heard.start, end: heard.end, mark: { what, key: subjectKey(item.subject), detail } });
  };
  for (const o of reviewed.observations) {
    own(o.heard, o.reviewState === 'rejected' ? 'rejected' : 'observation', o, o.kind);
    for (const again of o.again) own(again, 'again', o, o.kind);
  }
  for (const a of reviewed.absent) if (a.reviewState !== 'rejected') own(a.heard, 'absent', a, a.kind);
  for (const run of reviewed.runs) own(run.heard, 'run', run, run.access ?? '');
  for (const [name, field] of Object.entries(reviewed.site)) own(field.heard, 'site', field, name);
  for (const a of reviewed.unplaced) {
    if (a.becameId === null) own(a.heard, a.reviewState === 'confirmed' ? 'dismissed' : 'unplaced', a, a.why);
  }
  for (const a of reviewed.setAside) if (a.becameId === null) own(a.heard, 'set-aside', a, a.why);
  return owners;
}

function stretchesOfWords(words: Words, owners: Owner[]): Stretch[] {
  const byStart = [...owners].sort((a, b) => a.start - b.start);
  const stretches: { start: number; end: number; texts: string[]; owned: Owner[] }[] = [];
  let active: Owner[] = [];
  let next = 0;
  for (const word of words.words) {
    const middle = (word.startSeconds + word.endSeconds) / 2;
    for (let owner = byStart[next]; owner && owner.start - slackSeconds <= middle; owner = byStart[++next]) {
      active.push(owner);
    }
    active = active.filter((owner) => owner.end + slackSeconds >= middle);
    const last = stretches.at(-1);
    const isSame = last && last.owned.length === active.length && last.owned.every((owner, i) => owner === active[i]);
    if (isSame && (active.length > 0 || word.startSeconds - last.end < pauseSeconds)) {
      last.texts.push(word.text);
      last.end = word.endSeconds;
    } else {
      stretches.push({ start: word.startSeconds, end: word.endSeconds, texts: [word.text], owned: [...active] });
    }
  }
  return stretches.map(({ start, end, texts, owned }) => ({
    startSeconds: start,
    endSeconds: end,
    text: texts.join(' '),
    marks: owned.length > 0 ? owned.map(({ mark }) => mark) : [{ what: 'nothing', key: null, detail: '' }],
  }));
}

function lostStretches(words: Words): Stretch[] {
  return words.lost.map(({ startSeconds, endSeconds, why }) => ({
    startSeconds,
    endSeconds,
    text: '',
    marks: [{ what: 'lost', key: null, detail: why }],
  }));
}

function stretchesOfDraft(reviewed: Reviewed, owners: Owner[]): Stretch[] {
  const texts = new Map<string, string>();
  const all: (Heard | null)[] = [
    ...reviewed.observations.flatMap((o) => [o.heard, ...o.again]),
    ...reviewed.absent.map((a) => a.heard),
    ...reviewed.runs.map((run) => run.heard),
    ...Object.values(reviewed.site).map((field) => field.heard),
    ...reviewed.unplaced.map((a) => a.heard),
    ...reviewed.setAside.map((a) => a.heard),
  ];
  for (const heard of all) if (heard) texts.set(`${heard.start}|${heard.end}`, heard.text);
  return [...texts]
    .map(([span, text]) => {
      const [start, end] = span.split('|').map(Number) as [number, number];
      const marks = owners.filter((owner) => owner.start === start && owner.end === end).map(({ mark }) => mark);
      return { startSeconds: start, endSeconds: end, text, marks };
    })
    .sort((a, b) => a.startSeconds - b.startSeconds);
}
