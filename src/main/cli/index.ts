// The terminal program: `piecewright fit FILE`, and so on. Nothing heavy is loaded before it is known what is wanted.
import { enableCompileCache } from 'node:module';

// Keeps what Node made of the sources for the next time: half of a short command's time.
enableCompileCache();

const { runCli } = await import('./runCli.ts');
const { ownTerminal } = await import('./terminal.ts');
process.exitCode = await runCli(process.argv.slice(2), ownTerminal());
