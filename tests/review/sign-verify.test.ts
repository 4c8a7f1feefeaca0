import { createHash, generateKeyPairSync, sign, verify } from 'node:crypto';
import { appendFile, chmod, cp, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { DecisionBody } from '../../shared/schemas/decision.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { openDecisionLog } from '../../src/5-review/decision-log.ts';
import { readInspection } from '../../src/5-review/inspection.ts';
import { valuesOf } from '../../src/5-review/set-fields.ts';
import { signInspection } from '../../src/5-review/sign-inspection.ts';
import { publicKeyFromRaw, rawPublicKey } from '../../src/5-review/signing-key.ts';
import { verifyInspection } from '../../src/5-review/verify-inspection.ts';
import { writeInspection } from './make-inspection.ts';

const signer = { name: 'R. Inspector', licence: 'PL-1234', statement: 'These findings are mine.' };

/** Confirms everything that is flagged or drawn. */
async function settled() {
  const { folder, draft, configFolder } = await writeInspection();
  const reviewed = applyDecisions(draft, []);
  const due = <T extends { reviewState: string; isDrawn: boolean }>(item: T) =>
    item.reviewState === 'open' || item.isDrawn;
  const bodies: DecisionBody[] = [
    ...reviewed.observations
      .filter(due)
      .map((o) => ({ action: 'confirm' as const, subject: o.subject, values: valuesOf(o) })),
    ...[...reviewed.unplaced, ...reviewed.setAside, ...reviewed.absent]
      .filter(due)
      .map((one) => ({ action: 'confirm' as const, subject: one.subject, values: {} })),
  ];
  const log = await openDecisionLog(folder);
  for (const [n, body] of bodies.entries()) await log.append(body, { id: `id-${n}`, person: 'R. Inspector' });
  await log.close();
  return { folder, configFolder };
}

async function signIn(folder: string, configFolder: string) {
  const inspection = await readInspection(folder);
  const log = await openDecisionLog(folder);
  await log.close();
  return signInspection(inspection, log.decisions, signer, configFolder);
}

describe('signing', () => {
  test('is refused while something is open', async () => {
    const { folder, configFolder } = await writeInspection();
    await expect(signIn(folder, configFolder)).rejects.toThrow('4 flagged items are still open: settle them first.');
    await expect(verifyInspection(folder, configFolder)).rejects.toThrow(/has been signed/);
  });
  test('is refused when the draft or the recording is no longer what was reviewed', async () => {
    const { folder, configFolder } = await settled();
    const inspection = await readInspection(folder);
    const log = await openDecisionLog(folder);
    await log.close();
    const sign = () => signInspection(inspection, log.decisions, signer, configFolder);
    for (const [file, sentence] of [
      ['draft.json', /draft was changed while this review was open: close the review and open it again\.$/],
      ['alder.wav', /alder\.wav was changed or taken away since it was drafted: put it back before you sign\.$/],
    ] as const) {
      const before = await readFile(join(folder, file));
      await appendFile(join(folder, file), ' ');
      await expect(sign()).rejects.toThrow(sentence);
      await writeFile(join(folder, file), before);
    }
    await rm(join(folder, 'alder.wav'));
    await expect(sign()).rejects.toThrow(/put it back/);
    await expect(verifyInspection(folder, configFolder)).rejects.toThrow(/has been signed/);
  });
  test('holds, says who, and keeps the key outside, for this user only', async () => {
    const { folder, configFolder } = await settled();
    await signIn(folder, configFolder);
    const found = await verifyInspection(folder, configFolder);
    expect(found).toMatchObject({ isWhole: true, changedSince: [] });
    expect(found.versions).toMatchObject([
      { version: 1, isOwnKey: true, faults: [], manifest: { signer, previous: null } },
    ]);
    expect(found.versions[0]!.manifest!.files.map((file) => file.role)).toEqual([
      'recording',
      'words',
      'draft',
      'decisions',
    ]);
    const key = await stat(join(configFolder, 'signing-key.pem'));
    expect(key.mode & 0o777).toBe(0o600);
    expect(dirname(folder)).not.toContain(configFolder);
  });
  test('is refused over a grade that is older than the last decision', async () => {
    const { folder, configFolder } = await settled();
    const grade = join(folder, 'grade.json');
    await writeFile(grade, '{}');
    await utimes(grade, new Date(), new Date(Date.now() - 60_000));
    await expect(signIn(folder, configFolder)).rejects.toThrow(/The grade is older .* run "lineword grade"/);
    await utimes(grade, new Date(), new Date(Date.now() + 60_000));
    await signIn(folder, configFolder);
    const found = await verifyInspection(folder, configFolder);
    expect(found.versions[0]!.manifest!.files.map((file) => file.role)).toContain('grade');
    expect(found.isWhole).toBe(true);
  });
  test('a key left readable by others is closed', async () => {
    const { folder, configFolder } = await settled();
    await signIn(folder, configFolder);
    await chmod(join(configFolder, 'signing-key.pem'), 0o644);
    await appendFile(join(folder, 'draft.json'), ' ');
    await signIn(folder, configFolder);
    expect((await stat(join(configFolder, 'signing-key.pem'))).mode & 0o777).toBe(0o600);
  });
  test('every change to a signed file shows', async () => {
    const { folder, configFolder } = await settled();
    await signIn(folder, configFolder);
    for (const [file, sentence] of [
      ['draft.json', 'draft.json was changed after signing.'],
      ['words.json', 'words.json was changed after signing.'],
      ['decisions.jsonl', 'decisions.jsonl was changed after signing.'],
      ['alder.wav', 'alder.wav was changed after signing.'],
    ] as const) {
      const before = await readFile(join(folder, file));
      await appendFile(join(folder, file), ' ');
      const found = await verifyInspection(folder, configFolder);
      expect(found).toMatchObject({ isWhole: false, changedSince: [sentence] });
      expect(found.versions[0]!.faults).toEqual([]);
      await writeFile(join(folder, file), before);
    }
    await writeFile(join(folder, 'grade.json'), '{}');
    expect((await verifyInspection(folder, configFolder)).changedSince).toEqual(['grade.json came after signing.']);
  });
  test('a changed manifest, signature or signed copy breaks it', async () => {
    const { folder, configFolder } = await settled();
    await signIn(folder, configFolder);
    for (const file of ['manifest.json', 'signature.json', 'draft.json', 'decisions.jsonl', 'words.json']) {
      const path = join(folder, 'signed', '1', file);
      const before = await readFile(path);
      await writeFile(path, before.toString().replace('1', '2'));
      expect((await verifyInspection(folder, configFolder)).versions[0]!.faults).not.toEqual([]);
      await rm(path);
      expect((await verifyInspection(folder, configFolder)).versions[0]!.faults).not.toEqual([]);
      await writeFile(path, before);
    }
    expect((await verifyInspection(folder, configFolder)).isWhole).toBe(true);
  });
  test('signing over it with another key is told apart from the own key', async () => {
    const { folder, configFolder } = await settled();
    await signIn(folder, configFolder);
    const forged = generateKeyPairSync('ed25519').privateKey;
    const place = join(folder, 'signed', '1');
    const manifest = JSON.parse(await readFile(join(place, 'manifest.json'), 'utf8'));
    const bytes = Buffer.from(JSON.stringify({ ...manifest, publicKey: rawPublicKey(forged) }));
    await writeFile(join(place, 'manifest.json'), bytes);
    const signature = JSON.parse(await readFile(join(place, 'signature.json'), 'utf8'));
    await writeFile(
      join(place, 'signature.json'),
      JSON.stringify({
        ...signature,
        manifest: createHash('sha256').update(bytes).digest('hex'),
        signature: sign(null, bytes, forged).toString('base64'),
      }),
    );
    expect((await verifyInspection(folder, configFolder)).versions[0]).toMatchObject({ faults: [], isOwnKey: false });
  });
  test('a later version names the one before, and both can be verified', async () => {
    const { folder, configFolder } = await settled();
    await signIn(folder, configFolder);
    const log = await openDecisionLog(folder);
    await log.append({ action: 'undo', of: 'id-0' }, { id: 'later-1', person: 'x' });
    await log.append({ action: 'redo', of: 'id-0' }, { id: 'later-2', person: 'x' });
    await log.close();
    expect((await verifyInspection(folder, configFolder)).changedSince).toHaveLength(1);
    await signIn(folder, configFolder);
    const found = await verifyInspection(folder, configFolder);
    expect(found.isWhole).toBe(true);
    const first = await readFile(join(folder, 'signed', '1', 'manifest.json'));
    expect(found.versions[1]!.manifest!.previous).toBe(createHash('sha256').update(first).digest('hex'));
    await rm(join(folder, 'signed', '1'), { recursive: true });
    const cut = await verifyInspection(folder, configFolder);
    expect(cut.versions[0]!.faults.join(' ')).toMatch(/before 2 is missing/);
  });
  test('verifying works in a copy, without the key', async () => {
    const { folder, configFolder } = await settled();
    await signIn(folder, configFolder);
    await cp(folder, `${folder}-copy`, { recursive: true });
    await rm(configFolder, { recursive: true });
    const found = await verifyInspection(`${folder}-copy`, configFolder);
    expect(found.isWhole).toBe(true);
    expect(found.versions[0]!.isOwnKey).toBe(false);
  });
  test('the public key form is that of RFC 8032', () => {
    // RFC 8032, section 7.1, test 1: an empty message.
    const key = publicKeyFromRaw(
      Buffer.from('d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a', 'hex').toString('base64'),
    );
    const signature = Buffer.from(
      'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
      'hex',
    );
    expect(verify(null, Buffer.alloc(0), key, signature)).toBe(true);
    expect(verify(null, Buffer.from('x'), key, signature)).toBe(false);
  });
});
