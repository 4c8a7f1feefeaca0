/** How the recogniser is set: measured on narrations in voices it was not tuned on, see docs/hearing.md. */
import type { HearingSettings } from './hear-windows.ts';

export function defaultSettings(ownWords: readonly string[]): HearingSettings {
  return {
    prompt: '',
    phrases: ownWords.map((text) => ({ text, bonus: 1 })),
    beams: 4,
    pruneNats: 5,
    tailSeconds: 3,
  };
}
