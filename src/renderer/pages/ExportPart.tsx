import type { Finding } from '../../shared/measure/finding.ts';
import { Button } from '../parts/Button.tsx';
import { FindingLine } from '../parts/FindingLine.tsx';
import { Progress } from '../parts/Progress.tsx';
import { useStudio } from '../state/hooks.tsx';
import { exportPdf } from './exportPdf.ts';
import styles from './pages.module.css';
import { type Exporting, usePagesState } from './pagesStore.ts';

/** The PDF as a file: made while she goes on, stopped when she likes, refused while something does not fit. */
export function ExportPart() {
  const studio = useStudio();
  const exporting = usePagesState((state) => state.exporting);
  return (
    <div className={styles.export}>
      {exporting.state === 'making' ? (
        <Making exporting={exporting} />
      ) : (
        <Button tone="strong" onPress={() => exportPdf(studio, false)}>
          Export the PDF
        </Button>
      )}
      {exporting.state === 'done' ? (
        <p className="small" role="status">
          {exporting.name} is in your downloads.
        </p>
      ) : null}
      {exporting.state === 'refused' ? <Refused exporting={exporting} /> : null}
    </div>
  );
}

function Making({ exporting }: { readonly exporting: Extract<Exporting, { state: 'making' }> }) {
  const { making, stop } = exporting;
  return (
    <>
      <Progress doing={making.doing} progress={making.progress} />
      <Button onPress={stop}>Stop</Button>
    </>
  );
}

function Refused({ exporting }: { readonly exporting: Extract<Exporting, { state: 'refused' }> }) {
  const studio = useStudio();
  const { words, findings = [] } = exporting.refusal;
  const stops = distinct(findings.filter(({ level }) => level === 'stops'));
  if (stops.length === 0) return <p role="alert">{words}</p>;
  return (
    <div className={styles.refused} role="alert">
      <p>
        The pattern does not fit yet, so it is not exported. A draft can be made all the same; it says so on every page.
      </p>
      <Button onPress={() => exportPdf(studio, true)}>Export a draft</Button>
      {stops.map((finding) => (
        <Found key={keyOf(finding)} finding={finding} />
      ))}
    </div>
  );
}

function keyOf({ where, what }: Finding): string {
  return `${where.path} ${where.size ?? ''} ${what}`;
}

function distinct(findings: readonly Finding[]): readonly Finding[] {
  return [...new Map(findings.map((finding) => [keyOf(finding), finding])).values()];
}

function Found({ finding }: { readonly finding: Finding }) {
  const studio = useStudio();
  return (
    <div>
      <FindingLine finding={finding} />
      <Button tone="bare" small onPress={() => studio.goTo(finding)}>
        Go there
      </Button>
    </div>
  );
}
