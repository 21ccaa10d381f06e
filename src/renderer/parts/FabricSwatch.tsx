import { useId } from 'react';
import { cropOf, type Photograph } from '../../shared/pattern/photograph.ts';
import type { Value } from '../../shared/recipe/schema.ts';
import styles from './FabricSwatch.module.css';
import { usePictures } from './photograph/pictures.ts';

export interface FabricSwatchProps {
  readonly colour: string;
  readonly name: string;
  readonly value?: Value;
  /** Shown instead of the colour where there is one. */
  readonly photograph?: Photograph | undefined;
  readonly size?: 'small' | 'large';
  /** Without its name beside it, where the name already stands there. */
  readonly bare?: boolean;
}

/** A snip of cloth with its name, and its value in words. */
export function FabricSwatch({ colour, name, value, photograph, size = 'small', bare = false }: FabricSwatchProps) {
  return (
    <span className={styles.swatch}>
      <svg className={styles.snip} data-size={size} viewBox="0 0 20 20" aria-hidden="true" focusable="false">
        <path d={PINKED} fill={colour} />
        {photograph === undefined ? null : <Print photograph={photograph} />}
      </svg>
      {bare ? null : <span className={styles.name}>{name}</span>}
      {bare || value === undefined ? null : <span className={styles.value}>{value}</span>}
    </span>
  );
}

/** The cloth of a photograph on the snip, once its picture has come. */
function Print({ photograph }: { readonly photograph: Photograph }) {
  const id = useId();
  const url = usePictures([photograph.id]).get(photograph.id);
  const { x, y, width, height } = cropOf(photograph);
  if (url === undefined) return null;
  return (
    <>
      <clipPath id={id}>
        <path d={PINKED} />
      </clipPath>
      <g clipPath={`url(#${id})`}>
        <svg
          aria-hidden="true"
          width="20"
          height="20"
          viewBox={`${x} ${y} ${width} ${height}`}
          preserveAspectRatio="xMidYMid slice"
        >
          <image href={url} width={photograph.width} height={photograph.height} />
        </svg>
      </g>
    </>
  );
}

/** A square cut with pinking shears: eight teeth a side. */
const PINKED = (() => {
  const teeth = 8;
  const from = 1;
  const step = 18 / (teeth * 2);
  const along = Array.from({ length: teeth * 2 }, (_, i) => ({ far: from + i * step, deep: i % 2 === 0 ? 0 : 0.9 }));
  const top = along.map(({ far, deep }) => `${far} ${from + deep}`);
  const right = along.map(({ far, deep }) => `${19 - deep} ${far}`);
  const bottom = along.map(({ far, deep }) => `${20 - far} ${19 - deep}`);
  const left = along.map(({ far, deep }) => `${from + deep} ${20 - far}`);
  return `M${[...top, ...right, ...bottom, ...left].join('L')}Z`;
})();
