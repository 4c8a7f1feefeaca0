/** For what stands beside the item at hand: it may follow a frame later, so that it never holds the item up. */
import { effect, type ReadonlySignal, signal } from '@preact/signals';

/** A page that is not shown gets no frames; then this long is waited. */
const longestMs = 150;

/** After the frame, and after what else waits for it, such as the start of the sound. */
const whenIdle = (run: () => void): void => {
  if ('requestIdleCallback' in window) requestIdleCallback(run, { timeout: longestMs });
  else setTimeout(run);
};

/** Runs once the next frame has been painted. */
export function onPainted(run: () => void): void {
  let isDone = false;
  const once = () => {
    if (isDone) return;
    isDone = true;
    run();
  };
  requestAnimationFrame(() => whenIdle(once));
  setTimeout(once, longestMs);
}

/** Follows `source` once the next frame has been painted. When several values come quickly, only the last one. */
export function afterPaint<T>(source: ReadonlySignal<T>): ReadonlySignal<T> {
  const later = signal(source.peek());
  let isDue = false;
  effect(() => {
    if (source.value === later.peek() || isDue) return;
    isDue = true;
    onPainted(() => {
      isDue = false;
      later.value = source.peek();
    });
  });
  return later;
}
