/** Progress on stderr: one line that redraws itself on a terminal, a line a tenth of the way elsewhere. */
import { shortTime } from '../../shared/wording/short.ts';
import type { Effects } from './effects.ts';

export interface ProgressLine {
  /** `done` and `total` in seconds of recording. */
  update(done: number, total: number): void;
  /** Clears the line, so that what is printed next stands alone. */
  end(): void;
}

// Before this much of the work is done, a guess at the time left jumps about.
const guessFromSeconds = 2;

export function progressLine(title: string, effects: Effects): ProgressLine {
  const startedSeconds = effects.nowSeconds();
  // What an earlier, interrupted run had already done says nothing about the speed of this one.
  let doneBefore: number | undefined;
  let lastTenth = -1;
  let shown = '';

  const draw = (line: string) => {
    effects.note(`\r${line.padEnd(shown.length)}`);
    shown = line;
  };

  return {
    update(done, total) {
      doneBefore ??= done;
      const spent = effects.nowSeconds() - startedSeconds;
      const gained = done - doneBefore;
      const left = spent >= guessFromSeconds && gained > 0 ? ((total - done) * spent) / gained : undefined;
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
