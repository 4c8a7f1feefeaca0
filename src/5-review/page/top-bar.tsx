import { openDialog, redo, undo } from './actions.ts';
import { draft, openItemCount, pendingCount, queue, reviewed, versions } from './inspection-state.ts';

export function TopBar() {
  const { address } = draft.value.site;
  const total = queue.value.length;
  const left = openItemCount.value;
  const newest = versions.value.at(-1);
  return (
    <header class="top">
      <div class="whose">
        <strong>{String(address?.value ?? draft.value.recording.file)}</strong>
        {address && <span class="file">{draft.value.recording.file}</span>}
      </div>
      <div class="progress">
        <span class="left-count">
          {left === 0 ? 'All settled' : `${left} to go`}
          {pendingCount.value > 0 ? <span class="keeping"> · keeping…</span> : null}
        </span>
        <progress max={Math.max(1, total)} value={total - left} aria-label={`${total - left} of ${total} settled`} />
        <SilentErrors />
      </div>
      <div class="top-actions">
        <button type="button" onClick={() => void undo()} disabled={reviewed.value.undoable.length === 0}>
          Undo <kbd>U</kbd>
        </button>
        <button type="button" onClick={() => void redo()} disabled={reviewed.value.redoable.length === 0}>
          Redo <kbd>Y</kbd>
        </button>
        <button
          type="button"
          class="help"
          aria-label="Keys"
          onClick={() => {
            openDialog.value = 'help';
          }}
        >
          Keys <kbd>?</kbd>
        </button>
        <button
          type="button"
          class={left === 0 ? 'main' : ''}
          onClick={() => {
            openDialog.value = 'sign';
          }}
        >
          {newest?.isCurrent ? 'Signed' : 'Finish'} <kbd>F</kbd>
        </button>
      </div>
    </header>
  );
}

/** What the listens to unflagged items say so far about mistakes that carry no flag. */
export function SilentErrors() {
  const { drawn, listened, wrong, upper95 } = reviewed.value.listening;
  if (drawn === 0) return null;
  const text =
    upper95 === null
      ? `${drawn} unflagged to listen to`
      : `${wrong} of ${listened} listens wrong; silent errors under ${Math.round(upper95 * 100)} %`;
  return (
    <span
      class="estimate"
      title="Unflagged findings drawn at random. The bound is the upper 95 % one for the share of unflagged findings that are wrong."
    >
      {text}
    </span>
  );
}
