/** Tokens and what they spell; which of them steer the recogniser, and which it may never print. */

interface Tokenizer {
  encode(text: string, options: { add_special_tokens: boolean }): number[];
  decode(ids: number[], options: Record<string, boolean>): string;
}

export interface GenerationConfig {
  readonly alignment_heads?: readonly (readonly [number, number])[];
  readonly decoder_start_token_id: number;
  readonly eos_token_id?: number;
  readonly pad_token_id: number;
  readonly prev_sot_token_id?: number;
  readonly no_timestamps_token_id: number;
  readonly lang_to_id?: Record<string, number>;
  readonly task_to_id?: Record<string, number>;
  readonly suppress_tokens?: readonly number[];
  readonly begin_suppress_tokens?: readonly number[];
}

export interface TokenTable {
  readonly end: number;
  readonly noSpeech: number;
  readonly firstSpecial: number;
  /** The tokens before the text: prompt, start, language, task, no timestamps. */
  opening(promptTokens: readonly number[]): number[];
  encode(text: string): number[];
  decode(ids: readonly number[]): string;
  /** What a single token spells; a leading space begins a word. */
  piece(id: number): string;
  beginsWord(id: number): boolean;
  readonly suppressed: readonly number[];
  readonly suppressedAtStart: readonly number[];
}

/** How many tokens stand before the text when there is no prompt. */
export const OPENING_LENGTH = 4;

export function makeTokenTable(tokenizer: Tokenizer, config: GenerationConfig): TokenTable {
  const pieces = new Map<number, string>();
  const end = config.eos_token_id ?? config.pad_token_id;
  const spell = (ids: readonly number[]): string =>
    tokenizer.decode([...ids], { skip_special_tokens: true, clean_up_tokenization_spaces: false });
  const piece = (id: number): string => {
    let found = pieces.get(id);
    if (found === undefined) {
      found = id >= end ? '' : spell([id]);
      pieces.set(id, found);
    }
    return found;
  };
  const start = [
    config.decoder_start_token_id,
    config.lang_to_id?.['<|en|>'] ?? end + 2,
    config.task_to_id?.transcribe ?? end + 102,
    config.no_timestamps_token_id,
  ];
  return {
    end,
    noSpeech: config.no_timestamps_token_id - 1,
    firstSpecial: end,
    opening: (promptTokens) =>
      promptTokens.length > 0 ? [config.prev_sot_token_id ?? end + 104, ...promptTokens, ...start] : start,
    encode: (text) => tokenizer.encode(text, { add_special_tokens: false }),
    decode: spell,
    piece,
    beginsWord: (id) => id === end || /^[\s\p{P}]/u.test(piece(id)),
    suppressed: config.suppress_tokens ?? [],
    suppressedAtStart: config.begin_suppress_tokens ?? [],
  };
}
