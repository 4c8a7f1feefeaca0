import { effect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import WaveSurfer from 'wavesurfer.js';
import RegionsPlugin from 'wavesurfer.js/dist/plugins/regions.esm.js';
import { shortTime } from '../../../shared/wording/short.ts';
import { onPainted } from './after-paint.ts';
import { draft } from './inspection-state.ts';
import {
  audio,
  changeRate,
  isLooping,
  isPlaying,
  isWaitingForHand,
  move,
  pauseOrPlay,
  peaks,
  rate,
  soundState,
  stretch,
  toggleLoop,
} from './player.ts';

const pixelsPerSecond = 40;
/** How much of the wave is shown before the words at hand: so many seconds, on a narrow page a quarter of it. */
const secondsBefore = 8;
const shareBefore = 0.25;

export function SoundStrip() {
  if (soundState.value === 'none') {
    return <footer class="sound">This draft was made from a written transcript: there is no sound to play.</footer>;
  }
  if (soundState.value === 'failed') return <footer class="sound">The recording cannot be played.</footer>;
  return (
    <footer class="sound">
      <Waveform />
      <div class="transport">
        <button type="button" aria-label="Back five seconds" onClick={() => move(-5)}>
          −5 s <kbd>B</kbd>
        </button>
        <button type="button" class="play" onClick={pauseOrPlay} disabled={soundState.value !== 'ready'}>
          {isPlaying.value ? 'Pause' : 'Play'} <kbd>Space</kbd>
        </button>
        <button type="button" aria-pressed={isLooping.value} onClick={toggleLoop}>
          Loop <kbd>L</kbd>
        </button>
        <span class="rate">
          <button type="button" aria-label="Slower" onClick={() => changeRate(-1)}>
            −
          </button>
          <output>{rate.value} ×</output>
          <button type="button" aria-label="Faster" onClick={() => changeRate(1)}>
            +
          </button>
        </span>
        <Clock />
        {soundState.value === 'preparing' && <span class="hint">Preparing the sound…</span>}
        {isWaitingForHand.value && <span class="hint strong">Press Space to hear it</span>}
      </div>
    </footer>
  );
}

/** Written directly, not through rendering: it changes many times a second. */
function Clock() {
  const text = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    const show = () => {
      if (text.current)
        text.current.textContent = `${shortTime(audio.currentTime)} of ${shortTime(draft.value.recording.seconds)}`;
    };
    show();
    audio.addEventListener('timeupdate', show);
    audio.addEventListener('seeking', show);
    return () => {
      audio.removeEventListener('timeupdate', show);
      audio.removeEventListener('seeking', show);
    };
  }, []);
  return <span class="clock" ref={text} />;
}

function Waveform() {
  const container = useRef<HTMLDivElement>(null);
  const ready = peaks.value;
  useEffect(() => {
    if (!ready || !container.current) return;
    const colour = (name: string) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();
    const regions = RegionsPlugin.create();
    const nonce = document.querySelector<HTMLMetaElement>('meta[name="style-nonce"]')?.content;
    const surfer = WaveSurfer.create({
      container: container.current,
      media: audio,
      peaks: [ready],
      duration: draft.value.recording.seconds,
      height: 'auto',
      normalize: true,
      minPxPerSec: pixelsPerSecond,
      // Its own following of the sound measures the page at every tick, in the way of the next item.
      autoScroll: false,
      autoCenter: false,
      hideScrollbar: true,
      waveColor: colour('--wave'),
      progressColor: colour('--wave-played'),
      cursorColor: colour('--ink'),
      cursorWidth: 2,
      barWidth: 2,
      barGap: 1,
      ...(nonce ? { cspNonce: nonce } : {}),
      plugins: [regions],
    });
    const drawStretch = () => {
      const at = stretch.value;
      regions.clearRegions();
      if (at) {
        regions.addRegion({ start: at.start, end: at.end, drag: false, resize: false, color: colour('--stretch') });
      }
    };
    // The plugin takes regions only once the waveform is there.
    let stop = () => {};
    surfer.once('ready', () => {
      const before = () => Math.min(secondsBefore, (surfer.getWidth() * shareBefore) / pixelsPerSecond);
      const show = (seconds: number) => surfer.setScrollTime(Math.max(0, seconds - before()));
      const follow = () => {
        const shownFrom = surfer.getScroll();
        const at = (audio.currentTime / surfer.getDuration()) * surfer.getWrapper().scrollWidth;
        if (at < shownFrom || at > shownFrom + surfer.getWidth()) show(audio.currentTime);
      };
      const unfollow = effect(() => {
        const at = stretch.value;
        if (!at) return;
        onPainted(() => {
          drawStretch();
          show(at.start);
        });
      });
      audio.addEventListener('timeupdate', follow);
      stop = () => {
        unfollow();
        audio.removeEventListener('timeupdate', follow);
      };
    });
    const recolour = () => {
      surfer.setOptions({
        waveColor: colour('--wave'),
        progressColor: colour('--wave-played'),
        cursorColor: colour('--ink'),
      });
      drawStretch();
    };
    const darkness = matchMedia('(prefers-color-scheme: dark)');
    darkness.addEventListener('change', recolour);
    return () => {
      stop();
      darkness.removeEventListener('change', recolour);
      surfer.destroy();
    };
  }, [ready]);
  return <div class="wave" ref={container} aria-hidden="true" />;
}
