import type { Database } from 'better-sqlite3';
import type { Mattress } from '../../shared/pattern/mattresses.ts';

/** The designer's own mattresses. */
export interface Mattresses {
  /** In the order they were put in. */
  all(): readonly Mattress[];
  /** One of the same id is replaced and keeps its place. */
  save(mattress: Mattress): void;
  /** Whether there was one to remove. */
  remove(id: string): boolean;
}

export function mattressesIn(database: Database): Mattresses {
  const all = database.prepare<[], Mattress>('SELECT id, name, width, length FROM mattress ORDER BY number');
  const write = database.prepare(`
    INSERT INTO mattress (id, name, width, length) VALUES (@id, @name, @width, @length)
    ON CONFLICT (id) DO UPDATE SET name = @name, width = @width, length = @length`);
  const remove = database.prepare('DELETE FROM mattress WHERE id = ?');
  return {
    all: () => all.all(),
    save: (mattress) => {
      write.run(mattress);
    },
    remove: (id) => remove.run(id).changes > 0,
  };
}
