/** What a person can meet when a recording cannot be read: the message is one sentence that says what to do. */
export class RecordingError extends Error {
  override readonly name = 'RecordingError';
}
