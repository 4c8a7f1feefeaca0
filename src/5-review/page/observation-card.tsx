import { attributeTitles } from '../../../shared/vocabulary/attribute-titles.ts';
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import { shortDetails, shortNumber, shortTime } from '../../../shared/wording/short.ts';
import type { QueueItem } from '../queue.ts';
import { OtherChoices } from './choice-buttons.tsx';
import { FlagList } from './flag-list.tsx';
import { HeardWords } from './heard-words.tsx';
import { reviewed, unit } from './inspection-state.ts';
import { playFrom } from './player.ts';
import { fieldTitle, stateSigns } from './words-shown.ts';

type ObservationItem = Extract<QueueItem, { what: 'observation' }>;

export function ObservationCard({ item: queued }: { item: ObservationItem }) {
  const { item, why } = queued;
  const run = reviewed.value.runs.find((one) => one.n === item.run);
  const details = shortDetails(item);
  const changed = Object.entries(item.changed);
  const state = stateSigns[item.reviewState];
  return (
    <>
      <h2 id="item-name" class="what">
        <span class="where">{placeText(item.at, item.to)}</span>
        <span class="kind">{kindTitle(item.kind)}</span>
      </h2>
      <p class="facts">
        {details && <span class="details">{details}</span>}
        <span class={`status ${item.status}`}>{item.status}</span>
        <span>
          Run {item.run}
          {run?.access ? `, ${run.access}` : ''}
        </span>
        {basisText(item.atBasis, item.atPlusMinus) && <span>{basisText(item.atBasis, item.atPlusMinus)}</span>}
        {item.reviewState !== 'open' && item.reviewState !== 'unflagged' && (
          <span class={`state ${item.reviewState}`}>
            <span aria-hidden="true">{state.sign}</span> {state.title}
          </span>
        )}
      </p>
      {why === 'listen' && item.reviewState === 'unflagged' && (
        <p class="why listen">Nothing flags this one. It was drawn at random: listen whether it is right.</p>
      )}
      {item.reopened.length > 0 && (
        <ul class="flags">
          {item.reopened.map(({ field, confirmed, now }) => (
            <li key={field}>
              <p class="why">
                You confirmed {fieldTitle(field)} “{String(confirmed ?? 'none')}”; this draft reads “
                {String(now ?? 'none')}”.
              </p>
            </li>
          ))}
        </ul>
      )}
      <FlagList item={queued} />
      <HeardWords heard={item.heard} respelled={item.respelled ?? []} />
      <OtherChoices isTalk={false} />
      {item.again.length > 0 && (
        <p class="again">
          Spoken of again at{' '}
          {item.again.map((heard) => (
            <button
              key={heard.start}
              type="button"
              class="quiet"
              title={heard.text}
              onClick={() => playFrom(heard.start - 0.5)}
            >
              {shortTime(heard.start)}
            </button>
          ))}
        </p>
      )}
      {(item.corrected ?? []).map(({ field, was, heard }) => (
        <p key={`${field}${heard.start}`} class="was">
          Corrected aloud: {fieldTitle(field)} was {String(was ?? 'none')} (“{heard.text}”)
        </p>
      ))}
      {changed.length > 0 && (
        <p class="was">
          {changed
            .map(
              ([field, { was, person }]) =>
                `${attributeName(field)} was ${String(was ?? 'none')}, changed by ${person}`,
            )
            .join('; ')}
        </p>
      )}
    </>
  );
}

function attributeName(field: string): string {
  return attributeTitles[field as keyof typeof attributeTitles]?.title ?? fieldTitle(field);
}

function placeText(at: number | null, to: number | null): string {
  if (at === null) return `? ${unit.value}`;
  return `${shortNumber(at)}${to === null ? '' : `–${shortNumber(to)}`} ${unit.value}`;
}

function basisText(basis: string | null, plusMinus: number | undefined): string {
  const spread = plusMinus === undefined ? '' : `, ± ${shortNumber(plusMinus)} ${unit.value}`;
  switch (basis) {
    case 'nearby':
      return `distance said just before or after${spread}`;
    case 'relative':
      return `distance reckoned from the one before${spread}`;
    case 'track':
      return `distance worked out from time${spread}`;
    case 'counter':
      return `distance read from the picture${spread}`;
    default:
      return '';
  }
}
