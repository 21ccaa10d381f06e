import { useState } from 'react';
import { DropZone, FileTrigger } from 'react-aria-components';
import { setFabricPhotograph } from '../../../shared/pattern/edits/index.ts';
import { type Photograph, shownInches } from '../../../shared/pattern/photograph.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { useAct, useHost, useRuler } from '../../state/hooks.tsx';
import { refusalOf } from '../../state/host.ts';
import { Button } from '../Button.tsx';
import { CropDialog } from './CropDialog.tsx';
import { Cropped } from './Cropped.tsx';
import styles from './photograph.module.css';
import { base64Of, tooLarge } from './readFile.ts';

const TYPES = ['image/jpeg', 'image/png', 'image/webp', 'image/tiff'];

/** A fabric shown by a photograph: dropped in or chosen, cut to the cloth in it, with its scale. */
export function PhotographPart({ fabric }: { readonly fabric: Fabric }) {
  const { bring, busy, trouble } = useBringing(fabric.id);
  const [cropping, setCropping] = useState(false);
  const act = useAct();
  const { photograph } = fabric;
  return (
    <PanelPart title="Photograph">
      <DropZone
        className={styles.drop ?? ''}
        aria-label={`A photograph of ${fabric.name}`}
        onDrop={async ({ items }) => {
          const [item] = items.filter(({ kind }) => kind === 'file');
          if (item?.kind === 'file') await bring(await item.getFile());
        }}
      >
        {photograph === undefined ? <p className="quiet small">Drop a photograph of the cloth here.</p> : null}
        {photograph === undefined ? null : <Shown photograph={photograph} />}
        <div className={styles.acts}>
          <FileTrigger acceptedFileTypes={TYPES} onSelect={(files) => files?.[0] && void bring(files[0])}>
            <Button small isDisabled={busy}>
              {busy ? 'Being looked at…' : photograph === undefined ? 'Choose a file' : 'Another file'}
            </Button>
          </FileTrigger>
          {photograph === undefined ? null : (
            <Button small onPress={() => setCropping(true)}>
              Crop and scale
            </Button>
          )}
        </div>
      </DropZone>
      {trouble === null ? null : (
        <p role="alert" className={styles.trouble}>
          {trouble}
        </p>
      )}
      {photograph === undefined ? null : (
        <Button small tone="bare" onPress={() => act(setFabricPhotograph, { fabric: fabric.id, photograph: null })}>
          Take the photograph away
        </Button>
      )}
      {photograph !== undefined && cropping ? (
        <CropDialog fabric={fabric} photograph={photograph} onClose={() => setCropping(false)} />
      ) : null}
    </PanelPart>
  );
}

function Shown({ photograph }: { readonly photograph: Photograph }) {
  const inches = shownInches(photograph);
  const ruler = useRuler();
  return (
    <figure className={styles.shown}>
      <Cropped photograph={photograph} />
      <figcaption className="quiet tiny">
        {inches === null
          ? 'Its scale is not known: crop it and lay the ruler on it.'
          : `Shows ${ruler.about(inches.width)} × ${ruler.about(inches.height)} of cloth.`}
      </figcaption>
    </figure>
  );
}

/** Sends a file to the host and takes what comes back, or says why not. */
function useBringing(fabric: string) {
  const host = useHost();
  const act = useAct();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const bring = async (file: File) => {
    setTrouble(tooLarge(file));
    if (tooLarge(file) !== null) return;
    setBusy(true);
    try {
      const { colour, ...photograph } = await host.bringPhotograph({ name: file.name, data: await base64Of(file) });
      act(setFabricPhotograph, { fabric, photograph, colour });
    } catch (thrown) {
      setTrouble(refusalOf(thrown).words);
    } finally {
      setBusy(false);
    }
  };
  return { bring, busy, trouble };
}
