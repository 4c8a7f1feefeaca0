import type { LineLayout, LineMark } from '../../../shared/drawing/line-layout.ts';
import { shortNumber, shortTime } from '../../../shared/wording/short.ts';
import { playFrom } from './player.ts';

const trackWidth = 40;
const pipeAt = 74;
const pipeWidth = 18;
const labelsAt = 116;

/** Pipe, scale, leaders and the camera's track. The marks beside it say the same in words, so this is hidden from readers. */
export function PipeDrawing({
  layout,
  length,
  currentId,
}: {
  layout: LineLayout;
  length: number;
  currentId: string | null;
}) {
  const seconds = layout.track.map((point) => point.seconds);
  const first = Math.min(...seconds);
  const span = Math.max(1, Math.max(...seconds) - first);
  const trackX = (at: number) => 4 + ((at - first) / span) * (trackWidth - 8);
  const nearestTo = (event: MouseEvent) => {
    const box = (event.currentTarget as SVGElement).getBoundingClientRect();
    const along = event.clientY - box.top;
    const x = event.clientX - box.left;
    const distance = (point: LineLayout['track'][number]) => Math.hypot(point.along - along, trackX(point.seconds) - x);
    return [...layout.track].sort((a, b) => distance(a) - distance(b))[0];
  };
  return (
    <svg
      class="pipe"
      width={labelsAt}
      height={length + 24}
      viewBox={`0 -12 ${labelsAt} ${length + 24}`}
      aria-hidden="true"
      focusable="false"
    >
      <defs>
        {patterns.map((path, index) => (
          <pattern key={path} id={`hatch-${index}`} width="8" height="8" patternUnits="userSpaceOnUse">
            <path d={path} class="hatch" />
          </pattern>
        ))}
      </defs>
      {layout.track.length > 1 && (
        // biome-ignore lint/a11y/noStaticElementInteractions: a shortcut for the mouse; the marks do the same by key
        <g
          class="track"
          onClick={(event) => {
            const point = nearestTo(event);
            if (point) playFrom(point.seconds - 1);
          }}
        >
          <title>The camera over time: click to hear that moment</title>
          <rect x="0" y="0" width={trackWidth} height={length} class="track-ground" />
          <polyline points={layout.track.map((point) => `${trackX(point.seconds)},${point.along}`).join(' ')} />
          {layout.track.map((point) => (
            <circle key={`${point.seconds}|${point.at}`} cx={trackX(point.seconds)} cy={point.along} r="2">
              <title>{`${shortTime(point.seconds)}: ${shortNumber(point.at)}`}</title>
            </circle>
          ))}
        </g>
      )}
      {layout.ticks.map((tick) => (
        <g key={tick.at} class="tick">
          <line x1={pipeAt - 8} x2={pipeAt} y1={tick.along} y2={tick.along} />
          <text x={pipeAt - 11} y={tick.along + 4} text-anchor="end">
            {tick.at}
          </text>
        </g>
      ))}
      {layout.materials.map((stretch) => (
        <g key={stretch.from} class="material">
          <rect x={pipeAt} y={stretch.along} width={pipeWidth} height={stretch.alongTo - stretch.along} />
          {stretch.material && (
            <rect
              x={pipeAt}
              y={stretch.along}
              width={pipeWidth}
              height={stretch.alongTo - stretch.along}
              fill={`url(#hatch-${stretch.pattern})`}
              class="hatched"
            />
          )}
          <title>{`${stretch.title}${stretch.diameterIn ? `, ${stretch.diameterIn} in` : ''}`}</title>
        </g>
      ))}
      {layout.endAlong !== null && (
        <line class="run-end" x1={pipeAt - 6} x2={pipeAt + pipeWidth + 6} y1={layout.endAlong} y2={layout.endAlong} />
      )}
      {layout.marks.map((mark) => (
        <g
          key={mark.id}
          class={`shape ${mark.group}${mark.isOpen ? ' open' : ''}${mark.id === currentId ? ' current' : ''}`}
        >
          <path class="leader" d={`M${pipeAt + pipeWidth} ${mark.along}L${labelsAt} ${mark.labelAlong}`} />
          {mark.alongTo !== null && (
            <line
              class="reach"
              x1={pipeAt + 4 + mark.lane * 4}
              x2={pipeAt + 4 + mark.lane * 4}
              y1={mark.along}
              y2={mark.alongTo}
            />
          )}
          <path
            class={mark.isSuspected ? 'sign suspected' : 'sign'}
            d={shapePath(mark.shape, pipeAt + pipeWidth / 2, mark.along)}
          />
        </g>
      ))}
    </svg>
  );
}

/** Six hatchings that differ in black and white. */
const patterns = ['M0 8L8 0', 'M0 4H8', 'M4 0V8', 'M0 0L8 8', 'M0 4H8M4 0V8', 'M2 2h1M6 6h1'];

export function shapePath(shape: LineMark['shape'], x: number, y: number): string {
  switch (shape) {
    case 'square':
      return `M${x - 5} ${y - 5}h10v10h-10Z`;
    case 'diamond':
      return `M${x} ${y - 7}l7 7l-7 7l-7 -7Z`;
    case 'bar':
      return `M${x - 10} ${y - 2.5}h20v5h-20Z`;
  }
}
