import { backingFigure } from '../diagrams/backingFigure.ts';
import { plain } from '../measure/traced.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { ChartRow, Section, Step, Words } from './book.ts';
import type { Desk } from './desk.ts';
import { field, inSizes, sizeWords } from './words.ts';

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
          rows: rows(desk.sizes),
        },
      },
      desk.number([backingStep(desk), layersStep(), bindingStep(desk)]),
    ],
  };
}

function rows(sizes: readonly WorkedSize[]): readonly ChartRow[] {
  const row = (name: string, cell: (size: WorkedSize) => Words): ChartRow => ({
    cells: [[{ strong: name }], ...sizes.map(cell)],
  });
  return [
    row('Quilt top, unfinished', ({ quilt }) => sizeWords(quilt.unfinished)),
    row('Backing, at least', ({ cloth }) => sizeWords(cloth.backing)),
    row('Backing panels', ({ cloth }) => [field(cloth.backing.panels), ...seamWords(cloth.backing.seams)]),
    row('Batting, at least', ({ cloth }) => sizeWords(cloth.batting)),
    row('Binding strips', ({ cloth }) => [field(cloth.binding.strips), ' of ', field(cloth.binding.stripWidth)]),
  ];
}

function seamWords(seams: WorkedSize['cloth']['backing']['seams']): Words {
  if (seams === 'none') return [];
  return [seams === 'across' ? ', seams across' : ', seams down'];
}

function backingStep({ shown }: Desk): Step {
  const { backing } = shown.cloth;
  const figure = backingFigure(
    { fabric: backing.fabric, ...plain(backing), panels: backing.panels.value, seams: backing.seams },
    plain(shown.quilt.finished),
  );
  return {
    words: [
      [
        'Cut off the selvages and sew the backing panels together with seams that run as the chart says. Press the seams open.',
      ],
    ],
    figures: [{ figure, caption: [shown.size.name] }],
  };
}

function layersStep(): Step {
  return {
    words: [['Layer backing (wrong side up), batting and quilt top (right side up). Baste, then quilt as you like.']],
    figures: [],
  };
}

function bindingStep(desk: Desk): Step {
  const lengths = desk.sizes.map(({ cloth }) => cloth.binding.length);
  return {
    words: [
      [
        'Join the binding strips end to end, fold them lengthwise with the wrong sides together and press. You need ',
        ...inSizes(lengths),
        ' of binding. Trim the layers even with the quilt top, sew the binding on, fold it over the edge and sew it down.',
      ],
    ],
    figures: [],
  };
}
