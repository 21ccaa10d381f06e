import { makeReader } from '../../../src/main/reader.ts';
import type { Publisher } from '../../../src/main/service/publisher.ts';
import { makeService, type Service } from '../../../src/main/service.ts';
import type { Store } from '../../../src/main/store/store.ts';
import { storeIn } from './folder.ts';
import { sampleRecipe } from './samples.ts';

/** A publisher for services that are not asked to publish. */
export const noPublisher: Publisher = {
  make: () => Promise.reject(new Error('nothing is published here')),
  close: () => Promise.resolve(),
};

export interface Served {
  readonly service: Service;
  readonly store: Store;
  /** The bugs that were reported. */
  readonly reported: unknown[];
}

/** A service on an empty store of its own. */
export function serviceOn({ store = storeIn(), publisher = noPublisher } = {}): Served {
  const reported: unknown[] = [];
  const service = makeService({
    store,
    reader: makeReader([JSON.stringify(sampleRecipe())]),
    publisher,
    mattressTables: [],
    host: 'browser',
    version: '0.0.1',
    report: (error) => reported.push(error),
  });
  return { service, store, reported };
}

/** The refusal a call rejects with. */
export async function refusalFrom(call: Promise<unknown>) {
  const outcome = await call.then(
    () => null,
    (error: unknown) => error,
  );
  if (typeof outcome !== 'object' || outcome === null || !('kind' in outcome)) {
    throw outcome ?? new Error('it was not refused');
  }
  return outcome as { kind: string; words: string; findings?: readonly { where: { path: string }; what: string }[] };
}
