/** What is read of a number before it is whole, and the words it is read from. */
import type { Token } from '../token/token.ts';

export interface NumberPart {
  readonly value: number;
  readonly to: number;
  readonly isFourFigure?: boolean;
}

export type Tokens = readonly Token[];

export const text = (tokens: Tokens, index: number): string => tokens[index]?.text ?? '';
/** Whether the token before `index` runs on into it. */
export const runsOn = (tokens: Tokens, index: number): boolean => index > 0 && tokens[index - 1]?.breakAfter === 'none';
