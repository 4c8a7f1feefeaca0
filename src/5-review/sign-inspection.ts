/**
 * Signing. In: an inspection whose flags are all settled. Out: `signed/<version>/` with copies of what was signed,
 * the manifest (SHA-256 of recording, words, draft, decisions and grade) and the Ed25519 signature over the
 * manifest's bytes. A later signing makes the next version, which names the manifest before it; the old stays as it is.
 * Refuses while anything flagged is open or a drawn listen is missing.
 */
import { createHash, sign } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { Decision } from '../../shared/schemas/decision.ts';
import {
  type Manifest,
  manifestSchema,
  type Signature,
  type SignedFileRole,
  type SignedVersion,
} from '../../shared/schemas/signature.ts';
import { writeWhole } from '../disk/write-whole.ts';
import { applyDecisions } from './apply-decisions.ts';
import { decisionsFile } from './decision-log.ts';
import { hashFile } from './hash-file.ts';
import { type Inspection, recordingParts } from './inspection.ts';
import { rememberInspector } from './inspector.ts';
import { ReviewError } from './review-error.ts';
import { rawPublicKey, readOrMakeKey } from './signing-key.ts';
import { whyNotToSign } from './why-not-to-sign.ts';

export const signedFolder = 'signed';

export interface Signer {
  readonly name: string;
  readonly licence: string | null;
  readonly statement: string;
}

const copiedFiles: readonly { role: SignedFileRole; file: string }[] = [
  { role: 'words', file: 'words.json' },
  { role: 'draft', file: 'draft.json' },
  { role: 'decisions', file: decisionsFile },
  { role: 'grade', file: 'grade.json' },
];

/** @throws ReviewError when something is still open, or the files cannot be read or written. */
export async function signInspection(
  inspection: Inspection,
  decisions: readonly Decision[],
  signer: Signer,
  configFolder: string,
  now: () => Date = () => new Date(),
): Promise<SignedVersion> {
  const reviewed = applyDecisions(inspection.draft, decisions);
  const why = whyNotToSign(reviewed);
  if (why) throw new ReviewError(why);
  if (signer.name.trim() === '' || signer.statement.trim() === '') {
    throw new ReviewError('A name and a statement are needed to sign: fill them in.');
  }
  await refuseOldGrade(inspection.folder);
  const root = join(inspection.folder, signedFolder);
  const version = (await versionNumbers(root)).at(-1) ?? 0;
  const key = await readOrMakeKey(configFolder);
  const place = join(root, String(version + 1));
  const making = `${place}.part`;
  await rm(making, { recursive: true, force: true });
  await mkdir(making, { recursive: true });

  const files: Manifest['files'] = [];
  for (const [index, file] of inspection.recordingFiles.entries()) {
    const part = inspection.recordingFiles.length > 1 ? { part: index + 1 } : {};
    const sums = await hashFile(file).catch(() => null);
    if (sums?.sha256 !== recordingParts(inspection)[index]?.sha256) {
      throw new ReviewError(`${file} was changed or taken away since it was drafted: put it back before you sign.`);
    }
    files.push({ role: 'recording', file: basename(file), ...sums!, ...part });
  }
  for (const { role, file } of copiedFiles) {
    const content = await readFile(join(inspection.folder, file)).catch(() => null);
    if (role === 'draft' && (!content || sha256(content) !== inspection.draftSha256)) {
      throw new ReviewError('The draft was changed while this review was open: close the review and open it again.');
    }
    if (!content) continue;
    await writeWhole(join(making, file), content);
    files.push({ role, file, sha256: sha256(content), bytes: content.length });
  }
  const count = (state: string) => reviewed.observations.filter((o) => o.reviewState === state).length;
  const manifest: Manifest = {
    schema: 'lineword/manifest@1',
    version: version + 1,
    previous: version === 0 ? null : sha256(await readFile(join(root, String(version), 'manifest.json'))),
    signedAt: now().toISOString(),
    signer: {
      name: signer.name.trim(),
      licence: signer.licence?.trim() || null,
      statement: signer.statement.trim(),
    },
    publicKey: rawPublicKey(key),
    files,
    review: {
      observations: reviewed.observations.length,
      confirmed: count('confirmed'),
      rejected: count('rejected'),
      listened: reviewed.listening.listened,
      listenedWrong: reviewed.listening.wrong,
      silentErrorUpper95: reviewed.listening.upper95,
      orphanedDecisions: reviewed.orphanedDecisions.length,
    },
  };
  const bytes = Buffer.from(`${JSON.stringify(manifest, null, 1)}\n`);
  const signature: Signature = {
    schema: 'lineword/signature@1',
    algorithm: 'Ed25519',
    manifest: sha256(bytes),
    signature: sign(null, bytes, key).toString('base64'),
  };
  await writeWhole(join(making, 'manifest.json'), bytes);
  await writeWhole(join(making, 'signature.json'), `${JSON.stringify(signature, null, 1)}\n`);
  await rename(making, place);
  await rememberInspector(configFolder, manifest.signer);
  return { version: version + 1, ...manifest.signer, signedAt: manifest.signedAt, isCurrent: true };
}

/** A grade that was made before the last decision is none of what was decided. */
async function refuseOldGrade(folder: string): Promise<void> {
  const changed = (file: string) =>
    stat(join(folder, file)).then(
      ({ mtimeMs }) => mtimeMs,
      () => null,
    );
  const [graded, decided] = await Promise.all([changed('grade.json'), changed(decisionsFile)]);
  if (graded !== null && decided !== null && graded < decided) {
    throw new ReviewError(
      'The grade is older than the last decision: run "lineword grade" on this folder again, then sign.',
    );
  }
}

/** Versions there are, oldest first, with whether the newest still holds what is in the folder. */
export async function signedVersions(inspection: Inspection, decisionCount: number): Promise<SignedVersion[]> {
  const root = join(inspection.folder, signedFolder);
  const versions: SignedVersion[] = [];
  for (const version of await versionNumbers(root)) {
    const text = await readFile(join(root, String(version), 'manifest.json'), 'utf8').catch(() => '');
    const parsed = manifestSchema.safeParse(parseJson(text));
    if (!parsed.success) continue;
    const { signer, signedAt, files } = parsed.data;
    versions.push({
      version,
      name: signer.name,
      licence: signer.licence,
      signedAt,
      isCurrent: await holdsStill(inspection.folder, files, decisionCount),
    });
  }
  return versions;
}

async function holdsStill(folder: string, files: Manifest['files'], decisionCount: number): Promise<boolean> {
  const signedDecisions = files.find(({ role }) => role === 'decisions');
  if (!signedDecisions && decisionCount > 0) return false;
  for (const { role, file, sha256: sum } of files) {
    if (role !== 'draft' && role !== 'decisions') continue;
    const found = await hashFile(join(folder, file)).catch(() => null);
    if (found?.sha256 !== sum) return false;
  }
  return true;
}

export async function versionNumbers(root: string): Promise<number[]> {
  const names = await readdir(root).catch(() => []);
  return names
    .filter((name) => /^[1-9]\d*$/.test(name))
    .map(Number)
    .sort((a, b) => a - b);
}

export function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
