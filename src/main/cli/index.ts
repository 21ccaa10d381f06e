// The terminal program: `piecewright fit FILE`, and so on. Nothing heavy is loaded before it is known what is wanted. It is
// started by `start.js`.
import { enableCompileCache } from 'node:module';

// For whoever starts this file itself, or the built program.
enableCompileCache();

const { runCli } = await import('./runCli.ts');
const { ownTerminal } = await import('./terminal.ts');
process.exitCode = await runCli(process.argv.slice(2), ownTerminal());
