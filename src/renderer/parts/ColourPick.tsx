import {
  Button,
  ColorArea,
  ColorField,
  ColorPicker,
  ColorSlider,
  ColorThumb,
  Dialog,
  DialogTrigger,
  Input,
  Label,
  Popover,
  SliderTrack,
} from 'react-aria-components';
import styles from './ColourPick.module.css';

export interface ColourPickProps {
  /** Whose colour it is: "Deep water". */
  readonly of: string;
  /** #rrggbb */
  readonly colour: string;
  readonly onChange: (colour: string) => void;
}

/** The colour of a fabric: chosen by eye on a card of depth and brightness, or written. */
export function ColourPick({ of, colour, onChange }: ColourPickProps) {
  return (
    <DialogTrigger>
      <div className={styles.field}>
        <span aria-hidden="true">Colour</span>
        <Button className={styles.button ?? ''} aria-label={`Colour of ${of}, ${colour}`}>
          <span className={styles.snip} style={{ background: colour }} />
          <span className="figures">{colour}</span>
        </Button>
      </div>
      <Popover className={styles.popover ?? ''} placement="left top" offset={8}>
        <Dialog className={styles.dialog ?? ''} aria-label={`Colour of ${of}`}>
          <ColourCard colour={colour} onChange={onChange} />
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}

function ColourCard({ colour, onChange }: Omit<ColourPickProps, 'of'>) {
  return (
    <ColorPicker
      value={colour}
      onChange={(next) => {
        const hex = next.toString('hex').toLowerCase();
        if (hex !== colour) onChange(hex);
      }}
    >
      <ColorArea
        className={styles.area ?? ''}
        colorSpace="hsb"
        xChannel="saturation"
        yChannel="brightness"
        aria-label="Depth and brightness"
      >
        <ColorThumb className={styles.thumb ?? ''} />
      </ColorArea>
      <ColorSlider className={styles.slider ?? ''} colorSpace="hsb" channel="hue">
        <Label>Hue</Label>
        <SliderTrack className={styles.track ?? ''}>
          <ColorThumb className={styles.thumb ?? ''} />
        </SliderTrack>
      </ColorSlider>
      <ColorField className={styles.hex ?? ''}>
        <Label>Written as #rrggbb</Label>
        <Input />
      </ColorField>
    </ColorPicker>
  );
}
