/** `lineword explain`: why the draft says what it says: words, rules, what was considered and rejected. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Command } from 'commander';
import { readOwnWords } from '../../5-review/own-words.ts';
import { configFolder } from '../../disk/config-folder.ts';
import { explain } from '../../pipeline.ts';
import { CliError } from '../cli-error.ts';
import { type Effects, realEffects } from '../effects.ts';
import { explainTree } from '../explain-tree.ts';
import { checkDraftFolder, fileNames, readWords } from '../inspection-folder.ts';
import { respell } from '../own-words.ts';

export interface ExplainOptions {
  json?: true;
}

export function register(program: Command): void {
  program
    .command('explain')
    .summary('show why the draft says what it says')
    .description(
      'Shows for each observation which words it came from, which rule read them, how sure it is, and why it is flagged.',
    )
    .argument('<folder>', 'the folder that "lineword draft" wrote')
    .option('--json', 'print the same as JSON')
    .addHelpText('after', '\nExamples:\n  lineword explain alder-court\n  lineword explain alder-court --json')
    .action((folder: string, options: ExplainOptions) => runExplain(folder, options, realEffects));
}

export async function runExplain(folder: string, options: ExplainOptions, effects: Effects): Promise<void> {
  await checkDraftFolder(folder);
  const wordsPath = join(folder, fileNames.words);
  if (!existsSync(wordsPath)) {
    throw new CliError(
      `${folder} holds no words.json, which explaining needs: run "lineword draft" on the recording again.`,
    );
  }
  const { words } = respell(await readWords(wordsPath), await readOwnWords(configFolder()));
  const explanation = await explain(words);
  effects.print(options.json ? JSON.stringify(explanation, null, 1) : explainTree(explanation, effects));
}
