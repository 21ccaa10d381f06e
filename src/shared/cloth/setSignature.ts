import type { Cut } from '../piecing/method.ts';

/** What makes two strip sets the same: fabrics and widths in order, and the length of a sub-cut. */
export function setSignature(layers: readonly { readonly fabric: string; readonly cut: Cut }[]): string {
  const strips = layers.map(({ fabric, cut }) => `${fabric} ${cut.width.value}`);
  return `${strips.join(' + ')} crosscut ${layers[0]?.cut.height.value}`;
}
