import { Button, Group, Label, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components';
import type { Filter } from '../../shared/workroom/facetTerms.ts';
import { Button as Act } from '../parts/Button.tsx';
import { useRuler } from '../state/hooks.tsx';
import styles from './FilterRow.module.css';
import { type Filters, isFiltered, NO_FILTERS, shelfFilters, withFilter } from './wishes.ts';

export interface FilterRowProps {
  readonly filters: Filters;
  readonly onChange: (filters: Filters) => void;
}

/** What the blocks are filtered by: plain words in a row, each opening its own short list. */
export function FilterRow({ filters, onChange }: FilterRowProps) {
  const { units } = useRuler();
  return (
    <Group className={styles.row ?? ''} aria-label="Filters">
      {shelfFilters(units).map((filter) => (
        <WordPick
          key={filter.id}
          filter={filter}
          value={filters[filter.id] ?? ''}
          onChange={(term) => onChange(withFilter(filters, filter.id, term))}
        />
      ))}
      {isFiltered(filters) ? (
        <Act tone="bare" small onPress={() => onChange(NO_FILTERS)}>
          Clear the filters
        </Act>
      ) : null}
    </Group>
  );
}

/** React Aria takes an empty key for none, so that "any" needs a word of its own. */
const ANY = 'any';

interface WordPickProps {
  readonly filter: Filter;
  /** The chosen term; empty for any. */
  readonly value: string;
  readonly onChange: (term: string) => void;
}

function WordPick({ filter, value, onChange }: WordPickProps) {
  return (
    <Select
      className={styles.pick ?? ''}
      value={value === '' ? ANY : value}
      onChange={(term) => onChange(term === null || term === ANY ? '' : String(term))}
      data-set={value !== ''}
    >
      <Label className={styles.label ?? ''}>{filter.name}</Label>
      <Button className={styles.button ?? ''}>
        <SelectValue />
        <svg className={styles.arrow} viewBox="0 0 10 6" aria-hidden="true" focusable="false">
          <path d="M1 1l4 4 4-4" />
        </svg>
      </Button>
      <Popover className={styles.popover ?? ''} offset={4}>
        <ListBox className={styles.list ?? ''}>
          {[{ term: ANY, name: 'any' }, ...filter.choices].map(({ term, name }) => (
            <ListBoxItem key={term} id={term} textValue={name} className={styles.option ?? ''}>
              {name}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
