/**
 * Verifying. In: an inspection folder. Out: for every signed version who signed what and when, whether the signature
 * holds, and what has changed since. Reads only; needs no key and no network.
 */
import { createHash, verify } from 'node:crypto';
import { readFile, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { type Manifest, manifestSchema, signatureSchema } from '../../shared/schemas/signature.ts';
import { hashFile } from './hash-file.ts';
import { ReviewError } from './review-error.ts';
import { parseJson, signedFolder, versionNumbers } from './sign-inspection.ts';
import { keyFingerprint, ownPublicKey, publicKeyFromRaw } from './signing-key.ts';

export interface VerifiedVersion {
  readonly version: number;
  /** Null when the manifest cannot be read. */
  readonly manifest: Manifest | null;
  /** Empty when signature, copies and chain hold: one sentence a fault. */
  readonly faults: readonly string[];
  readonly fingerprint: string | null;
  readonly isOwnKey: boolean;
}

export interface Verification {
  readonly versions: readonly VerifiedVersion[];
  /** Files that differ today from the newest version, one sentence each. Empty: nothing changed since. */
  readonly changedSince: readonly string[];
  /** True when every version holds and nothing changed since the newest. */
  readonly isWhole: boolean;
}

/** @throws ReviewError when there is no such folder or nothing was ever signed in it. */
export async function verifyInspection(
  folder: string,
  configFolder: string,
  recording?: readonly string[],
): Promise<Verification> {
  if (!(await stat(folder).catch(() => null))?.isDirectory()) {
    throw new ReviewError(`There is no folder ${folder}: give the folder of an inspection.`);
  }
  const root = join(folder, signedFolder);
  const numbers = await versionNumbers(root);
  if (numbers.length === 0) {
    throw new ReviewError(`Nothing in ${folder} has been signed: sign it with "lineword review".`);
  }
  const ownKey = await ownPublicKey(configFolder);
  const versions: VerifiedVersion[] = [];
  let previousSum: string | null = null;
  for (const [index, version] of numbers.entries()) {
    const { verified, sum } = await verifyVersion(join(root, String(version)), version, previousSum, ownKey);
    const isMissingBefore = version !== index + 1;
    versions.push(
      isMissingBefore
        ? { ...verified, faults: [...verified.faults, `The version before ${version} is missing.`] }
        : verified,
    );
    previousSum = sum;
  }
  const newest = versions.at(-1)!.manifest;
  const changedSince = newest ? await differences(folder, newest, recording) : [];
  const isWhole = changedSince.length === 0 && versions.every(({ faults }) => faults.length === 0);
  return { versions, changedSince, isWhole };
}

async function verifyVersion(place: string, version: number, previousSum: string | null, ownKey: string | null) {
  const bytes = await readFile(join(place, 'manifest.json')).catch(() => null);
  const parsed = manifestSchema.safeParse(parseJson(bytes?.toString('utf8') ?? ''));
  const sum = bytes && createHash('sha256').update(bytes).digest('hex');
  if (!bytes || !parsed.success) {
    const faults = [`The manifest of version ${version} is missing or cannot be read.`];
    return { verified: { version, manifest: null, faults, fingerprint: null, isOwnKey: false }, sum };
  }
  const manifest = parsed.data;
  const faults: string[] = [];
  if (!(await signatureHolds(place, bytes, manifest))) {
    faults.push(`The signature of version ${version} does not fit its manifest: one of them was changed.`);
  }
  if (manifest.version !== version) faults.push(`Version ${version} says that it is version ${manifest.version}.`);
  if (manifest.previous !== previousSum) {
    faults.push(`Version ${version} names another version before it than the one that is there.`);
  }
  for (const { role, file, sha256 } of manifest.files) {
    if (role === 'recording') continue;
    const found = await hashFile(join(place, file)).catch(() => null);
    if (!found) faults.push(`The signed copy of ${file} in version ${version} is missing.`);
    else if (found.sha256 !== sha256) faults.push(`The signed copy of ${file} in version ${version} was changed.`);
  }
  const fingerprint = keyFingerprint(manifest.publicKey);
  return { verified: { version, manifest, faults, fingerprint, isOwnKey: ownKey === manifest.publicKey }, sum };
}

async function signatureHolds(place: string, manifestBytes: Buffer, manifest: Manifest): Promise<boolean> {
  const text = await readFile(join(place, 'signature.json'), 'utf8').catch(() => '');
  const parsed = signatureSchema.safeParse(parseJson(text));
  if (!parsed.success) return false;
  try {
    const key = publicKeyFromRaw(manifest.publicKey);
    return verify(null, manifestBytes, key, Buffer.from(parsed.data.signature, 'base64'));
  } catch {
    return false;
  }
}

/** How the folder differs today from what was signed last. */
async function differences(folder: string, manifest: Manifest, recording?: readonly string[]): Promise<string[]> {
  const sentences: string[] = [];
  for (const { role, file, sha256, part } of manifest.files) {
    const places =
      role !== 'recording'
        ? [join(folder, file)]
        : recording?.length
          ? [resolve(recording[(part ?? 1) - 1] ?? '')]
          : [join(folder, file), join(dirname(resolve(folder)), file)];
    let found: { sha256: string } | null = null;
    for (const path of places) found ??= await hashFile(path).catch(() => null);
    if (!found) sentences.push(`${file} is no longer there.`);
    else if (found.sha256 !== sha256) sentences.push(`${file} was changed after signing.`);
  }
  for (const [role, file] of [
    ['decisions', 'decisions.jsonl'],
    ['grade', 'grade.json'],
  ] as const) {
    const wasSigned = manifest.files.some((signed) => signed.role === role);
    if (!wasSigned && (await stat(join(folder, file)).catch(() => null))?.size) {
      sentences.push(`${file} came after signing.`);
    }
  }
  return sentences;
}
