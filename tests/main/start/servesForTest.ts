import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openService } from '../../../src/main/openService.ts';
import { serve } from '../../../src/main/start/serve.ts';

/** The browser host as `npm start` runs it, on a window that is one line long. */
const program = process.argv[2];
if (program === undefined) throw new Error('name the folder');
mkdirSync(join(program, 'out', 'renderer'), { recursive: true });
writeFileSync(join(program, 'out', 'renderer', 'index.html'), '<!doctype html><title>Studio</title>');
const report = (error: unknown) => console.error(error);
await serve({ service: openService('browser', report), program, port: 0, say: console.log, report });
