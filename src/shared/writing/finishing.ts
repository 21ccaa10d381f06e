import { backingFigure } from '../diagrams/backingFigure.ts';
import { plain } from '../measure/traced.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import { bindingRows, bindingSteps } from './binding.ts';
import type { ChartRow, Section, Step, Words } from './book.ts';
import { type Desk, shownFigure } from './desk.ts';
import { field, sizeWords } from './words.ts';

/** Backing, batting, quilting and binding. */
export function finishing(desk: Desk): Section {
  return {
    id: 'finishing',
    title: 'Finishing',
    newPage: false,
    blocks: [
      {
        kind: 'chart',
        chart: {
          id: 'finishing',
          columns: [
            { title: '', align: 'left', share: 3 },
            ...desk.sizes.map(({ size }) => ({ title: size.name, align: 'left' as const, share: 2.4 })),
          ],
          rows: rows(desk),
        },
      },
      desk.number([backingStep(desk), layersStep(), ...bindingSteps(desk)]),
    ],
  };
}

function rows({ pattern, sizes }: Desk): readonly ChartRow[] {
  const row = (name: string, cell: (size: WorkedSize) => Words): ChartRow => ({
    cells: [[{ strong: name }], ...sizes.map(cell)],
  });
  return [
    row('Quilt top, unfinished', ({ quilt }) => sizeWords(quilt.unfinished)),
    row('Backing, at least', ({ cloth }) => sizeWords(cloth.backing)),
    row('Backing panels', ({ cloth }) => panelWords(cloth.backing)),
    row('Batting, at least', ({ cloth }) => sizeWords(cloth.batting)),
    ...bindingRows(pattern).map(([name, cell]) => row(name, cell)),
  ];
}

/** "2 of 88″ × WOF, seams down"; "1 of 88″ × 108″ wide cloth". */
function panelWords({ panels, panelLength, seams, cloth, usableWidth }: WorkedSize['cloth']['backing']): Words {
  const width: Words = cloth === 'wide' ? [field(usableWidth), ' wide cloth'] : ['WOF'];
  return [field(panels), ' of ', field(panelLength), ' × ', ...width, seams === 'none' ? '' : `, seams ${seams}`];
}

function backingStep(desk: Desk): Step {
  const inPanels = desk.sizes.filter(({ cloth }) => cloth.backing.seams !== 'none');
  const shown = inPanels.includes(desk.shown) ? desk.shown : (inPanels[0] ?? desk.shown);
  const { backing } = shown.cloth;
  const figure = backingFigure(
    { fabric: backing.fabric, ...plain(backing), panels: backing.panels.value, seams: backing.seams },
    plain(shown.quilt.finished),
    desk.units,
  );
  return {
    words: [[backingWords(inPanels.length, desk.sizes.length)]],
    figures: [shownFigure(desk, shown, figure)],
  };
}

function backingWords(inPanels: number, all: number): string {
  if (inPanels === 0) return 'Cut off the selvages. The backing is one piece.';
  const sewn = 'with seams that run as the chart says, and press the seams open.';
  if (inPanels === all) return `Cut off the selvages. Sew the backing panels together ${sewn}`;
  return `Cut off the selvages. Where the chart gives more than one backing panel, sew them together ${sewn}`;
}

function layersStep(): Step {
  return {
    words: [['Layer backing (wrong side up), batting and quilt top (right side up). Baste, then quilt as you like.']],
    figures: [],
  };
}
