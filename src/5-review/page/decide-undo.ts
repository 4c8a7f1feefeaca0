import { decide } from './inspection-state.ts';

/** Takes one certain decision back, wherever it stands in the order. */
export function decideUndo(id: string): void {
  void decide({ action: 'undo', of: id }, 'Let go.');
}
