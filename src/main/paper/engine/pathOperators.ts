/**
 * SVG path data of M, L, H, V and Z (all that the house's figures use) as PDF path operators, which say the point before
 * the command and know no H and V. Sixteen thousand patches come through here, so it is one pass.
 */
export function pathOperators(path: string): string {
  let operators = '';
  let x = '0';
  let y = '0';
  let at = 0;
  while (at < path.length) {
    const command = path[at];
    const end = nextCommand(path, at + 1);
    if (command === 'Z') operators += 'h ';
    else {
      const numbers = path.slice(at + 1, end);
      const gap = numbers.indexOf(' ');
      if (command === 'V') y = numbers;
      else if (command === 'H') x = numbers;
      else [x, y] = [numbers.slice(0, gap), numbers.slice(gap + 1)];
      operators += `${x} ${y} ${command === 'M' ? 'm' : 'l'} `;
    }
    at = end;
  }
  return operators;
}

/** Commands are capitals; numbers are not. */
function nextCommand(path: string, from: number): number {
  let at = from;
  while (at < path.length && path.charCodeAt(at) < 65) at += 1;
  return at;
}
