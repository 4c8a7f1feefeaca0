/** An explanation as an indented tree, the time at the left of what was said. */
import { shortTime } from '../../shared/wording/short.ts';
import type { Explanation, ExplanationNode } from '../4-observations/explain-draft.ts';
import type { Effects } from './effects.ts';
import { wrap } from './wrap.ts';

const timeWidth = 8;

export function explainTree(explanation: Explanation, effects: Pick<Effects, 'columns' | 'style'>): string {
  return explanation.map((node) => nodeLines(node, 0, effects).join('\n')).join('\n\n');
}

function nodeLines(node: ExplanationNode, depth: number, effects: Pick<Effects, 'columns' | 'style'>): string[] {
  const time = (node.seconds === null ? '' : shortTime(node.seconds)).padStart(timeWidth - 1);
  const indent = '  '.repeat(depth);
  const blank = ' '.repeat(timeWidth) + indent;
  const title = wrap(breakable(node.title), effects.columns, `${time} ${indent}`, `${blank}  `);
  return [
    ...(depth === 0 ? title.map((line) => effects.style('bold', line)) : title),
    ...node.flags.flatMap((flag) => wrap(flag, effects.columns, `${blank}! `, `${blank}  `)),
    ...node.children.flatMap((child) => nodeLines(child, depth + 1, effects)),
  ];
}

/** A rule's long list of alternatives has no spaces: it may break after each. */
function breakable(text: string): string {
  return text.replace(/\S{30,}/g, (word) => word.replaceAll('|', '| '));
}
