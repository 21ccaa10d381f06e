import { memo } from 'react';
import type { Ink } from '../../shared/diagrams/figure.ts';
import type { Block, Section } from '../../shared/writing/book.ts';
import { BookChart } from './BookChart.tsx';
import { BookFigures } from './BookFigures.tsx';
import { BookSteps } from './BookSteps.tsx';
import { BookWords } from './BookWords.tsx';
import styles from './sewing.module.css';

interface BookSectionProps {
  readonly section: Section;
  readonly inks: readonly Ink[];
}

/** One section of the written pattern, on screen. */
export function BookSection({ section, inks }: BookSectionProps) {
  return (
    <section className={styles.section} aria-labelledby={`steps-${section.id}`}>
      <h2 id={`steps-${section.id}`} tabIndex={-1}>
        {section.title}
      </h2>
      {section.blocks.map((block, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the written pattern is one fixed list that is replaced whole
        <BookBlock key={i} block={block} inks={inks} />
      ))}
    </section>
  );
}

interface BookBlockProps {
  readonly block: Block;
  readonly inks: readonly Ink[];
}

/** Shown again only when it is written otherwise than before. */
const BookBlock = memo(function BookBlock({ block, inks }: BookBlockProps) {
  switch (block.kind) {
    case 'heading':
      return <h3>{block.text}</h3>;
    case 'words':
      return (
        <p className={styles.words} data-tone={block.tone}>
          <BookWords words={block.text} />
        </p>
      );
    case 'list':
      return <BookList items={block.items} />;
    case 'caution':
      return (
        <aside className={styles.caution}>
          <h3>{block.title}</h3>
          <BookList items={block.items} />
        </aside>
      );
    case 'chart':
      return <BookChart chart={block.chart} inks={inks} />;
    case 'steps':
      return <BookSteps steps={block.steps} firstNumber={block.firstNumber} inks={inks} />;
    case 'figures':
      return <BookFigures figures={block.figures} inks={inks} room={{ width: 700, height: 420 }} />;
    case 'true-size':
      return (
        <>
          <p className={styles.words} data-tone="body">
            <BookWords words={block.words} />
          </p>
          {block.figures.map((figure, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: as above
            <BookFigures key={i} figures={[figure]} inks={inks} room={{ width: 340, height: 260 }} />
          ))}
        </>
      );
    // Made for paper: the cover, the sheet to colour, the square to measure the print by.
    case 'cover':
    case 'whole-page-figure':
    case 'test-square':
      return null;
  }
});

function BookList({ items }: { readonly items: Extract<Block, { kind: 'list' }>['items'] }) {
  return (
    <ul className={styles.list}>
      {items.map((item, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: as above
        <li key={i}>
          <BookWords words={item} />
        </li>
      ))}
    </ul>
  );
}
