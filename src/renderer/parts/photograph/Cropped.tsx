import { cropOf, type Photograph } from '../../../shared/pattern/photograph.ts';
import styles from './photograph.module.css';
import { usePictures } from './pictures.ts';

/** The part of a photograph that shows the cloth, as large as its place; nothing until the picture has come. */
export function Cropped({ photograph }: { readonly photograph: Photograph }) {
  const url = usePictures([photograph.id]).get(photograph.id);
  const { x, y, width, height } = cropOf(photograph);
  return (
    <svg
      className={styles.cropped}
      viewBox={`${x} ${y} ${width} ${height}`}
      preserveAspectRatio="xMidYMid slice"
      aria-hidden="true"
    >
      {url === undefined ? null : <image href={url} width={photograph.width} height={photograph.height} />}
    </svg>
  );
}
