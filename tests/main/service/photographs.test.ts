import { describe, expect, it } from 'vitest';
import type { Fabric, Pattern } from '../../../src/shared/pattern/schema.ts';
import { freshFolder, storeIn } from '../helpers/folder.ts';
import { samplePattern } from '../helpers/samples.ts';
import { refusalFrom, serviceOn } from '../helpers/service.ts';
import { halves } from '../photograph/pictures.ts';

const cloth = async () => ({
  name: 'shore.png',
  data: (await halves(120, 80, '#cc2200', '#0022cc').png().toBuffer()).toString('base64'),
});

/** The sample with a photograph of one of its fabrics. */
function shown(photograph: NonNullable<Fabric['photograph']>): Pattern {
  const { fabrics } = samplePattern();
  return samplePattern({ fabrics: fabrics.map((one) => (one.id === 'shore' ? { ...one, photograph } : one)) });
}

describe('a photograph of a fabric', () => {
  it('is kept, shown, and asked for the colour of a part', async () => {
    const { service } = serviceOn();
    const { id, width, height } = await service.bringPhotograph(await cloth());
    expect({ width, height }).toEqual({ width: 120, height: 80 });
    const picture = await service.photograph(id);
    expect(picture).toMatchObject({ type: 'image/jpeg', width, height });
    const red = await service.photographColour({ id, crop: { x: 0, y: 0, width: 40, height: 80 } });
    expect(red).toMatch(/^#c[0-9a-f][12][0-9a-f]0[0-9a-f]$/);
    const beyond = await refusalFrom(service.photographColour({ id, crop: { x: 100, y: 0, width: 40, height: 80 } }));
    expect(beyond.words).toContain('beyond the picture');
  });

  it('is told to be missing where it is not kept', async () => {
    const { service } = serviceOn();
    expect((await refusalFrom(service.photograph('0'.repeat(64)))).kind).toBe('not-found');
  });

  it('goes with the pattern’s file to another machine', async () => {
    const here = serviceOn().service;
    const { colour: _colour, ...photograph } = await here.bringPhotograph(await cloth());
    const { revision } = await here.savePattern({ pattern: shown(photograph), revision: null });
    expect(revision).toBe(1);
    const file = await here.exportPattern(await here.openPattern('slack-water'));
    expect(file.name).toBe('slack-water.pattern.json');

    const there = serviceOn().service;
    await there.importFile(file);
    const arrived = await there.openPattern('slack-water');
    expect(arrived).toEqual(shown(photograph));
    expect(await there.photograph(photograph.id)).toEqual(await here.photograph(photograph.id));
  });

  it('is refused with its fabric’s name when it is not the picture it says it is, and nothing is kept', async () => {
    const { service } = serviceOn();
    const { colour: _colour, ...photograph } = await service.bringPhotograph(await cloth());
    const { text, name } = await service.exportPattern(shown(photograph));
    const other = 'f'.repeat(64);
    const there = serviceOn().service;
    const refusal = await refusalFrom(there.importFile({ name, text: text.replaceAll(photograph.id, other) }));
    expect(refusal.words).toContain('The photograph of Shore is not the picture it says it is.');
    expect(refusal.findings?.[0]?.where.path).toBe(`photographs["${other}"]`);
    expect(await there.patterns()).toEqual([]);
  });

  it('must lie inside its picture', async () => {
    const { service } = serviceOn();
    const crop = { x: 100, y: 0, width: 40, height: 80 };
    const pattern = shown({ id: 'a'.repeat(64), width: 120, height: 80, crop });
    const refusal = await refusalFrom(service.savePattern({ pattern, revision: null }));
    expect(refusal.findings?.[0]?.what).toBe('pattern.fabrics[1].photograph.crop reaches beyond the picture.');
  });

  it('goes to the press with the pattern', async () => {
    const asked: Pattern[] = [];
    const publisher = {
      make: ({ pattern }: { readonly pattern: Pattern }) => {
        asked.push(pattern);
        return Promise.reject(new Error('no press'));
      },
      close: () => Promise.resolve(),
    };
    const { service } = serviceOn({ publisher });
    const { colour: _colour, ...photograph } = await service.bringPhotograph(await cloth());
    await service.publish({ pattern: shown(photograph), paper: 'a4', draft: false, plainInk: false });
    expect(Object.keys(asked[0]?.photographs ?? {})).toEqual([photograph.id]);
  });
});

describe('a photograph that no pattern shows', () => {
  it('is let go after a month, and not before', async () => {
    const folder = freshFolder();
    const bytes = Buffer.from('stands for a picture');
    const [used, unused] = ['a'.repeat(64), 'b'.repeat(64)];
    const store = storeIn(folder);
    store.photographs.keep([used, unused].map((id) => ({ id, width: 9, height: 9, bytes })));
    store.patterns.save(shown({ id: used, width: 9, height: 9 }), null);
    store.close();
    const soon = storeIn(folder);
    expect(soon.photographs.read(unused)).not.toBeNull();
    soon.close();
    const later = storeIn(folder, '2026-05-01T08:00:00.000Z');
    expect(later.photographs.read(used)?.bytes).toEqual(bytes);
    expect(later.photographs.read(unused)).toBeNull();
  });
});
