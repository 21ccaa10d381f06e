/** Where a command speaks: what was asked for, and what went wrong. */
export interface Terminal {
  /** Letters in a line. */
  readonly width: number;
  say(text: string): void;
  complain(text: string): void;
}

const USUAL_WIDTH = 100;

/** The terminal this process was started from. */
export function ownTerminal(): Terminal {
  return {
    width: process.stdout.columns ?? USUAL_WIDTH,
    say: (text) => void process.stdout.write(`${harmless(text)}\n`),
    complain: (text) => void process.stderr.write(`${harmless(text)}\n`),
  };
}

/** A name in somebody's file must not steer the reader's terminal: control characters but the line end are shown as �. */
function harmless(text: string): string {
  return text.replace(/[^\P{Cc}\n]/gu, '\ufffd');
}
