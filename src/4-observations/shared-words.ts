/** The words of a stretch of talk by which a thing may be known again, though they name no kind. */
import type { Token } from '../3-phrases/token/token.ts';

/** Words that are said of everything. */
const common =
  /^(the|that|this|those|these|there|here|them|they|with|from|where|what|when|which|have|had|has|said|say|says|called|been|was|were|will|would|should|could|and|but|for|not|are|our|your|you|its|it's|feet|foot|right|left|top|bottom|side|about|first|second|third|last|one|two|three|little|big|old|same|end|ends|start|starts|edge|pipe|line|counter|number|footage|just|now|then|out|into|over|goes|comes|coming|going|know|look|like|see|bit|get|got|wrote|put|down|back|make|really|actually|wrong|mistake|correct|correction|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|half|quarter|point|all|any|some|more|much|very|that's|there's)$/;

/** What the forms of a word have in common. */
export const stem = (word: string): string => word.replace(/(ing|ed|es|s|y)$/, '');

export const tellingWords = (tokens: readonly Token[], { from, to }: { from: number; to: number }): string[] =>
  tokens
    .slice(from, to)
    .map(({ text }) => text)
    .filter((word) => word.length > 3 && !common.test(word) && !/^\d/.test(word))
    .map(stem);
