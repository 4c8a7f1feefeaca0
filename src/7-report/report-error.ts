/** The report cannot be written. The message is a sentence for the person at the keyboard. */
export class ReportError extends Error {
  override readonly name = 'ReportError';
}
