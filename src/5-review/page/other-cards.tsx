import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import { shortNumber } from '../../../shared/wording/short.ts';
import type { QueueItem } from '../queue.ts';
import { OtherChoices } from './choice-buttons.tsx';
import { FlagList } from './flag-list.tsx';
import { HeardWords } from './heard-words.tsx';
import { unit } from './inspection-state.ts';
import { siteTitle, stateSigns, whySetAside } from './words-shown.ts';

type Item<What extends QueueItem['what']> = Extract<QueueItem, { what: What }>;
/** The two kinds of loose talk share one member of the union. */
type LooseItem = Extract<QueueItem, { what: 'unplaced' | 'set-aside' }>;

export function RunCard({ item: queued }: { item: Item<'run'> }) {
  const { item } = queued;
  return (
    <>
      <h2 id="item-name" class="what">
        <span class="kind">Run {item.n}</span>
      </h2>
      <p class="facts">
        <span>{item.access ?? 'access not said'}</span>
        <span>{item.direction ?? 'direction not said'}</span>
        <span>
          {item.end
            ? `ends ${item.end.at === null ? '' : `at ${shortNumber(item.end.at)} ${unit.value} `}(${item.end.reason})`
            : 'end not said'}
        </span>
        {item.counterStart !== 0 && <span>counter read {shortNumber(item.counterStart)} at the access</span>}
        <Settled state={item.reviewState} />
      </p>
      <FlagList item={queued} />
      {item.heard && <HeardWords heard={item.heard} respelled={[]} />}
    </>
  );
}

export function SiteCard({ item: queued }: { item: Item<'site'> }) {
  const { item, name } = queued;
  return (
    <>
      <h2 id="item-name" class="what">
        <span class="where">{siteTitle(name)}</span>
        <span class="kind">{String(item.value)}</span>
      </h2>
      <p class="facts">
        <Settled state={item.reviewState} />
      </p>
      <FlagList item={queued} />
      <HeardWords heard={item.heard} respelled={[]} />
    </>
  );
}

/** Talk that is no finding yet: not placed, set aside, or said not to be there. */
export function TalkCard({ item: queued }: { item: Item<'absent'> | LooseItem }) {
  const isDrawn = queued.why === 'listen' && queued.item.decidedBy === null;
  const { heading, why } =
    queued.what === 'absent'
      ? {
          heading: `No ${kindTitle(queued.item.kind).toLowerCase()}`,
          why: `Run ${queued.item.run}: said not to be there.`,
        }
      : queued.what === 'unplaced'
        ? { heading: 'Talk that was not placed', why: `It may hold a finding: ${queued.item.why}.` }
        : { heading: 'Talk set aside', why: `Taken for ${whySetAside(queued.item.why)}.` };
  return (
    <>
      <h2 id="item-name" class="what">
        <span class="kind">{heading}</span>
      </h2>
      <p class={`why${isDrawn ? ' listen' : ''}`}>
        {why}
        {isDrawn && ' Drawn at random: listen whether that is right.'}
      </p>
      <p class="facts">
        <Settled state={queued.item.reviewState} />
      </p>
      <HeardWords heard={queued.item.heard} respelled={[]} />
      <OtherChoices isTalk />
    </>
  );
}

function Settled({ state }: { state: keyof typeof stateSigns }) {
  if (state === 'open' || state === 'unflagged') return null;
  return (
    <span class={`state ${state}`}>
      <span aria-hidden="true">{stateSigns[state].sign}</span> {stateSigns[state].title}
    </span>
  );
}
