import type { Database } from 'better-sqlite3';

/** A photograph as it is kept. */
export interface KeptPhotograph {
  /** The SHA-256 of its bytes. */
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** JPEG. */
  readonly bytes: Uint8Array;
}

/** Photographs of fabrics. A call that keeps something answers once it is on disk. */
export interface Photographs {
  /** Keeps them all or, when one cannot be written, none; those that are kept already stay. */
  keep(photographs: readonly KeptPhotograph[]): void;
  read(id: string): KeptPhotograph | null;
}

/** How long a photograph that no pattern shows is kept, milliseconds: as long as its use might be taken back by an undo. */
const SPARED = 30 * 24 * 3_600_000;

/** The photographs of a library; those that no pattern has shown for long are let go when it is opened. */
export function photographsIn(database: Database, now: () => Date): Photographs {
  const add = database.prepare(
    'INSERT INTO photograph (id, width, height, added, bytes) VALUES (@id, @width, @height, @added, @bytes) ON CONFLICT (id) DO NOTHING',
  );
  const read = database.prepare<[string], KeptPhotograph>(
    'SELECT id, width, height, bytes FROM photograph WHERE id = ?',
  );
  const keep = database.transaction((photographs: readonly KeptPhotograph[]) => {
    const added = now().toISOString();
    for (const { id, width, height, bytes } of photographs) {
      add.run({ id, width, height, added, bytes: Buffer.from(bytes) });
    }
  });
  letGo(database, now);
  return {
    keep: (photographs) => {
      if (photographs.length > 0) keep.immediate(photographs);
    },
    read: (id) => read.get(id) ?? null,
  };
}

function letGo(database: Database, now: () => Date): void {
  const before = new Date(now().getTime() - SPARED).toISOString();
  const unused = `
    FROM photograph WHERE added < ?
      AND NOT EXISTS (SELECT 1 FROM pattern WHERE instr(pattern.body, photograph.id) > 0)`;
  // A start that lets nothing go writes nothing.
  if (database.prepare(`SELECT 1 ${unused} LIMIT 1`).get(before) !== undefined) {
    database.prepare(`DELETE ${unused}`).run(before);
  }
}
