import { memo } from 'preact/compat';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { type LineMark, layoutLine } from '../../../shared/drawing/line-layout.ts';
import type { ReviewedObservation, ReviewedRun } from '../../../shared/schemas/reviewed.ts';
import { shortNumber } from '../../../shared/wording/short.ts';
import { subjectKey } from '../subject.ts';
import { select } from './actions.ts';
import { beside, keyById, unit } from './inspection-state.ts';
import { keepSame } from './keep-same.ts';
import { moveAmongButtons } from './move-among-buttons.ts';
import { PipeDrawing, shapePath } from './pipe-drawing.tsx';
import { startRunEdit } from './start-form.ts';
import { siteTitle } from './words-shown.ts';

const shapeNames = [
  { group: 'fitting', shape: 'square', title: 'fitting' },
  { group: 'defect', shape: 'diamond', title: 'defect' },
  { group: 'limit', shape: 'bar', title: 'limit' },
] as const;
const labelGap = 30;
const shortestLine = 180;

/** Each run drawn to scale, the access on top; a click or Enter on a mark goes to it. */
export function LineView() {
  const section = useRef<HTMLElement>(null);
  const current = beside.selectedKey.value;
  useEffect(() => {
    const frame = requestAnimationFrame(() => {
      if (current) section.current?.querySelector('[aria-current="true"]')?.scrollIntoView({ block: 'nearest' });
    });
    return () => cancelAnimationFrame(frame);
  }, [current]);
  const { runs, site, observations } = beside.reviewed.value;
  return (
    <section ref={section} class="line" aria-labelledby="line-title">
      <h2 id="line-title">The line</h2>
      <ul class="legend" aria-label="Shapes">
        {shapeNames.map(({ group, shape, title }) => (
          <li key={group}>
            <svg width="20" height="16" aria-hidden="true" class={`shape ${group}`}>
              <path class="sign" d={shapePath(shape, 10, 8)} />
            </svg>
            {title}
          </li>
        ))}
      </ul>
      {runs.map((run) => (
        <RunDrawing
          key={subjectKey(run.subject)}
          run={run}
          own={ownOf(run.n, observations)}
          currentId={currentOf(run.n, observations, current)}
        />
      ))}
      {runs.length === 0 && observations.length === 0 && <p class="hint">No run was found in this recording.</p>}
      {Object.keys(site).length > 0 && (
        <>
          <h3>Site</h3>
          <ul class="site">
            {Object.entries(site).map(([name, field]) => (
              <li key={name}>
                <button
                  type="button"
                  class="quiet"
                  aria-current={beside.selectedKey.value === subjectKey(field.subject)}
                  onClick={() => select(subjectKey(field.subject))}
                >
                  {siteTitle(name)}: {String(field.value)}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

const lastOwn = new Map<number, ReviewedObservation[]>();

/** The observations of a run: the same list as before when none of them changed. */
function ownOf(n: number, observations: readonly ReviewedObservation[]): ReviewedObservation[] {
  const own = keepSame(
    lastOwn.get(n) ?? [],
    observations.filter((o) => o.run === n),
  );
  lastOwn.set(n, own);
  return own;
}

function currentOf(n: number, observations: readonly ReviewedObservation[], key: string | null): string | null {
  return observations.find((o) => o.run === n && subjectKey(o.subject) === key)?.id ?? null;
}

interface RunDrawingProps {
  run: ReviewedRun;
  own: ReviewedObservation[];
  currentId: string | null;
}

const RunDrawing = memo(function RunDrawing({ run, own, currentId }: RunDrawingProps) {
  const layout = useMemo(() => {
    const count = own.filter((o) => o.at !== null && o.reviewState !== 'rejected').length;
    return layoutLine(run, own, { length: Math.max(shortestLine, count * labelGap), labelGap, tickGap: 44 });
  }, [run, own]);
  const length = Math.max(shortestLine, layout.marks.length * labelGap);
  const end = run.end
    ? `${run.end.reason}${run.end.at === null ? '' : ` at ${shortNumber(run.end.at)} ${unit.value}`}`
    : 'end not said';
  return (
    <div class="run">
      <h3>
        <button type="button" class="quiet" onClick={() => startRunEdit(run.n)}>
          Run {run.n}
        </button>{' '}
        <span>
          {run.access ?? 'access not said'}, {run.direction ?? 'direction not said'}, {end}
        </span>
      </h3>
      <div class="drawing" style={{ height: `${length + 24}px` }}>
        <PipeDrawing layout={layout} length={length} currentId={currentId} />
        <ol class="marks" onKeyDown={moveAmongButtons}>
          {layout.marks.map((mark) => (
            <MarkButton key={mark.id} mark={mark} isCurrent={mark.id === currentId} />
          ))}
        </ol>
      </div>
      <ul class="legend" aria-label="Material along the run">
        {layout.materials.map((stretch) => (
          <li key={stretch.from}>
            <svg width="18" height="14" aria-hidden="true" class="material">
              <rect x="0.5" y="0.5" width="17" height="13" />
              {stretch.material && (
                <rect x="0.5" y="0.5" width="17" height="13" fill={`url(#hatch-${stretch.pattern})`} class="hatched" />
              )}
            </svg>
            {shortNumber(stretch.from)}–{shortNumber(stretch.to)} {unit.value} {stretch.title}
            {stretch.diameterIn ? `, ${stretch.diameterIn} in` : ''}
          </li>
        ))}
      </ul>
      {layout.withoutDistance.length > 0 && (
        <ul class="without" aria-label="Without a distance" onKeyDown={moveAmongButtons}>
          {layout.withoutDistance.map((one) => (
            <li key={one.id}>
              <button
                type="button"
                class="mark"
                data-id={one.id}
                aria-current={one.id === currentId ? 'true' : undefined}
                onClick={() => selectId(one.id)}
              >
                <span class="at">? {unit.value}</span>
                <span class="name">{one.title}</span>
                <Sign isOpen={one.isOpen} isConfirmed={one.isConfirmed} />
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
});

const MarkButton = memo(function MarkButton({ mark, isCurrent }: { mark: LineMark; isCurrent: boolean }) {
  const place = `${shortNumber(mark.at)}${mark.to === null ? '' : `–${shortNumber(mark.to)}`}`;
  const state = mark.isOpen ? ', to settle' : mark.isConfirmed ? ', confirmed' : '';
  return (
    <li style={{ top: `${mark.labelAlong}px` }}>
      <button
        type="button"
        data-id={mark.id}
        class={`mark ${mark.group}`}
        aria-current={isCurrent ? 'true' : undefined}
        aria-label={`${place} ${unit.value}, ${mark.title}${mark.isSuspected ? ', suspected' : ''}${state}`}
        onClick={() => selectId(mark.id)}
      >
        <span class="at">{place}</span>
        <span class="name">
          {mark.title}
          {mark.isSuspected ? '?' : ''}
        </span>
        <Sign isOpen={mark.isOpen} isConfirmed={mark.isConfirmed} />
      </button>
    </li>
  );
});

function Sign({ isOpen, isConfirmed }: { isOpen: boolean; isConfirmed: boolean }) {
  if (isOpen)
    return (
      <span class="sign open" aria-hidden="true">
        ?
      </span>
    );
  return isConfirmed ? (
    <span class="sign confirmed" aria-hidden="true">
      ✓
    </span>
  ) : (
    <span class="sign" />
  );
}

function selectId(id: string): void {
  const key = keyById.value.get(id);
  if (key !== undefined) select(key);
}
