import type { ComponentChildren } from 'preact';
import { closeForm } from './keys.ts';

/** The two ways out of a form: saving it, by Enter, and leaving all as it was, by Esc. Without `save` only the second. */
export function FormDeeds({
  save,
  leave = 'Leave as it was',
}: {
  save?: ComponentChildren;
  leave?: string | undefined;
}) {
  return (
    <div class="deeds">
      {save !== undefined && (
        <button type="submit" class="main">
          {save} <kbd>Enter</kbd>
        </button>
      )}
      <button type="button" onClick={closeForm}>
        {leave} <kbd>Esc</kbd>
      </button>
    </div>
  );
}
