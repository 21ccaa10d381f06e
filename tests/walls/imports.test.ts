import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Breach, breaches } from '../../scripts/walls.ts';
import { makeTree, project } from './tree.ts';

/** What each stage may import, read off the picture in the plan of the house: ground first. */
const picture: Readonly<Record<string, string>> = {
  measure: '',
  drawing: 'measure',
  recipe: 'measure drawing',
  piecing: 'measure drawing recipe',
  pattern: 'measure drawing recipe',
  quilt: 'measure drawing recipe piecing pattern',
  cloth: 'measure drawing recipe piecing pattern quilt',
  pressing: 'measure drawing recipe piecing pattern quilt',
  fit: 'measure drawing recipe piecing pattern quilt cloth',
  diagrams: 'measure drawing recipe piecing pattern quilt cloth pressing',
  workroom: 'measure drawing recipe piecing pattern quilt cloth pressing fit',
  writing: 'measure drawing recipe piecing pattern quilt cloth pressing fit diagrams workroom',
};
const stages = Object.keys(picture);
const pairs = stages.flatMap((from) => stages.filter((to) => to !== from).map((to) => ({ from, to })));
const allowed = pairs.filter(({ from, to }) => picture[from]?.split(' ').includes(to));
const refused = pairs.filter(({ from, to }) => !picture[from]?.split(' ').includes(to));

/** One offending line each: the wall that must fire, the file it stands in, and the line. */
const offences: readonly (readonly [wall: string, file: string, line: string])[] = [
  ['shared-is-pure', 'src/shared/quilt/useReact.ts', "import type { FC } from 'react';"],
  ['shared-is-pure', 'src/shared/quilt/useElectron.ts', "import { app } from 'electron';"],
  ['shared-is-pure', 'src/shared/quilt/useElectronType.ts', "export let app: import('electron').App;"],
  ['shared-is-pure', 'src/shared/quilt/useNode.ts', "import { join } from 'node:path';"],
  ['shared-is-pure', 'src/shared/quilt/useNodeBare.ts', "import { readFileSync } from 'fs';"],
  ['shared-is-pure', 'src/shared/quilt/usePdfmake.ts', "export { default } from 'pdfmake';"],
  ['shared-is-pure', 'src/shared/quilt/useSvg.ts', "import type { Svg } from '@svgdotjs/svg.js';"],
  ['shared-is-pure', 'src/shared/quilt/useSqlite.ts', "const made = await import('better-sqlite3');"],
  ['shared-is-pure', 'src/shared/quilt/useHost.ts', "import { host } from '../../main/host/host.ts';"],
  ['shared-is-pure', 'src/shared/quilt/useView.ts', "import { View } from '../../renderer/quilt/View.tsx';"],
  ['shared-quilt', 'src/shared/quilt/useContract.ts', "import type { Contract } from '../contract.ts';"],
  ['no-hidden-imports', 'src/shared/quilt/useHidden.ts', "export type Made = typeof import('pdfmake');"],
  ['shared-unknown-from', 'src/shared/attic/useMeasure.ts', "import { one } from '../measure/index.ts';"],
  ['shared-unknown-to', 'src/main/cli/useAttic.ts', "import { one } from '../../shared/attic/lonely.ts';"],
  ['shared-unknown', 'src/shared/cellar/alone.ts', 'export const alone = 1;'],
  ['shared-unknown', 'src/shared/loose.ts', 'export const loose = 1;'],
  ['renderer-not-main', 'src/renderer/quilt/useMain.ts', "import type { host } from '../../main/host/host.ts';"],
  ['main-not-renderer', 'src/main/host/useView.ts', "import { View } from '../../renderer/quilt/View.tsx';"],
  ['renderer-is-a-page', 'src/renderer/quilt/useNode.ts', "import { join } from 'node:path';"],
  ['renderer-not-machine', 'src/renderer/quilt/usePdfmake.ts', "import pdfmake from 'pdfmake';"],
  ['renderer-not-machine', 'src/renderer/quilt/useSqlite.ts', "import type { Database } from 'better-sqlite3';"],
  ['main-not-window', 'src/main/paper/useReact.ts', "import { useState } from 'react';"],
  ['main-not-window', 'src/main/paper/useSvg.ts', "import { SVG } from '@svgdotjs/svg.js';"],
  ['electron-only-at-the-door', 'src/main/host/useElectron.ts', "import { app } from 'electron';"],
  ['electron-only-at-the-door', 'src/main/host/useElectronType.ts', "import type { App } from 'electron';"],
  [
    'electron-only-at-the-door',
    'src/renderer/quilt/useElectron.ts',
    "import { ipcRenderer } from 'electron/renderer';",
  ],
  ['service-knows-no-shell', 'src/main/service/useHttp.ts', "import { createServer } from 'node:http';"],
  ['service-knows-no-shell', 'src/main/service.ts', "import { host } from './host/host.ts';"],
  ['store-and-paper-stand-alone', 'src/main/store/useService.ts', "import { answer } from '../service/answer.ts';"],
  ['store-and-paper-stand-alone', 'src/main/paper/useHost.ts', "import { host } from '../host/host.ts';"],
  ['store-not-paper', 'src/main/store/usePaper.ts', "import { draw } from '../paper/draw.ts';"],
  ['paper-not-store', 'src/main/paper/useStore.ts', "import { keep } from '../store/keep.ts';"],
  ['source-not-tests', 'src/main/host/useTests.ts', "import { sample } from '../../../tests/sample.ts';"],
  ['no-cycles', 'src/shared/fit/about.ts', "import type { Round } from './round.ts';\nexport type About = Round | 1;"],
];

