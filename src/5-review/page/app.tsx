import { useEffect } from 'preact/hooks';
import { shortTime } from '../../../shared/wording/short.ts';
import { openDialog, shownPart } from './actions.ts';
import { HelpDialog } from './help-dialog.tsx';
import { draft, selectedKey } from './inspection-state.ts';
import { ItemPanel } from './item-panel.tsx';
import { LineView } from './line-view.tsx';
import { isConnected, lastDeed, problem } from './notices.ts';
import { OwnWordOffers } from './own-word-offers.tsx';
import { SignDialog } from './sign-dialog.tsx';
import { SoundStrip } from './sound-strip.tsx';
import { TalkView } from './talk-view.tsx';
import { TopBar } from './top-bar.tsx';

const parts = [
  { name: 'item', title: 'Item' },
  { name: 'line', title: 'Line' },
  { name: 'talk', title: 'Talk' },
] as const;

export function App() {
  const address = draft.value.site.address?.value;
  useEffect(() => {
    document.title = `${address ?? draft.value.recording.file} · lineword review`;
  }, [address]);
  return (
    <div class="page" data-part={shownPart.value}>
      <TopBar />
      <div class="notices" role="alert">
        {problem.value && (
          <p class="notice">
            <span>{problem.value}</span>
            <button
              type="button"
              class="quiet"
              onClick={() => {
                problem.value = null;
              }}
            >
              Close
            </button>
          </p>
        )}
        {!isConnected.value && (
          <p class="notice">
            The review on this computer does not answer. What is kept is safe; new decisions are not taken.
          </p>
        )}
      </div>
      <nav class="parts" aria-label="Parts of the page">
        {parts.map(({ name, title }) => (
          <button
            key={name}
            type="button"
            aria-pressed={shownPart.value === name}
            onClick={() => {
              shownPart.value = name;
            }}
          >
            {title}
          </button>
        ))}
      </nav>
      <main class="work">
        <h1 class="unseen">
          Review of {address ?? draft.value.recording.file}, {shortTime(draft.value.recording.seconds)}
        </h1>
        <LineView />
        <div class="middle">
          <ItemPanel key={selectedKey.value ?? 'end'} />
          <OwnWordOffers />
        </div>
        <TalkView />
      </main>
      <SoundStrip />
      <p class="unseen" role="status">
        {lastDeed.value}
      </p>
      {openDialog.value === 'help' && <HelpDialog />}
      {openDialog.value === 'sign' && <SignDialog />}
    </div>
  );
}
