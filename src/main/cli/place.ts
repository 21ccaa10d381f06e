import { findNodeAtLocation, parseTree } from 'jsonc-parser';

type Step = string | number;

const STEP = /\.?([A-Za-z][\w-]*)|\[(\d+)\]|\["([^"]*)"\]/y;

/** A path such as `sizes[1].borders.rope` in steps; what follows a step that cannot be read is left off. */
function stepsOf(path: string): readonly Step[] {
  const steps: Step[] = [];
  STEP.lastIndex = 0;
  for (let match = STEP.exec(path); match !== null; match = STEP.exec(path)) {
    const [, name, index, quoted] = match;
    steps.push(index === undefined ? (name ?? quoted ?? '') : Number(index));
  }
  return steps;
}

/**
 * The line on which a place stands in a JSON text, or the nearest thing around it that is there; null for the whole
 * document.
 */
export function lineOf(text: string, path: string): number | null {
  const all = stepsOf(path);
  // A text without a place in it may be no JSON at all, or nested deeper than can be walked.
  const root = all.length === 0 ? undefined : parseTree(text.replace(/^\uFEFF/, ''));
  if (root === undefined) return null;
  for (let steps = [...all]; steps.length > 0; steps = steps.slice(0, -1)) {
    const node = findNodeAtLocation(root, steps);
    if (node !== undefined) return text.slice(0, node.offset).split('\n').length;
  }
  return null;
}
