import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { openDialog } from './actions.ts';
import { focusItem } from './keys.ts';

/** A dialog of the browser's own kind: it keeps the focus, and Esc closes it. */
export function Dialog({ title, children }: { title: string; children: ComponentChildren }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useLayoutEffect(() => {
    dialog.current?.showModal();
  }, []);
  return (
    <dialog
      ref={dialog}
      aria-labelledby="dialog-title"
      onClose={() => {
        openDialog.value = null;
        focusItem();
      }}
    >
      <div class="dialog-head">
        <h2 id="dialog-title">{title}</h2>
        <button type="button" class="quiet" onClick={() => dialog.current?.close()}>
          Close <kbd>Esc</kbd>
        </button>
      </div>
      {children}
    </dialog>
  );
}
