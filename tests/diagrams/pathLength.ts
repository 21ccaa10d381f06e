/** The strokes of SVG path data of M, L, H, V and Z, each with its length; written apart from the code it checks. */
export function strokeLengths(path: string): readonly number[] {
  const lengths: number[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  for (const [, command = '', rest = ''] of path.matchAll(/([MLHVZ])([^MLHVZ]*)/g)) {
    const numbers = rest
      .trim()
      .split(/[\s,]+/)
      .filter((text) => text !== '')
      .map(Number);
    if (numbers.some(Number.isNaN)) throw new Error(`Not a path: ${path}`);
    const [a = 0, b = 0] = numbers;
    const before = { x, y };
    if (command === 'M' || command === 'L') [x, y] = [a, b];
    if (command === 'H') x = a;
    if (command === 'V') y = a;
    if (command === 'Z') [x, y] = [startX, startY];
    if (command === 'M') [startX, startY] = [x, y];
    else lengths.push(Math.hypot(x - before.x, y - before.y));
  }
  return lengths;
}
