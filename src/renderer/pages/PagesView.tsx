import { useEffect } from 'react';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { useCommands } from '../commands/context.ts';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { FindingLine } from '../parts/FindingLine.tsx';
import { fitOf } from '../state/fit.ts';
import { useHost, useWorked } from '../state/hooks.tsx';
import { PAGES_COMMANDS } from './commands.ts';
import { OnePage } from './OnePage.tsx';
import { Overview } from './Overview.tsx';
import { PagesHead } from './PagesHead.tsx';
import { PagesPanel } from './PagesPanel.tsx';
import styles from './pages.module.css';
import { pagesMade, settled, usePagesState } from './pagesStore.ts';
import { type Pages, usePages } from './usePages.ts';

/** The pattern's real pages, made again as the pattern changes, and everything that is printed but not sewn. */
export function PagesView() {
  const worked = useWorked();
  useCommands(PAGES_COMMANDS);
  if (worked === null) return null;
  return <MadePages pattern={worked.pattern} draft={fitOf(worked).level === 'stops'} />;
}

function MadePages({ pattern, draft }: { readonly pattern: Pattern; readonly draft: boolean }) {
  const host = useHost();
  const paper = usePagesState((state) => state.paper);
  const plainInk = usePagesState((state) => state.plainInk);
  const pages = usePages(host, { pattern, paper, plainInk, draft });
  const count = pages.pdf?.numPages;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was said of the pattern before no longer stands
  useEffect(settled, [pattern]);
  useEffect(() => {
    if (count !== undefined) pagesMade(count);
  }, [count]);
  return (
    <div className={styles.view}>
      <PagesHead pages={pages} draft={draft} />
      <Sheets pages={pages} />
      <PagesPanel />
    </div>
  );
}

function Sheets({ pages }: { readonly pages: Pages }) {
  const layout = usePagesState((state) => state.layout);
  const { pdf, refusal, making, again } = pages;
  if (pdf === null && refusal !== null) {
    return (
      <EmptyState
        title="There are no pages yet"
        act={
          <Button isDisabled={making !== null} onPress={again}>
            Make them again
          </Button>
        }
      >
        <p>{refusal.words}</p>
        {refusal.findings?.map((finding) => (
          <FindingLine key={`${finding.where.path} ${finding.what}`} finding={finding} />
        ))}
      </EmptyState>
    );
  }
  if (pdf === null) return <div className={styles.desk} />;
  return layout === 'one' ? <OnePage pdf={pdf} /> : <Overview pdf={pdf} />;
}
