import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';

const packages = resolve(import.meta.dirname, '../../node_modules');
const pack = join(packages, '@sparticuz/chromium');

/** The npm package holds a browser for Linux on x64 only. */
export function canUnpackBrowser(): boolean {
  return process.platform === 'linux' && process.arch === 'x64' && existsSync(pack);
}

/**
 * Unpacks the browser that came with npm, with the few system libraries and fonts a bare machine lacks, and says how to
 * start it. Several test files may ask at once: each unpacks into a folder of its own, and the first to finish wins.
 */
export function unpackBrowser(): { executablePath: string; env: Record<string, string> } {
  const { version } = JSON.parse(readFileSync(join(pack, 'package.json'), 'utf8')) as { version: string };
  const folder = join(packages, '.cache/packed-browser', version);
  if (!existsSync(folder)) unpackInto(folder);
  return {
    executablePath: join(folder, 'chromium'),
    env: { LD_LIBRARY_PATH: join(folder, 'al2023/lib'), FONTCONFIG_PATH: join(folder, 'fonts') },
  };
}

function unpackInto(folder: string): void {
  mkdirSync(resolve(folder, '..'), { recursive: true });
  const own = mkdtempSync(`${folder}-`);
  // The package unpacks into the temporary folder of its process, so it gets a process whose folder is this one.
  const script = `import { inflate } from '@sparticuz/chromium';
    for (const name of ['chromium.br', 'fonts.tar.br', 'swiftshader.tar.br', 'al2023.tar.br'])
      await inflate(${JSON.stringify(join(pack, 'bin'))} + '/' + name);`;
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
    cwd: resolve(packages, '..'),
    env: { ...process.env, TMPDIR: own },
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`The browser that came with npm could not be unpacked: ${stderr}`);
  try {
    renameSync(own, folder);
  } catch (error) {
    rmSync(own, { recursive: true, force: true });
    if (!existsSync(folder)) throw error;
  }
}