/** What the offending lines lead to, and files that break nothing. */
const innocent: Readonly<Record<string, string>> = {
  'src/shared/contract.ts': "import type { one } from './workroom/index.ts';\nexport type Contract = typeof one;",
  'src/shared/fit/round.ts': "import type { About } from './about.ts';\nexport type Round = About;",
  'src/shared/attic/lonely.ts': 'export const one = 1;',
  'src/shared/measure/useZod.ts': "import { z } from 'zod';\nexport { z };",
  'src/main/index.ts': "import { app } from 'electron';\nimport { host } from './host/host.ts';\nexport { app, host };",
  'src/main/preload.ts': "import { contextBridge } from 'electron';\nexport { contextBridge };",
  'src/main/host/host.ts': "import { createServer } from 'node:http';\nexport const host = createServer;",
  'src/main/service/answer.ts':
    "import type { Contract } from '../../shared/contract.ts';\nexport type Answer = Contract;",
  'src/main/paper/draw.ts': "import pdfmake from 'pdfmake';\nexport const draw = pdfmake;",
  'src/main/store/keep.ts': "import Database from 'better-sqlite3';\nexport const keep = Database;",
  'src/renderer/quilt/View.tsx':
    "import type { Contract } from '../../shared/contract.ts';\nexport type View = Contract;",
  'tests/sample.ts': 'export const sample = 1;',
};

const stageFiles = Object.fromEntries([
  ...stages.map((stage) => [`src/shared/${stage}/index.ts`, 'export const one = 1;']),
  ...pairs.map(({ from, to }) => [`src/shared/${from}/use-${to}.ts`, `import { one } from '../${to}/index.ts';`]),
]);
const offending = Object.fromEntries(offences.map(([, file, line]) => [file, line]));

describe('the walls of the house', () => {
  const tree = makeTree({ ...stageFiles, ...innocent, ...offending });
  let found: readonly Breach[] = [];
  const wallsBrokenBy = (file: string) => found.filter(({ from }) => from === file).map(({ wall }) => wall);

  beforeAll(async () => {
    found = await breaches(tree.folder);
  });
  afterAll(tree.remove);

  it.each(refused)('$from may not import $to', ({ from, to }) => {
    expect(wallsBrokenBy(`src/shared/${from}/use-${to}.ts`)).toEqual([`shared-${from}`]);
  });

  it.each(allowed)('$from may import $to', ({ from, to }) => {
    expect(wallsBrokenBy(`src/shared/${from}/use-${to}.ts`)).toEqual([]);
  });

  it.each(offences)('%s fires on %s', (wall, file) => {
    expect(wallsBrokenBy(file)).toContain(wall);
  });

  it.each(Object.keys(innocent).filter((file) => !file.includes('/attic/') && !file.endsWith('/about.ts')))(
    'nothing is said about %s',
    (file) => {
      expect(wallsBrokenBy(file)).toEqual([]);
    },
  );

  it('every wall says why', () => {
    expect(found.filter(({ why }) => why.length < 20)).toEqual([]);
  });
});

describe('the house itself', () => {
  it('breaks no wall', async () => {
    expect(await breaches(project)).toEqual([]);
  });
});
