import type { BroughtPhotograph, PhotographPicture } from '../../shared/contract.ts';
import { type Crop, isWithin } from '../../shared/pattern/photograph.ts';
import { documentText } from '../../shared/pattern/save.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { bringPhotograph } from '../photograph/bring.ts';
import { bare, carrying, picturesIn } from '../photograph/carried.ts';
import { meanColour } from '../photograph/colour.ts';
import { Refused } from '../refusal.ts';
import type { KeptPhotograph } from '../store/photographs.ts';
import type { Store } from '../store/store.ts';

/** The calls of the contract that are about photographs, for inputs that have been checked. */
export interface PhotographCalls {
  bring(file: { readonly name: string; readonly data: string }): Promise<BroughtPhotograph>;
  picture(id: string): PhotographPicture;
  colour(request: { readonly id: string; readonly crop: Crop }): Promise<string>;
  /** The pattern as it is kept: pictures inside it are kept by themselves. */
  takenOut(pattern: Pattern, file: string): Promise<Pattern>;
  /** The pattern with its pictures inside, as it travels and is printed. */
  carrying(pattern: Pattern): Pattern;
  give(pattern: Pattern): { readonly name: string; readonly text: string };
}

export function makePhotographs({ photographs }: Store): PhotographCalls {
  const withPictures = (pattern: Pattern) => carrying(pattern, (id) => photographs.read(id)?.bytes ?? null);
  return {
    async bring({ name, data }) {
      const { colour, ...picture } = await bringPhotograph(name, Buffer.from(data, 'base64'));
      photographs.keep([picture]);
      const { id, width, height } = picture;
      return { id, width, height, colour };
    },
    picture(id) {
      const { width, height, bytes } = kept(photographs.read(id));
      return { type: 'image/jpeg', width, height, data: Buffer.from(bytes).toString('base64') };
    },
    async colour({ id, crop }) {
      const { width, height, bytes } = kept(photographs.read(id));
      if (!isWithin(crop, width, height)) {
        throw new Refused('bad-input', 'That part reaches beyond the picture. Choose one inside it.');
      }
      return meanColour(bytes, crop);
    },
    async takenOut(pattern, file) {
      if (pattern.photographs === undefined) return pattern;
      photographs.keep(await picturesIn(pattern, file));
      return bare(pattern);
    },
    carrying: withPictures,
    give: (pattern) => ({ name: `${pattern.id}.pattern.json`, text: documentText(withPictures(pattern)) }),
  };
}

function kept(photograph: KeptPhotograph | null): KeptPhotograph {
  if (photograph !== null) return photograph;
  throw new Refused(
    'not-found',
    'That photograph is not kept here. Bring it in again; until then its colour is shown.',
  );
}
