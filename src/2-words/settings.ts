/** How the recogniser is set: measured on narrations in voices it was not tuned on, see docs/hearing.md. */
import type { HearingSettings } from './hear-windows.ts';
import { tradePhrases } from './trade-phrases.ts';

/** Nats a token that a beam gains on a trade phrase, and on one of the speaker's own words. */
const TRADE_BONUS = 0.8;
const OWN_BONUS = 1;

export function defaultSettings(ownWords: readonly string[]): HearingSettings {
  const ownPhrases = ownWords.map((text) => ({ text, bonus: OWN_BONUS }));
  return {
    // The model was tuned to the trade's talk: a prompt of it brought nothing more, and costs a fifth of the time.
    prompt: '',
    phrases: [...tradePhrases().map((text) => ({ text, bonus: TRADE_BONUS })), ...ownPhrases],
    ownPhrases,
    languageWeight: 0.3,
    beams: 8,
    pruneNats: 8,
    tailSeconds: 3,
    isSecondLookWanted: true,
    quietBelowDecibels: 9,
    isCalibrated: true,
  };
}
