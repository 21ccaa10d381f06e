import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The folder of this copy of Piecewright: looked for upwards, so that the sources and what is built of them find it. */
function programFolder(): string {
  let folder = import.meta.dirname;
  while (!existsSync(join(folder, 'resources', 'recipes'))) {
    const above = dirname(folder);
    if (above === folder) throw new Error('The folder resources is missing from this copy of Piecewright');
    folder = above;
  }
  return folder;
}

/** The folder of what comes with the program. */
export function resources(): string {
  return join(programFolder(), 'resources');
}

/** The version of this program. */
export function ownVersion(): string {
  const about: unknown = JSON.parse(readFileSync(join(programFolder(), 'package.json'), 'utf8'));
  const named = typeof about === 'object' && about !== null && 'version' in about ? about.version : null;
  return typeof named === 'string' ? named : '';
}
