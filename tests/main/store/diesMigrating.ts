import type { Migration } from '../../../src/main/store/migrate.ts';
import { migrations } from '../../../src/main/store/migrations/index.ts';
import { openStore } from '../../../src/main/store/store.ts';

/** A program that is killed in the middle of changing the library in the folder it is given. */
const dies: Migration = {
  version: migrations.length + 1,
  name: 'dies',
  up(database) {
    database.exec('CREATE TABLE edition (id TEXT PRIMARY KEY) STRICT');
    database.exec('DELETE FROM pattern');
    process.kill(process.pid, 'SIGKILL');
  },
};

const folder = process.argv[2];
if (folder === undefined) throw new Error('name the folder');
openStore({ folder, now: () => new Date(0), migrations: [...migrations, dies] });
