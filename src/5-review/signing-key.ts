/**
 * The inspector's signing key: Ed25519, made on the first signing, kept in the user's configuration folder for this
 * user only (mode 0600) and never in an inspection.
 */
import { createHash, createPrivateKey, createPublicKey, generateKeyPairSync, type KeyObject } from 'node:crypto';
import { chmod, mkdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { writeWhole } from '../disk/write-whole.ts';
import { ReviewError } from './review-error.ts';

const keyFile = 'signing-key.pem';
/** The fixed first bytes of an Ed25519 public key in SPKI form (RFC 8410); the 32 raw bytes follow. */
const spkiStart = Buffer.from('302a300506032b6570032100', 'hex');

/** Reads the key, or makes it. @throws ReviewError when the file is there and is no such key. */
export async function readOrMakeKey(configFolder: string): Promise<KeyObject> {
  const path = join(configFolder, keyFile);
  const pem = await readFile(path, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return null;
    throw new ReviewError(`The signing key ${path} cannot be read (${error.code}): check its permissions.`);
  });
  if (pem !== null) {
    await closeToOthers(path);
    return parseKey(pem, path);
  }
  await mkdir(configFolder, { recursive: true, mode: 0o700 });
  const { privateKey } = generateKeyPairSync('ed25519');
  await writeWhole(path, privateKey.export({ type: 'pkcs8', format: 'pem' }) as string, 0o600);
  return privateKey;
}

/** The public key of this user's signing key, raw base64; null when there is no key yet. */
export async function ownPublicKey(configFolder: string): Promise<string | null> {
  const pem = await readFile(join(configFolder, keyFile), 'utf8').catch(() => null);
  if (pem === null) return null;
  try {
    return rawPublicKey(createPrivateKey(pem));
  } catch {
    return null;
  }
}

export function rawPublicKey(key: KeyObject): string {
  const spki = createPublicKey(key).export({ type: 'spki', format: 'der' });
  return spki.subarray(spkiStart.length).toString('base64');
}

/** @throws when it is not 32 bytes of base64. */
export function publicKeyFromRaw(raw: string): KeyObject {
  return createPublicKey({ key: Buffer.concat([spkiStart, Buffer.from(raw, 'base64')]), format: 'der', type: 'spki' });
}

/** A short name of a key that two people can compare by voice: six groups of four. */
export function keyFingerprint(raw: string): string {
  const sum = createHash('sha256').update(Buffer.from(raw, 'base64')).digest('hex').slice(0, 24);
  return sum.match(/.{4}/g)!.join(' ');
}

function parseKey(pem: string, path: string): KeyObject {
  try {
    const key = createPrivateKey(pem);
    if (key.asymmetricKeyType === 'ed25519') return key;
  } catch {
    // Said below, the same for both.
  }
  throw new ReviewError(`${path} is no Ed25519 key: put the right file back, or move it away to have a new key made.`);
}

async function closeToOthers(path: string): Promise<void> {
  if (process.platform === 'win32') return;
  const { mode } = await stat(path);
  if ((mode & 0o077) !== 0) await chmod(path, 0o600);
}
