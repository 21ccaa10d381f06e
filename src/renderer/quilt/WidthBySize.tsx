import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import styles from './quilt.module.css';

export interface WidthRow {
  readonly id: string;
  readonly name: string;
  /** What the field is called to those who listen. */
  readonly label: string;
  /** Null: as the design has it. */
  readonly own: number | null;
  readonly usual: number;
  readonly onChange: (width: number | null) => void;
}

interface WidthBySizeProps {
  /** Left out where the part of the panel already says it. */
  readonly title?: string;
  /** What "as the design has it" is called here. */
  readonly same?: string;
  readonly rows: readonly WidthRow[];
}

/** A width that may differ, a line each, and the way back to the design's. */
export function WidthBySize({ title, rows, same = 'as above' }: WidthBySizeProps) {
  const again = `${same.slice(0, 1).toUpperCase()}${same.slice(1)} again`;
  return (
    <div className={styles.bySizes}>
      {title === undefined ? null : <p className="quiet small">{title}</p>}
      <ul className={styles.bySize}>
        {rows.map(({ id, name, label, own, usual, onChange }) => (
          <li key={id} className={styles.bySizeRow}>
            <span>{name}</span>
            <NumberField label={label} bare least={0} most={60} value={own ?? usual} onChange={onChange} />
            {own === null ? (
              <span className={styles.same}>{same}</span>
            ) : (
              <Button tone="bare" small aria-label={`${again}: ${name}`} onPress={() => onChange(null)}>
                {again}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
