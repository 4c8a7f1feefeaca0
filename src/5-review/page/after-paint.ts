/** For what stands beside the item at hand: it may follow a frame later, so that it never holds the item up. */
import { effect, type ReadonlySignal, signal } from '@preact/signals';

/** A page that is not shown gets no frames; then this long is waited. */
const longestMs = 150;

/** Follows `source` once the next frame has been painted. When several values come quickly, only the last one. */
export function afterPaint<T>(source: ReadonlySignal<T>): ReadonlySignal<T> {
  const later = signal(source.peek());
  let isDue = false;
  effect(() => {
    if (source.value === later.peek() || isDue) return;
    isDue = true;
    let isDone = false;
    const follow = () => {
      if (isDone) return;
      isDone = true;
      isDue = false;
      later.value = source.peek();
    };
    requestAnimationFrame(() => setTimeout(follow));
    setTimeout(follow, longestMs);
  });
  return later;
}
