import { base64Of, carriedText } from '../../shared/pattern/photograph.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { Refused } from '../refusal.ts';
import { idOf, type KeptPicture } from './bring.ts';
import { aboutPicture } from './open.ts';

/** The pattern with the pictures of its fabrics inside, as far as they are found: as it travels. */
export function carrying(pattern: Pattern, find: (id: string) => Uint8Array | null): Pattern {
  const { photographs: _before, ...rest } = pattern;
  const ids = new Set(pattern.fabrics.flatMap(({ photograph }) => photograph?.id ?? []));
  const found = [...ids].flatMap((id) => {
    const bytes = find(id);
    return bytes === null ? [] : [[id, carriedText(Buffer.from(bytes).toString('base64'))] as const];
  });
  return found.length === 0 ? rest : { ...rest, photographs: Object.fromEntries(found) };
}

/** The pattern without pictures inside, as it is kept. */
export function bare(pattern: Pattern): Pattern {
  const { photographs: _pictures, ...rest } = pattern;
  return rest;
}

/**
 * The pictures a pattern's file carries, checked.
 * @param file its name, for refusals
 * @throws Refused naming the fabric whose picture is not the one it should be
 */
export async function picturesIn(pattern: Pattern, file: string): Promise<readonly KeptPicture[]> {
  const pictures: KeptPicture[] = [];
  for (const [id, text] of Object.entries(pattern.photographs ?? {})) {
    const bytes = Buffer.from(base64Of(text), 'base64');
    const about = await aboutPicture(bytes).catch(() => null);
    if (about === null || about.format !== 'jpeg' || idOf(bytes) !== id) throw strange(pattern, id, file);
    pictures.push({ id, width: about.width, height: about.height, bytes });
  }
  return pictures;
}

function strange({ fabrics }: Pattern, id: string, file: string): Refused {
  const of = fabrics.find(({ photograph }) => photograph?.id === id)?.name;
  const what = of === undefined ? 'A photograph in the file' : `The photograph of ${of}`;
  const mend = 'Take the file again from where it came from, or take the photograph out of it.';
  const where = { path: `photographs["${id}"]` };
  return new Refused('bad-input', `${file}: ${what} is not the picture it says it is. ${mend}`, [
    { level: 'stops', what: `${what} is not the picture it says it is.`, where, mend },
  ]);
}
