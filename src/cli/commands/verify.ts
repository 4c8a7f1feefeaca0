/** `lineword verify`: who signed an inspection, when, and whether anything changed since. */
import type { Command } from 'commander';
import type { VerifiedVersion } from '../../5-review/verify-inspection.ts';
import { CliError } from '../cli-error.ts';

export interface VerifyOptions {
  recording?: string[];
  json?: true;
}

export function register(program: Command): void {
  program
    .command('verify')
    .summary('tell who signed an inspection and whether anything changed since')
    .description(
      'Checks every signed version in the folder: the signature, the signed copies, the chain of versions, and whether the files of today are still those that were signed. Ends with 1 when something does not hold.',
    )
    .argument('<folder>', 'the folder of the inspection')
    .option('--recording <file...>', 'where the recording is, when it is neither in the folder nor beside it')
    .option('--json', 'print the result as JSON')
    .addHelpText('after', '\nExamples:\n  lineword verify alder-court\n  lineword verify alder-court --json')
    .action(runVerify);
}

async function runVerify(folder: string, options: VerifyOptions): Promise<void> {
  const { verifyInspection } = await import('../../5-review/verify-inspection.ts');
  const { configFolder } = await import('../../disk/config-folder.ts');
  const found = await verifyInspection(folder, configFolder(), options.recording);
  if (options.json) process.stdout.write(`${JSON.stringify(found, null, 1)}\n`);
  else process.stdout.write(`${[...found.versions.map(versionText), ...found.changedSince].join('\n')}\n`);
  const faultCount = found.versions.flatMap(({ faults }) => faults).length;
  if (faultCount > 0) {
    throw new CliError('The signature does not hold: do not rely on this folder, and ask the signer for theirs.');
  }
  if (found.changedSince.length > 0) {
    throw new CliError(
      'The signature holds, but the folder is not what was signed: sign it anew, or restore the files.',
    );
  }
  if (!options.json) process.stdout.write('The signature holds, and nothing has changed since.\n');
}

function versionText({ version, manifest, faults, fingerprint, isOwnKey }: VerifiedVersion): string {
  if (!manifest) return faults.join('\n');
  const { name, licence, statement } = manifest.signer;
  const lines = [
    `Version ${version}: signed by ${name}${licence ? ` (${licence})` : ''} on ${manifest.signedAt}`,
    `  "${statement}"`,
    `  Key ${fingerprint} ${isOwnKey ? "(this computer's own)" : '(not of this computer: compare it with the signer)'}`,
    ...faults.map((fault) => `  ${fault}`),
  ];
  return lines.join('\n');
}
