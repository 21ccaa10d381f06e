import { join } from 'node:path';
import { MainConfigFactory, PreloadConfigFactory, type UserConfig } from 'electron-vite';
import { build } from 'vite';
import config from '../../../../electron.vite.config.ts';

/** Builds the desktop program and its preload as the project does, but into the folder it is given, and not the page. */
const folder = process.argv[2];
const { main, preload } = config as UserConfig;
if (folder === undefined || main === undefined || preload === undefined) throw new Error('name the folder');
const into = (name: string) => ({
  configFile: false as const,
  mode: 'production',
  logLevel: 'error' as const,
  build: { outDir: join(folder, 'out', name), emptyOutDir: false },
});
await build(await new MainConfigFactory(main, into('main'), {}).build());
await build(await new PreloadConfigFactory(preload, into('preload'), {}).build());
