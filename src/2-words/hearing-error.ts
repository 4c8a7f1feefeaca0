/** What a person can meet when a recording cannot be heard: the message is one sentence that says what to do. */
export class HearingError extends Error {
  override readonly name = 'HearingError';
}
