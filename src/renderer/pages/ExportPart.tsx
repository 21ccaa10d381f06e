import { Label, ProgressBar } from 'react-aria-components';
import type { Finding } from '../../shared/measure/finding.ts';
import { Button } from '../parts/Button.tsx';
import { FindingLine } from '../parts/FindingLine.tsx';
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
      <ProgressBar className={styles.making ?? ''} value={making.progress} minValue={0} maxValue={1}>
        <Label>{making.doing}</Label>
        <span className={styles.track}>
          <span className={styles.done} style={{ width: `${100 * making.progress}%` }} />
        </span>
      </ProgressBar>
      <Button onPress={stop}>Stop</Button>
    </>
  );
}

function Refused({ exporting }: { readonly exporting: Extract<Exporting, { state: 'refused' }> }) {
  const studio = useStudio();
  const { words, findings = [] } = exporting.refusal;
  return (
    <div className={styles.refused} role="alert">
      <p>{words}</p>
      {findings.map((finding) => (
        <Found key={`${finding.where.path} ${finding.what}`} finding={finding} />
      ))}
      {findings.length === 0 ? null : (
        <>
          <p className="quiet small">A draft can be made all the same. It says so on every page.</p>
          <Button onPress={() => exportPdf(studio, true)}>Export a draft</Button>
        </>
      )}
    </div>
  );
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
