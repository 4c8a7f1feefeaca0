/** Standing water: by its depth as a share of the true inside diameter, and by inches. */
import type { GradeRuleInput } from '../../../schemas/grade-rule.ts';
import { sources } from './sources.ts';

const solidsSettle = 'Where water stands, solids settle, and enough of them can back the line up.';
const depthUnsaid = { fact: 'waterShare', known: false } as const;

export const sagRules: readonly GradeRuleInput[] = [
  {
    id: 'sag-under-25',
    kinds: ['belly'],
    when: [{ fact: 'waterShare', under: 25 }],
    severity: 'minor',
    action: 'none',
    limit: 'water less than 25 % of the pipe diameter',
    source: sources.seattle,
    why: 'Some debris may settle, but usually not enough to harm the sewer.',
    next: 'No repair needed; mention it to whoever cleans the line next.',
  },
  {
    id: 'sag-25-to-50',
    kinds: ['belly'],
    when: [{ fact: 'waterShare', atLeast: 25, under: 50 }],
    severity: 'moderate',
    action: 'watch',
    again: 'every two to five years',
    limit: 'water 25 to 50 % of the pipe diameter',
    source: sources.seattle,
    why: solidsSettle,
    next: 'Have it looked at again every two to five years.',
  },
  {
    // The published page gives the tier and no action for it, so the action is ours and marked so in `limit`.
    id: 'sag-50-and-more',
    kinds: ['belly'],
    when: [{ fact: 'waterShare', atLeast: 50 }],
    severity: 'severe',
    action: 'clean',
    trade: 'plumber',
    limit:
      'water 50 % of the pipe diameter or more (the source names no action; cleaning and a price are common practice)',
    source: sources.seattle,
    why: solidsSettle,
    next: 'Have the line cleaned, and have a licensed plumber say whether this length should be laid again.',
  },
  {
    id: 'sag-over-1-inch',
    kinds: ['belly'],
    when: [{ fact: 'inches', over: 1 }],
    severity: null,
    action: 'none',
    needsCorrection: true,
    limit: 'over 1 inch of standing water',
    source: sources.sewerScope,
    why: 'This depth is on the published list of things to report as in need of correction.',
  },
  {
    id: 'sag-heavy',
    kinds: ['belly'],
    when: [depthUnsaid, { fact: 'degree', is: ['heavy'] }],
    severity: 'moderate',
    action: 'watch',
    again: 'within a year',
    limit: 'called heavy, no depth said',
    source: sources.customary,
    why: solidsSettle,
    next: 'Have the depth of the water measured, and the place looked at again within a year.',
  },
  {
    id: 'sag-depth-unsaid',
    kinds: ['belly'],
    when: [depthUnsaid, { fact: 'degree', known: false }],
    severity: null,
    action: 'settle',
    limit: 'no depth said, so the published tiers cannot be applied',
    source: sources.customary,
    why: 'The published tiers go by the depth of the water.',
    next: 'Have the depth of the water measured, and the place graded then.',
  },
  {
    id: 'sag-light-or-moderate',
    kinds: ['belly'],
    when: [depthUnsaid, { fact: 'degree', is: ['light', 'moderate'] }],
    severity: 'minor',
    action: 'watch',
    again: 'every two to five years',
    limit: 'called light or moderate, no depth said',
    source: sources.customary,
    why: solidsSettle,
    next: 'Have the depth of the water measured the next time the line is looked at.',
  },
];
