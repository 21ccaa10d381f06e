import { freeId } from '../../shared/pattern/edits/list.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { giveFile } from '../parts/giveFile.ts';
import type { Studio } from '../state/studio.ts';

/** Does something on the shelf; a refusal is said in words. Answers whether it was done. */
export async function attempt(studio: Studio, act: () => Promise<unknown>): Promise<boolean> {
  try {
    await act();
    return true;
  } catch (thrown) {
    studio.sayWhy(thrown);
    return false;
  }
}

/** Opens a pattern and shows its quilt. */
export async function openPattern(studio: Studio, id: string): Promise<void> {
  const open = studio.store.getState().history?.now.id === id || (await studio.open(id));
  if (open) studio.show('quilt');
}

/** An id nobody has yet, made from a title. */
export async function freePatternId(studio: Studio, title: string): Promise<string> {
  return freeId(
    title,
    (await studio.host.patterns()).map(({ id }) => id),
  );
}

/** Keeps and opens a pattern of the designer's own making. */
export async function keepFresh(studio: Studio, pattern: Pattern): Promise<void> {
  if (await studio.openFresh(pattern)) studio.show('quilt');
}

/** A copy under a title of its own, open at once. */
export async function copyPattern(studio: Studio, id: string): Promise<void> {
  await attempt(studio, async () => {
    const pattern = await current(studio, id);
    const title = `${pattern.title}, a copy`;
    await keepFresh(studio, { ...pattern, id: await freePatternId(studio, title), title });
  });
}

/** The pattern as a file of its own, with its photographs, for keeping elsewhere or for somebody else. */
export async function giveAway(studio: Studio, id: string): Promise<void> {
  await attempt(studio, async () => {
    const pattern = await current(studio, id);
    const { name, text } = await studio.host.exportPattern(pattern);
    giveFile({ name, type: 'application/json', parts: [text] });
  });
}

/** Removes a pattern; a note offers the way back. */
export async function removePattern(studio: Studio, id: string, again: () => void): Promise<void> {
  await attempt(studio, async () => {
    const pattern = await current(studio, id);
    if (studio.store.getState().history?.now.id === id) await studio.close();
    await studio.host.removePattern(id);
    again();
    studio.say(`“${pattern.title}” is removed.`, {
      act: { label: 'Put it back', run: () => void putBack(studio, pattern, again) },
    });
  });
}

async function putBack(studio: Studio, pattern: Pattern, again: () => void): Promise<void> {
  await attempt(studio, () => studio.host.savePattern({ pattern, revision: null }));
  again();
}

/** The pattern as it is now: on screen when it is open, otherwise on disk. */
async function current(studio: Studio, id: string): Promise<Pattern> {
  const open = studio.store.getState().history?.now;
  return open?.id === id ? open : studio.host.lookAtPattern(id);
}
