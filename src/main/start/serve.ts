import { join } from 'node:path';
import { type Host, startHost } from '../host/server.ts';
import type { Service } from '../service.ts';

/** Where the browser finds the studio when nobody asks for another port; the same at every start, so that it remembers. */
const USUAL_PORT = 7143;

export interface Serving {
  readonly service: Service;
  /** The program's folder, with the built window in `out/renderer`. */
  readonly program: string;
  /** `null` for the usual port, or any other when that is taken. */
  readonly port: number | null;
  readonly say: (line: string) => void;
  readonly report: (error: unknown) => void;
}

/**
 * Serves the studio to the browser until the process is told to stop (Ctrl-C), then closes the library and resolves.
 * Rejects with Node's own error when the port cannot be had. Either way the service is closed.
 */
export async function serve(serving: Serving): Promise<void> {
  try {
    await serveUntilStopped(serving);
  } finally {
    await serving.service.close();
  }
  serving.say('Stopped. Everything is saved.');
}

async function serveUntilStopped({ service, program, port, say, report }: Serving): Promise<void> {
  const host = await hostOn(port, (wanted) =>
    startHost({ service, files: join(program, 'out', 'renderer'), port: wanted, report }),
  );
  const { folder } = await service.about();
  say(`Everything is kept in ${folder}`);
  say(`Open ${host.address}`);
  say('The address works once, in one browser on this machine. Ctrl-C stops the studio.');
  await toldToStop();
  await host.close();
}

async function hostOn(port: number | null, start: (port: number) => Promise<Host>): Promise<Host> {
  if (port !== null) return start(port);
  return start(USUAL_PORT).catch((error: unknown) => {
    if (isTaken(error)) return start(0);
    throw error;
  });
}

/** Whether the port cannot be had because another program has it, or because the system keeps it to itself. */
export function isTaken(error: unknown): boolean {
  if (!(error instanceof Error) || !('syscall' in error) || error.syscall !== 'listen') return false;
  return 'code' in error && (error.code === 'EADDRINUSE' || error.code === 'EACCES');
}

/** Waits for the first wish to stop; a second one is no longer caught and ends the process at once. */
function toldToStop(): Promise<void> {
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  return new Promise((resolve) => {
    const stop = (): void => {
      for (const signal of signals) process.off(signal, stop);
      resolve();
    };
    for (const signal of signals) process.on(signal, stop);
  });
}
