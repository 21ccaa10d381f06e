import type { Database } from 'better-sqlite3';

/** What the studio remembers from one start to the next. */
export type SettingName = 'last-open';

export interface Settings {
  read(name: SettingName): string | null;
  write(name: SettingName, value: string): void;
}

export function settingsIn(database: Database): Settings {
  const read = database.prepare<[string], string>('SELECT value FROM setting WHERE name = ?').pluck();
  const write = database.prepare(
    'INSERT INTO setting (name, value) VALUES (@name, @value) ON CONFLICT (name) DO UPDATE SET value = @value',
  );
  return {
    read: (name) => read.get(name) ?? null,
    write: (name, value) => {
      if (read.get(name) !== value) write.run({ name, value });
    },
  };
}
