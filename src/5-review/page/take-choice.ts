/** The number keys: each takes what is shown beside that number. */
import { computed } from '@preact/signals';
import type { Changes } from '../../../shared/schemas/decision.ts';
import type { Flag } from '../../../shared/schemas/draft.ts';
import type { ReviewedObservation } from '../../../shared/schemas/reviewed.ts';
import { attributeNames, statuses } from '../../../shared/vocabulary/attributes.ts';
import { kinds } from '../../../shared/vocabulary/kinds/index.ts';
import { flagName } from '../apply-observation-deeds.ts';
import { choicesOf, type ValueChoice } from '../offer-choices.ts';
import type { QueueItem } from '../queue.ts';
import { readField, readRunField, settableRunFields } from '../set-fields.ts';
import { confirmItem, mergeWith, rejectItem } from './actions.ts';
import { decide, hints, reviewed, selected } from './inspection-state.ts';
import { startAdd } from './start-form.ts';

/** What the number keys take at the item at hand, in their order. */
export const choices = computed(() => choicesOf(selected.value, reviewed.value, hints.value));

export function takeChoice(number: number): void {
  const item = selected.value;
  const choice = choices.value[number - 1];
  if (!choice) return;
  if (choice.what === 'finding') {
    startAdd(choice);
    return;
  }
  if (!item) return;
  if (item.what === 'observation') takeObservationValue(item.item, choice);
  else if (item.what === 'run') confirmItem(runChange(item, choice));
  else if (item.what === 'site') confirmItem({ value: { was: item.item.value, now: choice.value } });
}

/** A value that answers a doubt settles the item when nothing else is doubted; another one only changes it. */
function takeObservationValue(item: ReviewedObservation, { flag, field, value, to }: ValueChoice): void {
  const was = readField(item, field);
  const changes: Changes = was === undefined || was === value ? {} : { [field]: { was, now: value } };
  if (to !== undefined && to !== item.to) changes.to = { was: item.to, now: to };
  if (field === 'kind') Object.assign(changes, leftOutBy(item, String(value)));
  if (!flag) {
    void decide({ action: 'change', subject: item.subject, changes }, 'Changed.');
    return;
  }
  const other = typeof value === 'string' ? reviewed.value.observations.find(({ id }) => id === value) : undefined;
  if (other) {
    mergeWith(other.subject);
    return;
  }
  const isNothing =
    (field === 'kind' && value === null) || (field === 'status' && !(statuses as readonly unknown[]).includes(value));
  if (isNothing) {
    rejectItem();
    return;
  }
  const isAnswered = (one: Flag) =>
    flagName(one) === flagName(flag) || (one.about !== undefined && one.about === field);
  if (item.openFlags.every(isAnswered)) {
    confirmItem(changes);
    return;
  }
  const answers = item.openFlags.filter(isAnswered).map(flagName);
  void decide({ action: 'change', subject: item.subject, changes, answers }, 'Taken.');
}

/** What a thing of another kind cannot have. */
function leftOutBy(item: ReviewedObservation, kind: string): Changes {
  const takes: readonly string[] = kinds.find(({ name }) => name === kind)?.takes ?? [];
  const filled = attributeNames.filter((name) => item[name] !== null && !takes.includes(name));
  return Object.fromEntries(filled.map((name) => [name, { was: item[name], now: null }]));
}

function runChange(item: Extract<QueueItem, { what: 'run' }>, { field, value }: ValueChoice): Changes | undefined {
  const name = settableRunFields.find((one) => one === field);
  const was = name && readRunField(item.item, name);
  return name && was !== undefined && was !== value ? { [name]: { was, now: value } } : undefined;
}
