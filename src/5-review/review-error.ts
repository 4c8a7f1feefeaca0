/** Something about a review that a person can act on. The message is one sentence that says what to do. */
export class ReviewError extends Error {
  override readonly name = 'ReviewError';
}
