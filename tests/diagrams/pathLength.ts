/** The strokes of SVG path data of M, L, H, V and Z, each with its length; written apart from the code it checks. */
export function strokeLengths(path: string): readonly number[] {
  const lengths: number[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  for (const [whole, command = '', rest = ''] of path.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const numbers = rest
      .trim()
      .split(/[\s,]+/)
      .filter((text) => text !== '')
      .map(Number);
    const [a = 0, b = 0] = numbers;
    if (numbers.some(Number.isNaN) || !'MLHVZ'.includes(command)) throw new Error(`Not understood: ${whole}`);
    const spots: Record<string, readonly [number, number]> = {
      L: [a, b],
      M: [a, b],
      H: [a, y],
      V: [x, a],
      Z: [startX, startY],
    };
    const before = { x, y };
    [x, y] = spots[command] ?? [x, y];
    if (command === 'M') [startX, startY] = [x, y];
    else lengths.push(Math.hypot(x - before.x, y - before.y));
  }
  return lengths;
}
