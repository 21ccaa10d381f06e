// Starts the terminal program. Plain JavaScript, so that Node need not load its reader of TypeScript, which takes longer than
// most commands: what it made of the sources the last time is kept.
import { enableCompileCache } from 'node:module';

enableCompileCache();
await import('./index.ts');
