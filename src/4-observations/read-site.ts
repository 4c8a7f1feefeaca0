import type { Draft } from '../../shared/schemas/draft.ts';
import type { Word } from '../../shared/schemas/word.ts';
import type { Reading } from './reading.ts';

export function readSite(_reading: Reading, _words: readonly Word[]): Draft['site'] {
  return {};
}
