/**
 * One decision as a line of `decisions.jsonl`. The line ends with `"sum"`, the SHA-256 of the line as it would be
 * without it, and carries in `previous` the sum of the line before: a changed, removed or inserted line breaks the
 * chain. The sum is taken over the bytes as written, so that no reading and writing of JSON can change it.
 */
import { createHash } from 'node:crypto';
import { type Decision, type DecisionBody, decisionSchema } from '../../shared/schemas/decision.ts';

export interface SealedDecision {
  readonly decision: Decision;
  readonly sum: string;
  /** Without the line break. */
  readonly line: string;
}

const tail = /,"sum":"([0-9a-f]{64})"\}$/;

export function sealDecision(decision: Decision): SealedDecision {
  const { n, id, time, person, previous, ...body } = decision;
  const plain = JSON.stringify({ n, id, time, person, ...(body as DecisionBody), previous });
  const sum = createHash('sha256').update(plain).digest('hex');
  return { decision, sum, line: `${plain.slice(0, -1)},"sum":"${sum}"}` };
}

export type OpenedLine = { readonly sealed: SealedDecision } | { readonly fault: string };

/** Reads a line back. A fault says in a few words what is wrong with it. */
export function openLine(line: string): OpenedLine {
  const sum = tail.exec(line)?.[1];
  if (!sum) return { fault: 'it is not a whole decision' };
  const plain = `${line.slice(0, line.length - sum.length - ',"sum":""}'.length)}}`;
  if (createHash('sha256').update(plain).digest('hex') !== sum) return { fault: 'it was changed after it was written' };
  const parsed = decisionSchema.safeParse(JSON.parse(plain));
  if (!parsed.success) return { fault: 'it holds a decision this version does not know' };
  return { sealed: { decision: parsed.data, sum, line } };
}
