import type { StripInstruction } from '../cloth/bundle/instructions.ts';
import { isSquares } from '../cloth/bundle/squares.ts';
import { count, given } from '../measure/traced.ts';
import type { Block, Words } from './book.ts';
import type { Desk } from './desk.ts';
import { field, sizeWords } from './words.ts';

/** How the strips of a bundle are cut, size by size: strips that are cut alike in one line. Nothing where there is no bundle. */
export function bundleBlocks({ sizes }: Desk): readonly Block[] {
  const bundled = sizes.filter(({ bundle }) => bundle !== undefined);
  if (bundled.length === 0) return [];
  const squares = bundled.some(({ bundle }) => bundle !== undefined && isSquares(bundle.bundle));
  const words: Words = squares
    ? [
        'Lay the squares out before you cut: the pieces of one line come from one square, cut from edge to edge, and no fabric ',
        'comes twice into a block. Largest pieces first.',
      ]
    : [
        'Lay the strips out before you cut: the pieces of one line come from one strip, and no fabric comes twice into a block. ',
        'Longest pieces first. What is left at the end of a strip is spare.',
      ];
  return [
    { kind: 'heading', text: 'From the bundle' },
    { kind: 'words', tone: 'body', text: words },
    ...bundled.flatMap(({ size, bundle }): Block[] => [
      ...(sizes.length === 1 ? [] : [{ kind: 'heading', text: `From the bundle, ${size.name}` } as const]),
      { kind: 'list', items: (bundle?.instructions ?? []).map(instructionWords) },
    ]),
  ];
}

/** "From each of 6 dark strips cut 1 L (16½″) and 10 C (2½″)." */
function instructionWords({ times, value, cuts, long, square }: StripInstruction): Words {
  const one = square ? 'square' : 'strip';
  const many = count(times, 'strips');
  const from: Words =
    times === 1
      ? ['From ', field(many), ` ${value} ${one} cut `]
      : ['From each of ', field(many), ` ${value} ${one}s cut `];
  const parts: Words[] = [
    ...cuts.map(
      ({ letter, length, across, count: n }): Words => [
        field(count(n, letter)),
        ` ${letter} (`,
        ...(square
          ? sizeWords({ width: given(across, 'across'), height: given(length, 'long') })
          : [field(given(length, 'long'))]),
        ')',
      ],
    ),
    ...long.map(({ letter, length }): Words => [field(given(length, 'long')), ` for ${letter}`]),
  ];
  const joined = parts.flatMap(
    (part, i): Words => [...(i === 0 ? [] : [i === parts.length - 1 ? ' and ' : ', ']), ...part],
  );
  return [...from, ...joined, '.'];
}
