import { openDialog } from './actions.ts';
import { LeftOut } from './choice-buttons.tsx';
import { openItemCount, reviewed, versions } from './inspection-state.ts';
import { SilentErrors } from './top-bar.tsx';

/** Shown when nothing is left to settle. */
export function FinishPanel() {
  const { observations, orphanedDecisions } = reviewed.value;
  const count = (state: string) => observations.filter((o) => o.reviewState === state).length;
  const newest = versions.value.at(-1);
  return (
    <section id="item" class="item" tabIndex={-1} aria-labelledby="item-name">
      <p class="place">
        {newest?.isCurrent ? `Signed by ${newest.name}` : openItemCount.value === 0 ? 'Ready to sign' : 'In between'}
      </p>
      <h2 id="item-name" class="what">
        <span class="kind">
          {openItemCount.value === 0 ? 'Everything flagged is settled' : `${openItemCount.value} still to settle`}
        </span>
      </h2>
      <p class="facts">
        <span>{count('confirmed')} confirmed</span>
        <span>{count('unflagged')} not flagged</span>
        <span>{count('rejected')} rejected</span>
        <SilentErrors />
      </p>
      <LeftOut />
      <p>
        Look through the talk for anything that should be a finding and is none. Choose any finding on the line to hear
        it again.
      </p>
      {orphanedDecisions.length > 0 && (
        <p>{orphanedDecisions.length} earlier decisions no longer fit this draft: see Finish.</p>
      )}
      <div class="deeds">
        <button
          type="button"
          class="main"
          onClick={() => {
            openDialog.value = 'sign';
          }}
        >
          {newest?.isCurrent ? 'See the signature' : 'Finish and sign'} <kbd>F</kbd>
        </button>
      </div>
    </section>
  );
}
