/** What the report prints of a signature that was checked before it was handed over. */
export interface SignedFacts {
  readonly name: string;
  readonly license: string | null;
  readonly statement: string;
  /** ISO 8601 with its offset. */
  readonly time: string;
  readonly version: number;
  readonly manifestSha256: string;
  /** Raw Ed25519 key, base64. */
  readonly publicKey: string;
}
