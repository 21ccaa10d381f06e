import { openStore } from '../../../src/main/store/store.ts';
import { samplePattern } from '../helpers/samples.ts';

/** A program that opens the library, saves one pattern under the id it is given, and ends. */
const [, , folder, id] = process.argv;
if (folder === undefined || id === undefined) throw new Error('name the folder and the pattern');
const store = openStore({ folder, now: () => new Date() });
store.patterns.save(samplePattern({ id }), null);
store.close();
