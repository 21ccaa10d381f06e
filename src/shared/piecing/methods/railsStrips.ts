import { fromStrips } from './boardStrips.ts';

/** Rails: a strip set crosscut into whole units. */
export const railsStrips = fromStrips('rails', 'rails-strips', 'Rails from a strip set');
