import { useState } from 'react';
import type { Ruler as HouseRuler } from '../../../shared/measure/ruler.ts';
import { setFabricPhotograph } from '../../../shared/pattern/edits/index.ts';
import { type Crop, cropOf, type Photograph, scaleFromRuler } from '../../../shared/pattern/photograph.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import { useAct, useHost, useRuler } from '../../state/hooks.tsx';
import { refusalOf } from '../../state/host.ts';
import { Button } from '../Button.tsx';
import { Choice } from '../Choice.tsx';
import { Dialog } from '../Dialog.tsx';
import { NumberField } from '../NumberField.tsx';
import { CropPicture } from './CropPicture.tsx';
import type { Ruler } from './marking.ts';
import styles from './photograph.module.css';

interface CropDialogProps {
  readonly fabric: Fabric;
  readonly photograph: Photograph;
  readonly onClose: () => void;
}

type Tool = 'crop' | 'ruler';

/** How much of a photograph is cloth, and how large it is, by a ruler that lies in the picture. */
export function CropDialog({ fabric, photograph, onClose }: CropDialogProps) {
  const { width, height } = photograph;
  const act = useAct();
  const host = useHost();
  const house = useRuler();
  const [tool, setTool] = useState<Tool>('crop');
  const [crop, setCrop] = useState<Crop>(cropOf(photograph));
  const [ruler, setRuler] = useState<Ruler | null>(null);
  const [inches, setInches] = useState(1);
  const [trouble, setTrouble] = useState<string | null>(null);
  const measured = ruler === null ? null : scaleFromRuler(ruler.from, ruler.to, inches);
  const scale = measured ?? photograph.scale;
  const take = async () => {
    const whole = crop.width === width && crop.height === height;
    const next = {
      ...{ id: photograph.id, width, height },
      ...(whole ? {} : { crop }),
      ...(scale === undefined ? {} : { scale }),
    };
    try {
      const colour = await host.photographColour({ id: photograph.id, crop });
      act(setFabricPhotograph, { fabric: fabric.id, photograph: next, colour });
      onClose();
    } catch (thrown) {
      setTrouble(refusalOf(thrown).words);
    }
  };
  return (
    <Dialog
      title={`The cloth in the photograph of ${fabric.name}`}
      isOpen
      onClose={onClose}
      width="wide"
      foot={
        <>
          <Button onPress={onClose}>Leave it as it was</Button>
          <Button tone="strong" onPress={() => void take()}>
            Take this part
          </Button>
        </>
      }
    >
      <Choice
        label="What to mark"
        bare
        value={tool}
        options={[
          { id: 'crop', says: 'The part that is cloth' },
          { id: 'ruler', says: 'A length on the ruler in the picture' },
        ]}
        onChange={setTool}
      />
      <CropPicture photograph={photograph} tool={tool} crop={crop} ruler={ruler} onCrop={setCrop} onRuler={setRuler} />
      {tool === 'crop' ? (
        <CropFields photograph={photograph} crop={crop} onCrop={setCrop} />
      ) : (
        <RulerFields photograph={photograph} ruler={ruler} inches={inches} onRuler={setRuler} onInches={setInches} />
      )}
      <p className="small" role="status">
        {scaleWords(crop, scale, house)}
      </p>
      {trouble === null ? null : <p role="alert">{trouble}</p>}
    </Dialog>
  );
}

function scaleWords(crop: Crop, scale: number | undefined, house: HouseRuler): string {
  if (scale === undefined)
    return 'The scale is not known yet: draw along a ruler in the picture and say how long that is.';
  const across = (pixels: number) => house.about(pixels * scale);
  return `The part shows ${across(crop.width)} × ${across(crop.height)} of cloth.`;
}

interface CropFieldsProps {
  readonly photograph: Photograph;
  readonly crop: Crop;
  readonly onCrop: (crop: Crop) => void;
}

/** The same part by numbers, for hands that would rather type. */
function CropFields({ photograph: { width, height }, crop, onCrop }: CropFieldsProps) {
  return (
    <div className={styles.fields}>
      <NumberField
        label="From the left, pixels"
        unit="count"
        value={crop.x}
        most={width - 1}
        onChange={(x) => onCrop({ ...crop, x, width: Math.min(crop.width, width - x) })}
      />
      <NumberField
        label="From the top"
        unit="count"
        value={crop.y}
        most={height - 1}
        onChange={(y) => onCrop({ ...crop, y, height: Math.min(crop.height, height - y) })}
      />
      <NumberField
        label="Wide"
        unit="count"
        value={crop.width}
        least={1}
        most={width - crop.x}
        onChange={(wide) => onCrop({ ...crop, width: wide })}
      />
      <NumberField
        label="High"
        unit="count"
        value={crop.height}
        least={1}
        most={height - crop.y}
        onChange={(high) => onCrop({ ...crop, height: high })}
      />
    </div>
  );
}

interface RulerFieldsProps {
  readonly photograph: Photograph;
  readonly ruler: Ruler | null;
  readonly inches: number;
  readonly onRuler: (ruler: Ruler) => void;
  readonly onInches: (inches: number) => void;
}

/** The two marks of the ruler by numbers, and the inches between them. */
function RulerFields({ photograph: { width, height }, ruler, inches, onRuler, onInches }: RulerFieldsProps) {
  const { from, to } = ruler ?? { from: { x: 0, y: height >> 1 }, to: { x: width, y: height >> 1 } };
  const at = (label: string, value: number, most: number, change: (value: number) => Ruler) => (
    <NumberField
      label={label}
      unit="count"
      value={Math.round(value)}
      most={most}
      onChange={(n) => onRuler(change(n))}
    />
  );
  return (
    <div className={styles.fields}>
      {at('From, pixels across', from.x, width, (x) => ({ from: { ...from, x }, to }))}
      {at('From, down', from.y, height, (y) => ({ from: { ...from, y }, to }))}
      {at('To, across', to.x, width, (x) => ({ from, to: { ...to, x } }))}
      {at('To, down', to.y, height, (y) => ({ from, to: { ...to, y } }))}
      <NumberField label="Between the marks" value={inches} least={0.125} most={60} onChange={onInches} />
    </div>
  );
}
