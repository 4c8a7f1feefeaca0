import type { Token } from './token.ts';

/** Silence that ends a clause, and speaks for a new statement, where nothing is printed, in seconds. */
const CLAUSE_SECONDS = 0.45;

/** Whether a clause may end at the silence before a token. */
export const isSilentBefore = (token: Token | undefined): boolean =>
  token !== undefined && token.pauseBeforeSeconds >= CLAUSE_SECONDS;
