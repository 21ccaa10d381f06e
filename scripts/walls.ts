// Says which imports break a wall of the house. The walls themselves are in wallRules.ts.
import { globSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { cruise, type ICruiseOptions } from 'dependency-cruiser';
import { wallOptions, walls } from './wallRules.ts';

export interface Breach {
  readonly wall: string;
  readonly from: string;
  readonly to: string;
  readonly why: string;
}

/** Every import under `<folder>/src` that breaks a wall, in the order of files. */
export async function breaches(folder: string): Promise<readonly Breach[]> {
  return [...(await forbiddenImports(folder)), ...hiddenImports(folder)];
}

async function forbiddenImports(folder: string): Promise<readonly Breach[]> {
  const options: ICruiseOptions = { ...wallOptions, baseDir: folder, validate: true, ruleSet: { forbidden: walls } };
  const { output } = await cruise(['src'], options);
  if (typeof output === 'string') throw new Error('The walls were checked, but the answer is not a list');
  return output.summary.violations.map(({ rule, from, to }) => {
    const why = walls.find((wall) => wall.name === rule.name)?.comment ?? '';
    return { wall: rule.name, from, to, why };
  });
}

/** `typeof import('…')` is the one kind of import the parser does not see, so no file may use it. */
function hiddenImports(folder: string): readonly Breach[] {
  const why = 'Write "import type" instead of "typeof import(…)", so that the walls can see it.';
  return globSync('src/**/*.{ts,tsx}', { cwd: folder })
    .filter((file) => /\btypeof\s+import\s*\(/.test(readFileSync(join(folder, file), 'utf8')))
    .map((from) => ({ wall: 'no-hidden-imports', from, to: '', why }));
}

if (import.meta.main) {
  const found = await breaches(resolve(import.meta.dirname, '..'));
  for (const { wall, from, to, why } of found) console.error(`${from} → ${to}\n    ${wall}: ${why}`);
  console.log(found.length === 0 ? 'Every wall stands.' : `${found.length} imports break a wall.`);
  process.exitCode = found.length === 0 ? 0 : 1;
}
