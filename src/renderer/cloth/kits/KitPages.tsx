import { useState } from 'react';
import type { Paper } from '../../../shared/contract.ts';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { bytesOf, makePages } from '../../pages/makePages.ts';
import { PAPERS, pagesStore, usePagesState } from '../../pages/pagesStore.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { giveFile } from '../../parts/giveFile.ts';
import { useStudio } from '../../state/hooks.tsx';
import { refusalOf } from '../../state/host.ts';
import styles from '../cloth.module.css';

/** The kit sheet as it is printed: on the paper the pages are on, to be put beside the cutting table. */
export function KitPages({ size, kits }: { readonly size: WorkedSize; readonly kits: number }) {
  const studio = useStudio();
  const paper = usePagesState((state) => state.paper);
  const [said, setSaid] = useState<string | null>(null);
  const make = async () => {
    const pattern = studio.store.getState().history?.now;
    if (pattern === undefined) return;
    setSaid('Making the sheet');
    const { plainInk } = pagesStore.getState();
    const request = { pattern, paper, plainInk, draft: false, kits: { size: size.size.id, many: kits } };
    try {
      const file = await makePages(studio.host, request, new AbortController().signal, () => undefined);
      giveFile({ name: file.name, type: file.type, parts: [bytesOf(file)] });
      setSaid(`${file.name} is in your downloads.`);
    } catch (thrown) {
      setSaid(refusalOf(thrown).words);
    }
  };
  return (
    <div className={styles.kitPages}>
      <Choice
        label="Paper"
        bare
        value={paper}
        options={PAPERS}
        onChange={(next: Paper) => pagesStore.setState({ paper: next })}
      />
      <Button tone="strong" isDisabled={said === 'Making the sheet'} onPress={() => void make()}>
        Export the sheet (PDF)
      </Button>
      <p role="status" className="quiet small">
        {said}
      </p>
    </div>
  );
}
