import type { Migration } from '../migrate.ts';
import { library } from './0001-library.ts';
import { revisionsAndFacets } from './0002-revisions-and-facets.ts';
import { mattresses } from './0003-mattresses.ts';
import { photographs } from './0004-photographs.ts';

/** Every change of the library's tables, oldest first. One that has been released is never edited: the next is added. */
export const migrations: readonly Migration[] = [library, revisionsAndFacets, mattresses, photographs];
