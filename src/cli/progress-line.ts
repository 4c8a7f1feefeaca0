/** Progress on stderr: one line that redraws itself on a terminal, a line a tenth of the way elsewhere. */
import { shortTime } from '../../shared/wording/short.ts';
import type { Effects } from './effects.ts';

export interface ProgressLine {
  /** `done` and `total` in seconds of recording. */
  update(done: number, total: number): void;
  /** Clears the line, so that what is printed next stands alone. */
  end(): void;
}

// Before this much work is done, a guess at the time left jumps about.
const guessFromSeconds = 2;
// Nothing is heard this much faster than it was spoken: such a piece was done by an earlier run.
const keptFromSpeed = 500;

export function progressLine(title: string, effects: Effects): ProgressLine {
  let last = { done: 0, atSeconds: effects.nowSeconds() };
  const worked = { done: 0, seconds: 0 };
  let lastTenth = -1;
  let shown = '';

  const draw = (line: string) => {
    effects.note(`\r${line.padEnd(shown.length)}`);
    shown = line;
  };

  return {
    update(done, total) {
      const step = { done: done - last.done, seconds: effects.nowSeconds() - last.atSeconds };
      last = { done, atSeconds: effects.nowSeconds() };
      if (step.done < keptFromSpeed * step.seconds) {
        worked.done += step.done;
        worked.seconds += step.seconds;
      }
      const isGuessable = worked.seconds >= guessFromSeconds && worked.done > 0;
      const left = isGuessable ? ((total - done) * worked.seconds) / worked.done : undefined;
      const timeLeft = left === undefined || done >= total ? '' : `, ${sayTimeLeft(left)} left`;
      const line = `${title}: ${shortTime(done)} of ${shortTime(total)}${timeLeft}`;
      if (effects.noteIsTerminal) {
        draw(line);
        return;
      }
      const tenth = total > 0 ? Math.floor((10 * done) / total) : 10;
      if (tenth > lastTenth) effects.note(`${line}\n`);
      lastTenth = Math.max(tenth, lastTenth);
    },
    end() {
      if (shown !== '') effects.note(`\r${' '.repeat(shown.length)}\r`);
      shown = '';
    },
  };
}

function sayTimeLeft(seconds: number): string {
  if (seconds < 10) return 'a few seconds';
  if (seconds < 90) return `about ${Math.round(seconds / 10) * 10} s`;
  return `about ${Math.round(seconds / 60)} min`;
}
