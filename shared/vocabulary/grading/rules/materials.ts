/** Materials that a reader should know of. They inform and never raise a grade: age alone is no defect (SOP 1.2). */
import type { GradeRuleInput } from '../../../schemas/grade-rule.ts';
import { sources } from './sources.ts';

export const materialRules: readonly GradeRuleInput[] = [
  {
    id: 'bituminous-fiber-information',
    kinds: ['pipe', 'material-change'],
    when: [{ fact: 'material', is: ['bituminous-fiber'] }],
    severity: null,
    action: 'none',
    isInformation: true,
    limit: 'bituminous fiber pipe',
    source: sources.sewerScopeMaterials,
    why: 'It softens and flattens with age. The material by itself is no defect; what was seen in it is listed apart.',
    next: 'Ask a licensed plumber what can be done with this kind of pipe before paying for a spot repair.',
  },
  {
    id: 'asbestos-cement-information',
    kinds: ['pipe', 'material-change'],
    when: [{ fact: 'material', is: ['asbestos-cement'] }],
    severity: null,
    action: 'none',
    isInformation: true,
    limit: 'asbestos cement pipe',
    source: sources.sewerScopeMaterials,
    why: 'It is harmless while it is whole, and regulated when it is cut, broken or removed.',
    next: 'Nobody should cut or break it. Tell every contractor before work starts.',
  },
];
