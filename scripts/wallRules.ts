// The walls of the house. Each rule's comment is what a person reads who ran into it; tests/walls proves
// that every one of them fires. Type-only imports count as imports.

import type { ICruiseOptions, IForbiddenRuleType } from 'dependency-cruiser';

/** For each stage of src/shared, the stages it may import. Ground first; nothing points back. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  measure: [],
  drawing: ['measure'],
  recipe: ['measure', 'drawing'],
  piecing: ['measure', 'drawing', 'recipe'],
  pattern: ['measure', 'drawing', 'recipe'],
  quilt: ['measure', 'drawing', 'recipe', 'piecing', 'pattern'],
  cloth: ['measure', 'drawing', 'recipe', 'piecing', 'pattern', 'quilt'],
  pressing: ['measure', 'drawing', 'recipe', 'piecing', 'pattern', 'quilt'],
  fit: ['measure', 'drawing', 'recipe', 'piecing', 'pattern', 'quilt', 'cloth'],
  diagrams: ['measure', 'drawing', 'recipe', 'piecing', 'pattern', 'quilt', 'cloth', 'pressing'],
  workroom: ['measure', 'drawing', 'recipe', 'piecing', 'pattern', 'quilt', 'cloth', 'pressing', 'fit'],
  writing: [
    ...['measure', 'drawing', 'recipe', 'piecing', 'pattern', 'quilt', 'cloth', 'pressing', 'fit', 'diagrams'],
    'workroom',
  ],
};
const stages = Object.entries(mayImport);

/** Packages the pattern core may use: pure, and at home in every host. */
const corePackages = ['zod', 'jsonc-parser'];

const packages = (...names: string[]) => `(^|/)(${names.join('|')})(/|$)`;
const windowPackages = packages(
  'react',
  'react-dom',
  'react-aria-components',
  'zustand',
  '@svgdotjs/svg\\.js',
  'pdfjs-dist',
);
const machinePackages = packages('pdfmake', 'pdfkit', 'better-sqlite3', 'commander', 'sharp');

const forbid = (
  name: string,
  comment: string,
  from: IForbiddenRuleType['from'],
  to: Extract<IForbiddenRuleType, { to: unknown }>['to'],
): IForbiddenRuleType => ({ name, comment, severity: 'error', from, to });

const stageRules = stages.map(([stage, below]) =>
  forbid(
    `shared-${stage}`,
    below.length > 0
      ? `src/shared/${stage} may import only ${below.join(', ')}.`
      : `src/shared/${stage} is the ground floor: it imports no other stage.`,
    { path: `^src/shared/${stage}/` },
    { path: '^src/shared/', pathNot: `^src/shared/(${[stage, ...below].join('|')})/` },
  ),
);

const known = `^src/shared/((${Object.keys(mayImport).join('|')})/|contract\\.ts$|tsconfig\\.json$)`;
const unknownStage = 'src/shared has only the stages that scripts/wallRules.ts lists, and contract.ts.';
const unknownStageRules = [
  forbid('shared-unknown-from', unknownStage, { path: '^src/shared/', pathNot: known }, {}),
  forbid('shared-unknown-to', unknownStage, {}, { path: '^src/shared/', pathNot: known }),
  forbid('shared-unknown', unknownStage, { orphan: true, path: '^src/shared/', pathNot: known }, {}),
];

const roomRules = [
  forbid(
    'shared-is-pure',
    `src/shared imports only itself and ${corePackages.join(', ')}: no Electron, React, Node, pdfmake, svg.js, SQLite.`,
    { path: '^src/shared/' },
    { pathNot: ['^src/shared/', `(^|(^|/)node_modules/)(${corePackages.join('|')})(/|$)`] },
  ),
  forbid(
    'renderer-not-main',
    'The window reaches the machine only through src/shared/contract.ts.',
    { path: '^src/renderer/' },
    { path: '^src/main/' },
  ),
  forbid(
    'main-not-renderer',
    'The host reaches the window only through src/shared/contract.ts.',
    { path: '^src/main/' },
    { path: '^src/renderer/' },
  ),
  forbid(
    'renderer-is-a-page',
    'The window is a web page: it imports nothing of Node.',
    { path: '^src/renderer/' },
    { dependencyTypes: ['core'] },
  ),
  forbid(
    'renderer-not-machine',
    'Paper, store and terminal libraries belong to src/main.',
    { path: '^src/renderer/' },
    { path: machinePackages },
  ),
  forbid(
    'main-not-window',
    'Window libraries belong to src/renderer.',
    { path: '^src/main/' },
    { path: windowPackages },
  ),
  forbid(
    'electron-only-at-the-door',
    'Only src/main/index.ts and src/main/preload.ts import electron.',
    { path: '^src/', pathNot: '^src/main/(index|preload)\\.ts$' },
    { path: packages('electron') },
  ),
  forbid(
    'service-knows-no-shell',
    'The service knows no HTTP, no host, no terminal: they carry it.',
    { path: '^src/main/service(\\.ts$|/)' },
    {
      path: [
        '^(node:)?(http|https|http2|net|tls)$',
        '^src/main/(host|cli|start)/',
        '^src/main/(index|preload|start)\\.ts$',
      ],
    },
  ),
  forbid(
    'store-and-paper-stand-alone',
    'src/main/store and src/main/paper are used by the service and know nothing of it.',
    { path: '^src/main/(store|paper)/' },
    { path: ['^src/main/(service|host|cli|start)/', '^src/main/(service|index|preload|start)\\.ts$'] },
  ),
  forbid(
    'store-not-paper',
    'Store and paper do not know each other.',
    { path: '^src/main/store/' },
    { path: '^src/main/paper/' },
  ),
  forbid(
    'paper-not-store',
    'Store and paper do not know each other.',
    { path: '^src/main/paper/' },
    { path: '^src/main/store/' },
  ),
  forbid(
    'source-not-tests',
    'src imports nothing of tests or scripts.',
    { path: '^src/' },
    { path: '^(tests|scripts)/' },
  ),
  forbid('no-cycles', 'No two files may need each other, not even for a type.', {}, { circular: true }),
];

export const walls: IForbiddenRuleType[] = [...stageRules, ...unknownStageRules, ...roomRules];

export const wallOptions: ICruiseOptions = {
  parser: 'swc',
  tsPreCompilationDeps: true,
  doNotFollow: { path: '(^|/)node_modules/' },
  exclude: { path: '\\.css$' },
  enhancedResolveOptions: {
    exportsFields: ['exports'],
    conditionNames: ['import', 'require', 'node', 'default', 'types'],
  },
};
