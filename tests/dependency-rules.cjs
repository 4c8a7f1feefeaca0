/**
 * Who may import whom. A stage imports from lower stages, from `shared/` and from `src/disk/`; `cli`, `score` and
 * `bench` stand above all and nobody imports them. `shared/` and the page run in a browser too, so neither may reach
 * for Node.
 */
const stages = ['1-recording', '2-words', '3-phrases', '4-observations', '5-review', '6-grade', '7-report'];
const above = '^src/(cli|score|bench)/|^src/pipeline[.]ts$';

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...stages.slice(0, -1).map((stage, i) => ({
      name: `${stage}-imports-no-later-stage`,
      severity: 'error',
      from: { path: `^src/${stage}/` },
      to: { path: `^src/(${stages.slice(i + 1).join('|')})/` },
    })),
    {
      name: 'stages-know-no-command',
      severity: 'error',
      from: { path: '^src/[1-7]-' },
      to: { path: above },
    },
    {
      name: 'disk-knows-nothing',
      severity: 'error',
      from: { path: '^src/disk/' },
      to: { path: '^(src/(?!disk/)|shared/)' },
    },
    {
      name: 'shared-imports-no-stage',
      severity: 'error',
      from: { path: '^shared/' },
      to: { path: '^src/' },
    },
    {
      name: 'shared-runs-in-a-browser',
      severity: 'error',
      from: { path: '^shared/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'page-runs-in-a-browser',
      severity: 'error',
      from: { path: '^src/5-review/page/', pathNot: 'vite[.]config[.]ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      // The page shares the review's pure parts: by whatever way it goes, none of them may lead to Node.
      name: 'page-leads-to-no-node',
      severity: 'error',
      from: { path: '^src/5-review/page/main[.]tsx$' },
      to: { path: '^(node:)?(fs|path|os|net|http|crypto|child_process|stream|url|module)(/|$)', reachable: true },
    },
    {
      name: 'page-imports-only-the-review-and-shared',
      severity: 'error',
      from: { path: '^src/5-review/page/' },
      to: { path: '^src/(?!5-review/)' },
    },
    {
      // A circle through a type alone is gone when the program runs.
      name: 'no-circle',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'nothing-unresolved',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js', '.cjs', '.mjs', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default'],
    },
  },
};
