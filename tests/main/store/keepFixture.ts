import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeReader } from '../../../src/main/reader.ts';
import { migrations } from '../../../src/main/store/migrations/index.ts';
import { openStore } from '../../../src/main/store/store.ts';
import { samplePattern, sampleRecipe } from '../helpers/samples.ts';

/**
 * Keeps a library as today's program writes it, for the day when a newer one must open it. Run once, with
 * `node tests/main/store/keepFixture.ts`, before a new migration is added; a file that is kept is never written again.
 */
const kept = join(import.meta.dirname, 'fixtures', `version-${migrations.length}.library`);
if (existsSync(kept)) throw new Error(`${kept} is kept already`);

const folder = mkdtempSync(join(tmpdir(), 'piecewright-'));
const store = openStore({ folder, now: () => new Date('2026-03-01T08:00:00Z') });
store.starters.putIn(
  { recipes: [{ name: 'mooring.recipe.json', text: JSON.stringify(sampleRecipe()) }], demo: [] },
  makeReader([]),
);
store.recipes.save(sampleRecipe({ id: 'hawser', name: 'Hawser', tags: ['rope'] }), false);
store.patterns.save(samplePattern(), null);
store.patterns.save(samplePattern({ title: 'Slack Water at Night' }), 1);
store.photographs.keep([{ id: 'a'.repeat(64), width: 3, height: 2, bytes: Buffer.from('stands for a picture') }]);
store.settings.write('last-open', 'slack-water');
store.close();
copyFileSync(join(folder, 'library.db'), kept);
rmSync(folder, { recursive: true });
