import type { Value } from '../../shared/recipe/schema.ts';
import styles from './FabricSwatch.module.css';

export interface FabricSwatchProps {
  readonly colour: string;
  readonly name: string;
  readonly value?: Value;
  readonly size?: 'small' | 'large';
  /** Without its name beside it, where the name already stands there. */
  readonly bare?: boolean;
}

/** A snip of cloth with its name, and its value in words. */
export function FabricSwatch({ colour, name, value, size = 'small', bare = false }: FabricSwatchProps) {
  return (
    <span className={styles.swatch}>
      <svg className={styles.snip} data-size={size} viewBox="0 0 20 20" aria-hidden="true" focusable="false">
        <path d={PINKED} fill={colour} />
      </svg>
      {bare ? null : <span className={styles.name}>{name}</span>}
      {bare || value === undefined ? null : <span className={styles.value}>{value}</span>}
    </span>
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
