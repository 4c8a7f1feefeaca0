import { useLayoutEffect } from 'preact/hooks';
import { confirmItem, mustListenFirst, openForm, rejectItem } from './actions.ts';
import { AddForm } from './add-form.tsx';
import { EditForm } from './edit-form.tsx';
import { FinishPanel } from './finish-panel.tsx';
import { openItemCount, queue, selected } from './inspection-state.ts';
import { focusItem } from './keys.ts';
import { MergeForm } from './merge-form.tsx';
import { ObservationCard } from './observation-card.tsx';
import { RunCard, SiteCard, TalkCard } from './other-cards.tsx';
import { RestartForm } from './restart-form.tsx';
import { RunForm } from './run-form.tsx';
import { SiteForm } from './site-form.tsx';
import { SplitForm } from './split-form.tsx';
import { startAdd, startEdit } from './start-form.ts';

export function ItemPanel() {
  const item = selected.value;
  const key = item?.key ?? null;
  useLayoutEffect(() => {
    // Not while a form or another part of the page holds the focus by the person's own doing.
    if (!openForm.value) focusItem();
  }, [key]);
  if (openForm.value === 'add') return <AddForm />;
  if (!item) return <FinishPanel />;
  const at = queue.value.findIndex((one) => one.key === item.key);
  const place = at === -1 ? 'Chosen by you' : `${at + 1} of ${queue.value.length}, ${openItemCount.value} to settle`;
  return (
    <section id="item" class="item" tabIndex={-1} aria-labelledby="item-name" data-item={item.key}>
      <p class="place">{place}</p>
      {item.what === 'observation' ? (
        <ObservationCard item={item} />
      ) : item.what === 'run' ? (
        <RunCard item={item} />
      ) : item.what === 'site' ? (
        <SiteCard item={item} />
      ) : (
        <TalkCard item={item} />
      )}
      {openForm.value === 'edit' && item.what === 'observation' && <EditForm item={item.item} />}
      {openForm.value === 'merge' && item.what === 'observation' && <MergeForm item={item.item} />}
      {openForm.value === 'split' && item.what === 'observation' && <SplitForm item={item.item} />}
      {openForm.value === 'restart' && <RestartForm />}
      {openForm.value === 'run' && item.what === 'run' && <RunForm run={item.item} />}
      {openForm.value === 'site' && item.what === 'site' && <SiteForm item={item} />}
      {!openForm.value && <ItemButtons what={item.what} />}
    </section>
  );
}

function ItemButtons({ what }: { what: string }) {
  const isTalk = what === 'unplaced' || what === 'set-aside';
  return (
    <div class="deeds">
      <button type="button" class="main" aria-disabled={mustListenFirst()} onClick={() => confirmItem()}>
        {mustListenFirst() ? 'Listen first' : isTalk ? 'Nothing to write down' : 'Right'} <kbd>Enter</kbd>
      </button>
      {isTalk || what === 'absent' ? (
        <button type="button" onClick={() => startAdd()}>
          Write it down <kbd>A</kbd>
        </button>
      ) : (
        <button type="button" onClick={startEdit}>
          Edit <kbd>E</kbd>
        </button>
      )}
      {!isTalk && what !== 'run' && (
        <button type="button" onClick={rejectItem}>
          Not so <kbd>X</kbd>
        </button>
      )}
      {what === 'observation' && (
        <>
          <button
            type="button"
            class="lesser"
            onClick={() => {
              openForm.value = 'merge';
            }}
          >
            Join <kbd>M</kbd>
          </button>
          <button
            type="button"
            class="lesser"
            onClick={() => {
              openForm.value = 'split';
            }}
          >
            Split <kbd>S</kbd>
          </button>
        </>
      )}
    </div>
  );
}
