import { boxOf, type Field } from './field.ts';
import type { Along, Region } from './fieldPatch.ts';
import type { Pins } from './pins.ts';

/** The lines along which a rectangle can be cut from edge to edge without cutting through a patch or across a pin. */
export function cutsOf(field: Field, region: Region, along: Along, pins: Pins): readonly number[] {
  const { left, top, right, bottom } = region;
  const cuts: number[] = [];
  const [first, last] = endsOf(region, along);
  for (let line = first + 1; line < last; line += 1) {
    const whole = along === 'across' ? field.upright(line, top, bottom) : field.level(line, left, right);
    if (whole && pins.allow(along, line, region)) cuts.push(line);
  }
  return cuts;
}

/** The parts of a rectangle between lines that follow one another, its own edges among them. */
export function partsBetween(region: Region, along: Along, lines: readonly number[]): readonly Region[] {
  return lines.slice(1).map((end, i) => partBetween(region, along, lines[i] as number, end));
}

export function partBetween({ left, top, right, bottom }: Region, along: Along, start: number, end: number): Region {
  return along === 'across' ? { left: start, top, right: end, bottom } : { left, top: start, right, bottom: end };
}

/** The first and the last line of a rectangle in one direction. */
export function endsOf({ left, top, right, bottom }: Region, along: Along): readonly [number, number] {
  return along === 'across' ? [left, right] : [top, bottom];
}

/**
 * The lines that cut a rectangle into equal parts, for every number of parts there can be but one for each cut.
 * @param cuts the lines it can be cut along
 */
export function equalCuts(
  field: Field,
  region: Region,
  along: Along,
  cuts: readonly number[],
): readonly (readonly number[])[] {
  const box = boxOf(field, region);
  const lines = along === 'across' ? field.across : field.down;
  const [start, length] = along === 'across' ? [box.x, box.width] : [box.y, box.height];
  const known = new Set(cuts);
  const found: number[][] = [];
  for (let parts = 2; parts <= cuts.length; parts += 1) {
    const at: number[] = [];
    for (let part = 1; part < parts; part += 1) {
      const place = start + (length * part) / parts;
      const line = lines.indexOf(place);
      if (!known.has(line) || !isNear(lines.at[line] as number, place)) break;
      at.push(line);
    }
    if (at.length === parts - 1) found.push(at);
  }
  return found;
}

function isNear(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-3;
}
