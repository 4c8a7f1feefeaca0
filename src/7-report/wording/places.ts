/** Where something is: along the pipe, and on the clock. */
import type { Finding, Place } from '../../../shared/schemas/grade.ts';
import { length, type Units } from './lengths.ts';

export const noDistance = 'no distance said';

/** "22 ft", "34 ft to 41 ft", "about 31 ft", "in the riser, before the pipe". */
export function placeWords(at: Place | null, to: Place | null, units: Units): string {
  if (at === null) return noDistance;
  if (at.feet === null) return 'in the riser, before the pipe';
  const about = at.basis === 'track' || at.basis === 'relative' ? 'about ' : '';
  const start = `${about}${length(at.feet, units)}`;
  if (to === null || to.feet === null || to.feet === at.feet) return start;
  return `${start} to ${length(to.feet, units)}`;
}

/** "at 22 ft", "from 34 ft to 41 ft", "at a place whose distance was not said". */
export function atPlace(at: Place | null, to: Place | null, units: Units): string {
  if (at === null) return 'at a place whose distance was not said';
  if (at.feet === null) return 'in the riser, before the pipe';
  const words = placeWords(at, to, units);
  return words.includes(' to ') ? `from ${words}` : `at ${words}`;
}

const positionWords = {
  top: 'top',
  bottom: 'bottom',
  left: 'left side',
  right: 'right side',
  side: 'one side',
  'all-around': 'all around',
} as const;

/** Where on the clock, looking the way the camera looks; empty when nothing was said. */
export function clockWords(finding: Pick<Finding, 'clock' | 'clockTo' | 'position'>): string {
  const { clock, clockTo, position } = finding;
  if (clock !== null && clockTo !== null) return `from ${clock} to ${clockTo} o’clock`;
  if (clock !== null) return `${clock} o’clock`;
  return position === null ? '' : positionWords[position];
}
