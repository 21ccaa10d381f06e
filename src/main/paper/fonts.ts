import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The font files of a family, in the form the page library takes them. */
export interface FontFiles {
  readonly normal: string;
  readonly bold: string;
  readonly italics: string;
  readonly bolditalics: string;
}

/** The folder `resources/fonts`, looked for upwards from this file, so that sources and bundle find the same one. */
function fontFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  for (;;) {
    const fonts = join(folder, 'resources', 'fonts');
    if (existsSync(fonts)) return fonts;
    const above = dirname(folder);
    if (above === folder) throw new Error('The folder resources/fonts is missing from this copy of Piecewright');
    folder = above;
  }
}

function family(folder: string, name: string): FontFiles {
  const file = (cut: string) => join(folder, `${name}_${cut}.ttf`);
  return {
    normal: file('400Regular'),
    bold: file('600SemiBold'),
    italics: file('400Regular_Italic'),
    bolditalics: file('600SemiBold'),
  };
}

/** The two families of the page. */
export function pageFonts(): Record<string, FontFiles> {
  const folder = fontFolder();
  return { 'Source Serif 4': family(folder, 'SourceSerif4'), 'Source Sans 3': family(folder, 'SourceSans3') };
}
