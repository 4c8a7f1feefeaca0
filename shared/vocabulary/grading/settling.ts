/** What would settle a suspicion: one sentence for each kind that is often suspected, and one for all others. */
import type { KindName } from '../kinds/index.ts';

export const settlingSteps: Partial<Record<KindName, string>> = {
  belly: 'Run water, let it drain for ten minutes, and look again to see whether water still stands there.',
  'back-pitch': 'Run water, let it drain, and look again; a licensed plumber can measure the slope.',
  crack: 'Clean the line, and look again slowly with a clean lens.',
  fracture: 'Clean the line, and look again slowly with a clean lens.',
  break: 'Clean the line, and look again slowly with a clean lens.',
  hole: 'Clean the line, and look again slowly with a clean lens.',
  roots: 'Look again with a clean lens; if roots are there, have them cut and the place looked at once more.',
  infiltration: 'Look again when the ground is wet and no water runs in the house.',
  void: 'Have a licensed contractor probe the ground or open it at this place.',
  collapse: 'Have a licensed plumber try the line from the other end before anything is dug.',
  deformation: 'Have a licensed plumber measure the height and the width of the pipe here.',
  intrusion: 'Find out what it is before any tool goes in; call the gas utility if it could be a gas line.',
};

export const settlingStepForAll = 'Look at this place again before relying on it either way.';
