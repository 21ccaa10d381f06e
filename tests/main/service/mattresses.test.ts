import { expect, test } from 'vitest';
import { makeReader } from '../../../src/main/reader.ts';
import { makeService } from '../../../src/main/service.ts';
import type { MattressTable } from '../../../src/shared/pattern/mattresses.ts';
import { freshFolder, storeIn } from '../helpers/folder.ts';
import { noPublisher, refusalFrom } from '../helpers/service.ts';

const table: MattressTable = {
  format: 'piecewright-mattresses',
  version: 1,
  name: 'Harbour inns',
  source: 'measured by the chandler',
  mattresses: [{ id: 'hammock', name: 'Hammock', width: 36, length: 78 }],
};

function serviceIn(folder: string) {
  return makeService({
    store: storeIn(folder),
    reader: makeReader([]),
    publisher: noPublisher,
    mattressTables: [table],
    host: 'browser',
    version: '0.0.1',
    report: () => {},
  });
}

const bunk = { id: 'bunk', name: 'Bunk', width: 30.5, length: 72 };
const berth = { id: 'berth', name: 'Berth', width: 28, length: 74 };

test('the designer’s own mattresses stand beside the tables that come with the program, from one start to the next', async () => {
  const folder = freshFolder();
  const first = serviceIn(folder);
  await first.saveMattress(bunk);
  await first.saveMattress(berth);
  await first.saveMattress({ ...bunk, length: 75 });
  await first.close();
  const next = serviceIn(folder);
  expect(await next.mattresses()).toEqual({ tables: [table], own: [{ ...bunk, length: 75 }, berth] });
  await next.removeMattress('bunk');
  expect((await next.mattresses()).own).toEqual([berth]);
});

test('a mattress that is not there any more cannot be removed, and one without a width is not kept', async () => {
  const service = serviceIn(freshFolder());
  expect(await refusalFrom(service.removeMattress('bunk'))).toMatchObject({ kind: 'not-found' });
  const refusal = await refusalFrom(service.saveMattress({ ...bunk, width: 0 }));
  expect(refusal.findings?.[0]?.where.path).toBe('width');
  expect((await service.mattresses()).own).toEqual([]);
});
