/** The strokes of SVG path data of M, l, h, v and z, each with its length; written apart from the code it checks. */
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
    if (numbers.some(Number.isNaN) || !'Mlhvz'.includes(command)) throw new Error(`Not understood: ${whole}`);
    const step = { l: [a, b], h: [a, 0], v: [0, a], z: [startX - x, startY - y], M: [a - x, b - y] }[command];
    const [dx = 0, dy = 0] = step ?? [];
    x += dx;
    y += dy;
    if (command === 'M') [startX, startY] = [x, y];
    else lengths.push(Math.hypot(dx, dy));
  }
  return lengths;
}
