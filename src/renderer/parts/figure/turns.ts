/** So long figures are drawn in one go, milliseconds; what is left then has a turn of its own. */
const ONE_GO = 8;

const waiting = new Set<() => void>();
let spent = 0;
let isAsked = false;

/**
 * Draws at once where little has been drawn just before; else in a turn of its own, so that a view of many large figures
 * never holds the hand for all of them together.
 * @returns how to call it off
 */
export function inTurn(draw: () => void): () => void {
  if (spent < ONE_GO && waiting.size === 0) timed(draw);
  else waiting.add(draw);
  askTurn();
  return () => void waiting.delete(draw);
}

function timed(draw: () => void): void {
  const began = performance.now();
  try {
    draw();
  } finally {
    spent += performance.now() - began;
  }
}

function askTurn(): void {
  if (isAsked) return;
  isAsked = true;
  setTimeout(takeTurn, 0);
}

function takeTurn(): void {
  isAsked = false;
  spent = 0;
  for (const draw of waiting) {
    waiting.delete(draw);
    // The next turn is asked for before this one is taken: a figure that cannot be drawn holds none of the others up.
    if (waiting.size > 0) askTurn();
    timed(draw);
    if (spent >= ONE_GO) return;
  }
}
