import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react';
import { createPortal } from 'react-dom';
import styles from './SidePanel.module.css';

interface Slot {
  readonly element: HTMLElement | null;
  readonly setElement: (element: HTMLElement | null) => void;
  readonly filled: boolean;
  readonly fill: (by: 1 | -1) => void;
  /** Whether the view shows the whole quilt itself. */
  readonly ownQuilt: boolean;
  readonly setOwnQuilt: (own: boolean) => void;
}

const SlotContext = createContext<Slot | null>(null);

function useSlot(): Slot {
  const slot = useContext(SlotContext);
  if (slot === null) throw new Error('A side panel needs a SidePanelProvider around it');
  return slot;
}

/** Holds the one side panel of the frame, empty until a view fills it. */
export function SidePanelProvider({ children }: { readonly children: ReactNode }) {
  const [element, setElement] = useState<HTMLElement | null>(null);
  const [count, setCount] = useState(0);
  const [ownQuilt, setOwnQuilt] = useState(false);
  const fill = useCallback((by: 1 | -1) => setCount((before) => before + by), []);
  const slot = useMemo<Slot>(
    () => ({ element, setElement, filled: count > 0, fill, ownQuilt, setOwnQuilt }),
    [element, count, fill, ownQuilt],
  );
  return <SlotContext.Provider value={slot}>{children}</SlotContext.Provider>;
}

/** Whether a view has put anything into the side panel. */
export function useSidePanelFilled(): boolean {
  return useSlot().filled;
}

/** Whether the view on the table shows the whole quilt itself. */
export function useQuiltShown(): boolean {
  return useSlot().ownQuilt;
}

/** For a view with the whole quilt in it: the frame's small one does not stand beside it then. */
export function useOwnQuilt(): void {
  const { setOwnQuilt } = useSlot();
  useEffect(() => {
    setOwnQuilt(true);
    return () => setOwnQuilt(false);
  }, [setOwnQuilt]);
}

/** The place in the frame where the side panel stands. */
export function SidePanelPlace() {
  return <div className={styles.place} ref={useSlot().setElement} />;
}

export interface SidePanelProps {
  /** What is selected: "Outer border". */
  readonly title: string;
  /** What kind of thing it is, in a word or two above the title. */
  readonly kind?: string;
  readonly children: ReactNode;
}

/** What is selected, and what can be done with it. Write it anywhere inside a view; it is shown at the side. */
export function SidePanel({ title, kind, children }: SidePanelProps) {
  const { element, fill } = useSlot();
  // The frame keeps its width free for exactly as long as something stands here.
  useEffect(() => {
    fill(1);
    return () => fill(-1);
  }, [fill]);
  if (element === null) return null;
  return createPortal(
    <section className={styles.panel} aria-label={title}>
      <header className={styles.head}>
        {kind === undefined ? null : <p className={styles.kind}>{kind}</p>}
        <h2 className={styles.title}>{title}</h2>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it may scroll while nothing in it takes the focus */}
      <div className={styles.body} tabIndex={0}>
        {children}
      </div>
    </section>,
    element,
  );
}

/** A part of the side panel with a heading of its own. */
export function PanelPart({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className={styles.part}>
      <h3>{title}</h3>
      {children}
    </section>
  );
}
