import type { Pattern, Size } from '../../pattern/schema.ts';
import { borderWidths } from '../growing.ts';
import { groundsOf } from '../onPoint/edges.ts';
import type { Measure } from '../quilt.ts';
import { sashesOf } from '../sashing.ts';

/**
 * What a size finishes at, without laying it out: quick enough to be asked thousands of times.
 * @param block the finished block of this size, inches
 */
export function measureOf(pattern: Pattern, size: Size, block: Measure): Measure {
  const centre = centreMeasure(pattern, size, block);
  return pattern.borders.reduce((top, border) => {
    const { sides, ends } = borderWidths(border, size);
    return { width: top.width + 2 * sides, height: top.height + 2 * ends };
  }, centre);
}

/** What the setting of a size finishes at, before its borders. */
function centreMeasure({ setting, house }: Pattern, size: Size, block: Measure): Measure {
  const sashes = sashesOf(setting, size);
  if (setting.kind === 'on-point') return groundsOf(setting, size, block.width, sashes, house).whole;
  const sash = sashes?.width.value ?? 0;
  if (setting.kind === 'strips') {
    const strips = setting.run === 'rows' ? size.down : size.across;
    const more = sash * (strips + (sashes?.outside ? 1 : -1));
    const [wide, high] = [size.across * block.width, size.down * block.height];
    return setting.run === 'rows' ? { width: wide, height: high + more } : { width: wide + more, height: high };
  }
  const between = (many: number) => sash * (many + (sashes?.outside ? 1 : -1));
  return {
    width: size.across * block.width + between(size.across),
    height: size.down * block.height + between(size.down),
  };
}
