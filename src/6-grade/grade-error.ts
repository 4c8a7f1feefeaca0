/** Grading cannot go on. The message is a sentence for the person at the keyboard. */
export class GradeError extends Error {
  override readonly name = 'GradeError';
}
