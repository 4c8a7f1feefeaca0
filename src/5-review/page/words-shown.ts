/** The words of the page that depend on data: states, reasons, stretches. Names of kinds come from the vocabulary. */
import type { Flag, Observation } from '../../../shared/schemas/draft.ts';
import type { ReviewState } from '../../../shared/schemas/reviewed.ts';
import { attributeTitles } from '../../../shared/vocabulary/attribute-titles.ts';
import { attributeNames } from '../../../shared/vocabulary/attributes.ts';
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import { reasonSentences } from '../../../shared/vocabulary/review-reasons.ts';
import { shortDetails, shortName, shortNumber, shortPlace, type Unit } from '../../../shared/wording/short.ts';
import type { MarkKind } from '../mark-transcript.ts';
import type { Choice, FindingChoice, ValueChoice } from '../offer-choices.ts';

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

export function choiceText(choice: Choice, unit: Unit): string {
  return choice.what === 'finding' ? findingText(choice, unit) : valueText(choice, unit);
}

function valueText({ field, value, to, label }: ValueChoice, unit: Unit): string {
  if (label !== null) return label;
  if (field === 'kind') return kindTitle(String(value));
  const about = attributeTitles[field as keyof typeof attributeTitles];
  const title = (about?.title ?? field).toLowerCase();
  if (value === null) return `no ${title}`;
  const before = { to: 'to ', serves: 'serves ', fromMaterial: 'from ', toMaterial: 'to ' }[field] ?? '';
  const choice = about?.choices?.find((one) => one.value === value)?.title;
  if (choice !== undefined) return `${before}${choice}`;
  const end = to === undefined ? '' : `–${shortNumber(to)}`;
  const after =
    about?.unit === 'distance' ? ` ${unit}` : about?.unit === '°' ? '°' : about?.unit ? ` ${about.unit}` : '';
  const wide = field === 'diameterIn' ? ' wide' : '';
  return `${before}${shortNumber(Number(value))}${end}${after}${wide}`;
}

function findingText({ finding: { kind, status, at, values } }: FindingChoice, unit: Unit): string {
  const nothing = Object.fromEntries(attributeNames.map((name) => [name, null]));
  const shown = { ...nothing, ...values, kind, status, at, atBasis: null } as unknown as Observation;
  const name = kind === null ? 'something' : shortName(shown);
  return [at !== null && shortPlace(shown, unit), name, shortDetails(shown)].filter(Boolean).join(' ');
}
