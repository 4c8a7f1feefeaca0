import { memo } from 'preact/compat';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import { shortTime } from '../../../shared/wording/short.ts';
import type { Stretch } from '../mark-transcript.ts';
import { select, shownPart } from './actions.ts';
import { beside, stretches } from './inspection-state.ts';
import { focusItem } from './keys.ts';
import { moveAmongButtons } from './move-among-buttons.ts';
import { playStretch } from './player.ts';
import { markTitles, siteTitle, whySetAside } from './words-shown.ts';

/** The browser watches each part that it may leave undrawn: with hundreds of them that alone took longer than a frame. */
const stretchesInPart = 20;

/** All that was said, each stretch with what became of it. Never edited: corrections lie over it. */
export function TalkView() {
  const [search, setSearch] = useState('');
  const wanted = search.trim().toLowerCase();
  const list = useRef<HTMLDivElement>(null);
  const current = beside.selectedKey.value;
  useEffect(() => {
    // After the new item has been painted: what is beside it must not hold it up.
    const frame = requestAnimationFrame(() => {
      if (current) list.current?.querySelector('[aria-current="true"]')?.scrollIntoView({ block: 'center' });
    });
    return () => cancelAnimationFrame(frame);
  }, [current]);
  const all = stretches.value;
  const shown = wanted === '' ? all : all.filter((stretch) => textOf(stretch).includes(wanted));
  const parts = useMemo(
    () =>
      Array.from({ length: Math.ceil(shown.length / stretchesInPart) }, (_, part) =>
        shown.slice(part * stretchesInPart, (part + 1) * stretchesInPart),
      ),
    [shown],
  );
  const loose = all.filter((stretch) =>
    stretch.marks.some(({ what }) => what === 'unplaced' || what === 'lost' || what === 'nothing'),
  ).length;
  return (
    <section class="talk" aria-labelledby="talk-title">
      <div class="talk-head">
        <h2 id="talk-title">The talk</h2>
        <input
          id="talk-search"
          type="search"
          placeholder="Search"
          aria-label="Search the talk"
          value={search}
          onInput={(event) => setSearch(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Escape') setSearch('');
            if (event.key !== 'Enter' || !shown[0]) return;
            setSearch('');
            goTo(shown[0]);
          }}
        />
        <p class="hint" role={wanted === '' ? undefined : 'status'}>
          {wanted === ''
            ? loose === 0
              ? 'Every stretch became something or was set aside'
              : `${loose} ${loose === 1 ? 'stretch' : 'stretches'} not settled`
            : `${shown.length} found`}
        </p>
      </div>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the buttons in it take the keys. */}
      <div class="stretches" ref={list} onKeyDown={moveAmongButtons}>
        {parts.map((part, index) => (
          <ol key={part[0]!.startSeconds} class="part" start={index * stretchesInPart + 1}>
            {part.map((stretch) => (
              <li key={`${stretch.startSeconds}|${stretch.text}`}>
                <StretchButton
                  stretch={stretch}
                  wanted={wanted}
                  isCurrent={stretch.marks.some(({ key }) => key !== null && key === current)}
                />
              </li>
            ))}
          </ol>
        ))}
      </div>
    </section>
  );
}

const StretchButton = memo(function StretchButton({
  stretch,
  wanted,
  isCurrent,
}: {
  stretch: Stretch;
  wanted: string;
  isCurrent: boolean;
}) {
  const { startSeconds, text, marks } = stretch;
  return (
    <button
      type="button"
      class={`stretch ${marks[0]!.what}`}
      aria-current={isCurrent ? 'true' : undefined}
      onClick={() => goTo(stretch)}
    >
      <span class="time">{shortTime(startSeconds)}</span>
      <span class="said">{text === '' ? '…' : highlighted(text, wanted)}</span>
      <span class="became">
        {marks.map((mark, index) => (
          <span key={`${mark.key}${index}`} class={`mark ${mark.what}`}>
            {markText(mark.what, mark.detail)}
          </span>
        ))}
      </span>
    </button>
  );
});

/** Shows what became of a stretch, and plays it. */
function goTo({ startSeconds, endSeconds, marks }: Stretch): void {
  const key = marks.find((mark) => mark.key !== null)?.key;
  if (key) select(key);
  playStretch(startSeconds, endSeconds);
  shownPart.value = 'item';
  focusItem();
}

function markText(what: Stretch['marks'][number]['what'], detail: string): string {
  switch (what) {
    case 'observation':
      return kindTitle(detail);
    case 'again':
      return `${kindTitle(detail)} again`;
    case 'rejected':
      return `${kindTitle(detail)}, rejected`;
    case 'absent':
      return `no ${kindTitle(detail).toLowerCase()}`;
    case 'site':
      return siteTitle(detail);
    case 'set-aside':
      return `set aside: ${whySetAside(detail)}`;
    case 'unplaced':
      return `not placed: ${detail}`;
    default:
      return markTitles[what];
  }
}

function textOf(stretch: Stretch): string {
  return `${stretch.text} ${stretch.marks.map(({ what, detail }) => markText(what, detail)).join(' ')}`.toLowerCase();
}

function highlighted(text: string, wanted: string) {
  const at = wanted === '' ? -1 : text.toLowerCase().indexOf(wanted);
  if (at === -1) return text;
  return (
    <>
      {text.slice(0, at)}
      <mark>{text.slice(at, at + wanted.length)}</mark>
      {text.slice(at + wanted.length)}
    </>
  );
}
