import { arcBetween, pointAt } from '../../../shared/drawing/curve.ts';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { distance } from '../../../shared/drawing/near.ts';
import { type Point, turnPoint } from '../../../shared/drawing/turn.ts';
import { edgesOf, vertexAt } from '../../../shared/drawing/vertex.ts';
import { turnsOf, type Ways, waysFit } from '../../../shared/drawing/ways.ts';
import type { Act } from './acts.ts';
import styles from './draw.module.css';
import { legPath, linePath } from './paths.ts';
import { type Sight, toScreen } from './sight.ts';

interface PendingProps {
  readonly act: Act;
  readonly drawing: Drawing;
  readonly sight: Sight;
  readonly ways: Ways;
  readonly places: readonly Point[];
  /** Where the hand is now. */
  readonly at: Point | null;
}

/** What an act would do if the next place were given where the hand is: cuts as solid heavy lines. In pixels. */
export function Pending({ act, drawing, sight, ways, places, at }: PendingProps) {
  const [first] = places;
  if (first === undefined) return null;
  if (act === 'arc') return <Compass drawing={drawing} sight={sight} ways={ways} places={places} at={at} />;
  if (act === 'move') return <Moved drawing={drawing} sight={sight} from={first} to={at ?? first} />;
  if (act !== 'cut') return null;
  const all = at === null ? places : [...places, at];
  return (
    <g>
      <Images
        drawing={drawing}
        ways={ways}
        path={(move) => linePath(all.map((place) => toScreen(sight, move(place))))}
      />
      {places.map((place) => (
        <Pin key={`${place.x} ${place.y}`} sight={sight} place={place} />
      ))}
    </g>
  );
}

interface ImagesProps {
  readonly drawing: Drawing;
  readonly ways: Ways;
  readonly path: (move: (place: Point) => Point) => string;
}

/** A line and its images under the chosen ways, the images thinner. */
function Images({ drawing: { width, height }, ways, path }: ImagesProps) {
  const turns = turnsOf(waysFit(ways, width, height) ? ways : 'once', width, height);
  return turns
    .map((turn, i) => {
      const d = path((place) => turnPoint(place, turn, width, height));
      return (
        <g key={`${turn.quarters} ${turn.mirrored}`}>
          <path className={styles.cutRim} d={d} />
          <path className={styles.cutLine} data-image={i > 0 || undefined} d={d} />
        </g>
      );
    })
    .reverse();
}

function Pin({ sight, place }: { readonly sight: Sight; readonly place: Point }) {
  const { x, y } = toScreen(sight, place);
  return <circle className={styles.place} cx={x} cy={y} r={4} />;
}

type CompassProps = Omit<PendingProps, 'act'>;

/** The compass: its foot, how far it is opened, and the arc it has swung. */
function Compass({ drawing, sight, ways, places, at }: CompassProps) {
  const [centre, start] = places;
  if (centre === undefined) return null;
  const reach = start ?? at;
  const foot = toScreen(sight, centre);
  const radius = reach === null ? 0 : distance(centre, reach) * sight.scale;
  const tip = start !== undefined && at !== null && distance(start, at) > 1e-6 ? at : null;
  const arc = (move: (place: Point) => Point) => {
    if (start === undefined || tip === null) return '';
    const spot = (place: Point) => toScreen(sight, move(place));
    return legPath({ from: spot(start), to: spot(tip), centre: spot(centre) });
  };
  return (
    <g>
      {radius > 0 ? <circle className={styles.swing} cx={foot.x} cy={foot.y} r={radius} /> : null}
      {reach === null ? null : <path className={styles.swing} d={linePath([foot, toScreen(sight, reach)])} />}
      {tip === null ? null : <Images drawing={drawing} ways={ways} path={arc} />}
      <path className={styles.foot} d={`M${foot.x - 5} ${foot.y}h10M${foot.x} ${foot.y - 5}v10`} />
      {start === undefined ? null : <Pin sight={sight} place={start} />}
    </g>
  );
}

interface MovedProps {
  readonly drawing: Drawing;
  readonly sight: Sight;
  readonly from: Point;
  readonly to: Point;
}

/** The seams that meet at a corner, as they would run with it elsewhere. */
function Moved({ drawing, sight, from, to }: MovedProps) {
  const vertex = vertexAt(drawing, from);
  const others = edgesOf(drawing).flatMap(([a, b]) => {
    if (arcBetween(drawing, a, b) !== null) return [];
    return a === vertex ? [b] : b === vertex ? [a] : [];
  });
  const d = others.map((other) => linePath([toScreen(sight, to), toScreen(sight, pointAt(drawing, other))])).join('');
  return (
    <g>
      <path className={styles.cutRim} d={d} />
      <path className={styles.cutLine} data-image d={d} />
      <Pin sight={sight} place={from} />
      <Pin sight={sight} place={to} />
    </g>
  );
}
