/** Rules that rise with the amount: by the share of the bore when it was said, else by the degree that was said. */
import type { GradeRuleInput } from '../../../schemas/grade-rule.ts';
import type { KindName } from '../../kinds/index.ts';
import type { ActionName, SeverityName, TradeName } from '../levels.ts';
import { sources } from './sources.ts';

export interface Step {
  readonly severity: SeverityName;
  readonly action: ActionName;
  readonly again?: string;
  readonly trade?: TradeName;
  readonly next?: string;
}

export interface Steps {
  readonly light: Step;
  readonly moderate: Step;
  readonly heavy: Step;
  /** When no amount was said. */
  readonly unsaid: Step;
  readonly why: string;
  /** What the share is a share of, in words. */
  readonly shareOf: string;
}

/**
 * The tiers 25 and 50 percent are those Seattle publishes for sags, carried over to other kinds: a customary step,
 * marked as such, and not a published limit for these kinds.
 */
export function byAmount(kind: KindName, steps: Steps): GradeRuleInput[] {
  const common = { kinds: [kind], source: sources.customary, why: steps.why };
  const isUnsaid = { fact: 'percent', known: false } as const;
  return [
    {
      id: `${kind}-under-25`,
      when: [{ fact: 'percent', under: 25 }],
      limit: `less than 25 % of ${steps.shareOf}`,
      ...steps.light,
      ...common,
    },
    {
      id: `${kind}-25-to-50`,
      when: [{ fact: 'percent', atLeast: 25, under: 50 }],
      limit: `25 to 50 % of ${steps.shareOf}`,
      ...steps.moderate,
      ...common,
    },
    {
      id: `${kind}-50-and-more`,
      when: [{ fact: 'percent', atLeast: 50 }],
      limit: `50 % of ${steps.shareOf} or more`,
      ...steps.heavy,
      ...common,
    },
    {
      id: `${kind}-light`,
      when: [isUnsaid, { fact: 'degree', is: ['light'] }],
      limit: 'called light',
      ...steps.light,
      ...common,
    },
    {
      id: `${kind}-moderate`,
      when: [isUnsaid, { fact: 'degree', is: ['moderate'] }],
      limit: 'called moderate',
      ...steps.moderate,
      ...common,
    },
    {
      id: `${kind}-heavy`,
      when: [isUnsaid, { fact: 'degree', is: ['heavy'] }],
      limit: 'called heavy',
      ...steps.heavy,
      ...common,
    },
    {
      id: `${kind}-amount-unsaid`,
      when: [isUnsaid, { fact: 'degree', known: false }],
      limit: 'no amount said',
      ...steps.unsaid,
      ...common,
    },
  ];
}
