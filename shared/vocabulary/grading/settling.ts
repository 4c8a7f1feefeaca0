/** What would settle a suspicion: one sentence for each kind that is often suspected, and one for all others. */
import type { KindName } from '../kinds/index.ts';
import type { TradeName } from './levels.ts';

export interface SettlingStep {
  readonly step: string;
  readonly trade: TradeName;
}

const lookAgainClean: SettlingStep = {
  step: 'Clean the line, and look again slowly with a clean lens.',
  trade: 'inspector',
};

export const settlingSteps: Partial<Record<KindName, SettlingStep>> = {
  belly: {
    step: 'Run water, let it drain for ten minutes, and look again to see whether water still stands there.',
    trade: 'inspector',
  },
  'back-pitch': {
    step: 'Run water, let it drain, and have a licensed plumber measure the slope if water still stands.',
    trade: 'plumber',
  },
  crack: lookAgainClean,
  fracture: lookAgainClean,
  break: lookAgainClean,
  hole: lookAgainClean,
  roots: {
    step: 'Look again with a clean lens; if roots are there, have them cut and the place looked at once more.',
    trade: 'inspector',
  },
  infiltration: { step: 'Look again when the ground is wet and no water runs in the house.', trade: 'inspector' },
  void: { step: 'Have a licensed contractor probe the ground, or open it, at this place.', trade: 'plumber' },
  collapse: {
    step: 'Have a licensed plumber try the line from the other end before anything is dug.',
    trade: 'plumber',
  },
  deformation: {
    step: 'Have a licensed plumber measure the height and the width of the pipe here.',
    trade: 'plumber',
  },
  intrusion: {
    step: 'Find out what it is before any tool goes in; call the gas utility if it could be a gas line.',
    trade: 'plumber',
  },
};

export const settlingStepForAll: SettlingStep = {
  step: 'Look at this place again before relying on it either way.',
  trade: 'inspector',
};
