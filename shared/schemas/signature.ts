/**
 * The signature of an inspection. Each signing makes a folder `signed/<version>/` beside the draft with copies of
 * the files it covers (all but the recording), `manifest.json`, and `signature.json`.
 * The signature is Ed25519 (RFC 8032) over the exact bytes of `manifest.json`.
 */
import { z } from 'zod';

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

export const signedFileRoles = ['recording', 'words', 'draft', 'decisions', 'grade'] as const;

export const manifestSchema = z.object({
  schema: z.literal('lineword/manifest@1'),
  version: z.number().int().positive(),
  /** SHA-256 of the manifest of the version before; null for the first. */
  previous: sha256.nullable(),
  signedAt: z.iso.datetime({ offset: true }),
  signer: z.object({
    name: z.string().min(1),
    /** Licence or certificate number, when the signer gave one. */
    licence: z.string().nullable(),
    statement: z.string().min(1),
  }),
  /** The raw 32-byte public key, base64. */
  publicKey: z.string(),
  files: z
    .array(
      z.object({
        role: z.enum(signedFileRoles),
        file: z.string(),
        sha256,
        bytes: z.number().int().nonnegative(),
        /** When the inspection has several recordings: which part this is, counted from 1. */
        part: z.number().int().positive().optional(),
      }),
    )
    .min(1),
  /** How the review stood when it was signed. */
  review: z.object({
    observations: z.number().int(),
    confirmed: z.number().int(),
    rejected: z.number().int(),
    listened: z.number().int(),
    listenedWrong: z.number().int(),
    silentErrorUpper95: z.number().nullable(),
    orphanedDecisions: z.number().int(),
  }),
});

export const signatureSchema = z.object({
  schema: z.literal('lineword/signature@1'),
  algorithm: z.literal('Ed25519'),
  /** SHA-256 of the bytes of `manifest.json`. */
  manifest: sha256,
  /** Base64, 64 bytes. */
  signature: z.string(),
});

export type SignedFileRole = (typeof signedFileRoles)[number];
export type Manifest = z.infer<typeof manifestSchema>;
export type Signature = z.infer<typeof signatureSchema>;

/** What a list of versions shows of each. */
export interface SignedVersion {
  readonly version: number;
  readonly name: string;
  readonly licence: string | null;
  readonly signedAt: string;
  /** False once decisions were made, or the draft changed, after this version was signed. */
  readonly isCurrent: boolean;
}
