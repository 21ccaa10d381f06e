import { mkdtemp, open, readdir, readFile, rename, rm, unlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Disk, writeWhole } from '../../../src/main/paper/writeWhole.ts';

const BYTES = new TextEncoder().encode('%PDF-1.7 and more');

function failing(code: string): Error {
  return Object.assign(new Error(`${code}: the machine says so`), { code });
}

describe('a file is written whole or not at all', () => {
  let folder: string;
  let path: string;

  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'whole-'));
    path = join(folder, 'harbour-lights.pdf');
  });
  afterEach(() => rm(folder, { recursive: true }));

  async function leavesTheOldOne(): Promise<void> {
    expect(await readdir(folder)).toEqual(['harbour-lights.pdf']);
    expect(await readFile(path, 'utf8')).toBe('the last edition');
  }

  it('takes the place of what was there', async () => {
    await writeFile(path, 'the last edition');
    await writeWhole(new Map([[path, BYTES]]));
    expect(await readFile(path)).toEqual(Buffer.from(BYTES));
    expect(await readdir(folder)).toEqual(['harbour-lights.pdf']);
  });

  it('leaves what was there on a full disk, and says where there is no room', async () => {
    await writeFile(path, 'the last edition');
    const full: Disk = {
      rename,
      unlink,
      async open(name, flags) {
        const file = await open(name, flags);
        const fill = async () => {
          await file.write(BYTES, 0, 5);
          throw failing('ENOSPC');
        };
        return { writeFile: fill, sync: () => file.sync(), close: () => file.close() };
      },
    };
    const told = { kind: 'no-room', words: expect.stringContaining(folder) };
    await expect(writeWhole(new Map([[path, BYTES]]), full)).rejects.toMatchObject(told);
    await leavesTheOldOne();
  });

  it.runIf(process.platform === 'linux')('hears it from the machine itself', async () => {
    // Linux keeps a device that is always full: /dev/full.
    const full: Disk = { rename, unlink, open: () => open('/dev/full', 'w') };
    await expect(writeWhole(new Map([[path, BYTES]]), full)).rejects.toMatchObject({
      kind: 'no-room',
      words: expect.stringContaining('no room left'),
    });
    expect(await readdir(folder)).toEqual([]);
  });

  it.each(['EROFS', 'EACCES', 'EPERM'])(
    'leaves what was there when the folder may not be written to (%s)',
    async (code) => {
      await writeFile(path, 'the last edition');
      const closed: Disk = { rename, unlink, open: () => Promise.reject(failing(code)) };
      const told = { kind: 'no-room', words: expect.stringContaining(`The folder ${folder} cannot be written to`) };
      await expect(writeWhole(new Map([[path, BYTES]]), closed)).rejects.toMatchObject(told);
      await leavesTheOldOne();
    },
  );

  it('leaves what was there when the last act fails', async () => {
    await writeFile(path, 'the last edition');
    const stuck: Disk = { open, unlink, rename: () => Promise.reject(failing('EPERM')) };
    await expect(writeWhole(new Map([[path, BYTES]]), stuck)).rejects.toMatchObject({ kind: 'no-room' });
    await leavesTheOldOne();
  });

  it('puts none of several files in place when there is no room for one of them', async () => {
    const small: Disk = {
      rename,
      unlink,
      open: (name, flags) => (name.includes('second') ? Promise.reject(failing('ENOSPC')) : open(name, flags)),
    };
    const files = new Map(['first', 'second', 'third'].map((name) => [join(folder, `${name}.pdf`), BYTES]));
    await expect(writeWhole(files, small)).rejects.toMatchObject({
      kind: 'no-room',
      words: expect.stringContaining('second.pdf'),
    });
    expect(await readdir(folder)).toEqual([]);
    await writeWhole(files);
    expect((await readdir(folder)).sort()).toEqual(['first.pdf', 'second.pdf', 'third.pdf']);
  });

  it('says which folder is not there', async () => {
    const nowhere = join(folder, 'patterns', 'sold');
    await expect(writeWhole(new Map([[join(nowhere, 'a.pdf'), BYTES]]))).rejects.toMatchObject({
      kind: 'not-found',
      words: expect.stringContaining(nowhere),
    });
  });

  it('does not hide what it does not know', async () => {
    const odd: Disk = { rename, unlink, open: () => Promise.reject(failing('EWEIRD')) };
    await expect(writeWhole(new Map([[path, BYTES]]), odd)).rejects.toThrow('EWEIRD');
  });
});
