/** Whether a misheard word stands where the word it is taken for would stand. */
import type { Misheard } from '../../../shared/vocabulary/kind.ts';
import type { NumberPhrase } from '../number/read-number.ts';
import type { Token } from '../token/token.ts';

/** How near a number must stand, in tokens. */
const NEAR_TOKENS = 8;
/** And where the word stands as a noun, between an article and what belongs to it. */
const NEAR_NOUN_TOKENS = 12;

const articles =
  /^(a|an|another|the|that|big|little|small|heavy|light|some|old|this|full|possible|first|second|no|moderate|deep|slight|bad)$/;
const fittingAfter =
  /^(on|coming|comes|for|from|in|at|with|here|there|off|up|to|down|is|and|that|where|right|left|about|looking|facing|pointing|opening|going|goes|opens|serving|serves|picking|picks|straight|fitting|connection|branch|by|which)$/;
const pipeWords = /^(to|into|from|old|inch|of|it|'s|is|in|and|this|that|the|then|goes|becomes|over|pipe|iron|here)$/;

export function frameTest(
  tokens: readonly Token[],
  numbers: readonly NumberPhrase[],
): (need: Misheard['needs'], from: number, to: number) => boolean {
  const sentenceOf = sentenceIndexes(tokens);
  const nearNumber = (from: number, to: number, reach = NEAR_TOKENS): boolean =>
    numbers.some(
      (number) =>
        number.value > 0 &&
        ((number.to <= from && from - number.to <= reach) || (number.from >= to && number.from - to <= reach)) &&
        Math.abs((sentenceOf[number.from] ?? 0) - (sentenceOf[from] ?? 0)) <= 1,
    );
  return (need, from, to) => {
    if (need === 'nothing') return true;
    const before = tokens[from - 1];
    const isJoined = before !== undefined && before.breakAfter === 'none';
    const after = tokens[to];
    if (need === 'material') {
      const isAfterPipe = isJoined && /^(to|into|inch|old|of|in|is|'s)$/.test(before.text);
      const beforeTwo = tokens[from - 2]?.text ?? '';
      const isPipe =
        /^(pipe|iron|inch|joint|joints)$/.test(after?.text ?? '') && (tokens[to - 1]?.breakAfter ?? 'stop') === 'none';
      return (
        (isAfterPipe &&
          (pipeWords.test(beforeTwo) || /^\d+$/.test(beforeTwo) || nearNumber(from, to)) &&
          !/^(with|in|on|a|the)$/.test(after?.text ?? '')) ||
        isPipe
      );
    }
    const startsSentence = from === 0 || before?.breakAfter === 'stop' || before?.breakAfter === 'question';
    const afterNumber = numbers.some(
      (number) => number.to === from || (number.to === from - 1 && /^(feet|foot)$/.test(before?.text ?? '')),
    );
    const hasArticle = isJoined && articles.test(before.text);
    if (need === 'article') {
      const isNoun = hasArticle || startsSentence || afterNumber || before?.breakAfter === 'comma';
      const fits =
        after === undefined || (tokens[to - 1]?.breakAfter ?? 'stop') !== 'none' || fittingAfter.test(after.text);
      return (
        isNoun &&
        fits &&
        nearNumber(from, to, NEAR_NOUN_TOKENS) &&
        (hasArticle ? !/^(the|that|this)$/.test(before?.text ?? '') || afterNumber || fits : true)
      );
    }
    return nearNumber(from, to);
  };
}

function sentenceIndexes(tokens: readonly Token[]): number[] {
  let index = 0;
  return tokens.map((token) => {
    const own = index;
    if (token.breakAfter === 'stop' || token.breakAfter === 'question') index += 1;
    return own;
  });
}
