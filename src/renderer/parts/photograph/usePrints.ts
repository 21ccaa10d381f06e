import { useMemo } from 'react';
import { cropOf } from '../../../shared/pattern/photograph.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import type { Print } from '../figure/prints.ts';
import { usePictures } from './pictures.ts';

/** So much cloth a photograph is taken to show across while nobody has laid a ruler on it, inches. */
const USUAL = 8;

/** The photographs of fabrics as figures show them, as far as their pictures have come. */
export function usePrints(fabrics: readonly Fabric[]): readonly Print[] {
  const pictures = usePictures(fabrics.flatMap(({ photograph }) => photograph?.id ?? []));
  return useMemo(
    () =>
      fabrics.flatMap(({ id, photograph }): Print[] => {
        const url = photograph === undefined ? undefined : pictures.get(photograph.id);
        if (photograph === undefined || url === undefined) return [];
        const { width, height, scale } = photograph;
        const crop = cropOf(photograph);
        return [{ fabric: id, url, width, height, crop, scale: scale ?? USUAL / crop.width }];
      }),
    [fabrics, pictures],
  );
}
