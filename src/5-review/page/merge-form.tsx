import { useLayoutEffect, useRef } from 'preact/hooks';
import type { ReviewedObservation } from '../../../shared/schemas/reviewed.ts';
import { shortDetails, shortName, shortPlace, shortTime } from '../../../shared/wording/short.ts';
import { mergeWith, openForm } from './actions.ts';
import { FormDeeds } from './form-deeds.tsx';
import { reviewed, unit } from './inspection-state.ts';

const mostShown = 9;

/** Which other observation is the same thing: the likeliest first. */
export function MergeForm({ item }: { item: ReviewedObservation }) {
  const list = useRef<HTMLUListElement>(null);
  const others = likeliest(item);
  useLayoutEffect(() => list.current?.querySelector('button')?.focus(), []);
  const join = (other: ReviewedObservation) => {
    openForm.value = null;
    mergeWith(other.subject);
  };
  return (
    <fieldset
      class="fields"
      aria-label="Join with another"
      onKeyDown={(event) => {
        const other = others[Number(event.key) - 1];
        if (other) join(other);
      }}
    >
      <p class="wide">
        Which one is the same thing? Its talk comes here, and fields that nobody filled here are taken over.
      </p>
      {others.length === 0 && <p class="wide">There is no other finding in this run.</p>}
      <ul ref={list} class="wide choices">
        {others.map((other, index) => (
          <li key={other.id}>
            <button type="button" class="offer" onClick={() => join(other)}>
              <kbd>{index + 1}</kbd> {shortPlace(other, unit.value)} {shortName(other)} {shortDetails(other)}{' '}
              <span class="file">{shortTime(other.heard.start)}</span>
            </button>
          </li>
        ))}
      </ul>
      <FormDeeds />
    </fieldset>
  );
}

function likeliest(item: ReviewedObservation): ReviewedObservation[] {
  const distance = (other: ReviewedObservation) =>
    (other.kind === item.kind ? 0 : 1000) +
    (other.at === null || item.at === null ? 50 : Math.abs(other.at - item.at)) +
    Math.abs(other.heard.start - item.heard.start) / 1000;
  return reviewed.value.observations
    .filter((other) => other.id !== item.id && other.run === item.run && other.reviewState !== 'rejected')
    .sort((a, b) => distance(a) - distance(b))
    .slice(0, mostShown);
}
