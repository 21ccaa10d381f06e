/** The few colours of the page. Fabric colours are the designer's and not here. */
export interface Palette {
  readonly ink: string;
  /** Heads of charts, captions, feet. */
  readonly quiet: string;
  /** The one thread of colour. */
  readonly accent: string;
  /** Cautions and drafts. */
  readonly alarm: string;
  /** Every third row of a chart. */
  readonly tone: string;
  readonly rule: string;
}

const COLOUR: Palette = {
  ink: '#1e2330',
  quiet: '#5a4a3c',
  accent: '#2f4170',
  alarm: '#9e3b3f',
  tone: '#f5f0e5',
  rule: '#1e2330',
};

/** Pure black and greys, for a printer with one ink. */
const PLAIN: Palette = {
  ink: '#000000',
  quiet: '#404040',
  accent: '#000000',
  alarm: '#000000',
  tone: '#eeeeee',
  rule: '#000000',
};

/** The page's colours, or black and greys. */
export function paletteFor(plainInk: boolean): Palette {
  return plainInk ? PLAIN : COLOUR;
}
