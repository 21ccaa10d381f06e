import { useState } from 'react';
import type { PatternCard } from '../../shared/contract.ts';
import { SidePanel } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { CardPicture } from './CardPicture.tsx';
import { CarriedRecipes } from './CarriedRecipes.tsx';
import styles from './LibraryView.module.css';
import { copyPattern, giveAway, openPattern, removePattern } from './patternActs.ts';
import { usePatternPicture } from './useDrawn.ts';
import type { Shelf } from './useShelf.ts';

const WHEN = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' });

/** A pattern on the shelf, and what can be done with it. */
export function PatternPanel({ card, shelf }: { readonly card: PatternCard; readonly shelf: Shelf }) {
  const studio = useStudio();
  const picture = usePatternPicture(card);
  const open = useStudioState(({ history }) => history?.now.id === card.id);
  const [asked, setAsked] = useState(false);
  return (
    <SidePanel kind="Pattern" title={card.title}>
      <div className={styles.panelPicture}>
        <CardPicture picture={picture} of="quilt" />
      </div>
      <dl className={styles.facts}>
        <dt>Designer</dt>
        <dd>{card.designer}</dd>
        <dt>Sizes</dt>
        <dd>{card.sizes}</dd>
        <dt>Last changed</dt>
        <dd>{WHEN.format(new Date(card.changed))}</dd>
      </dl>
      <div className={styles.acts}>
        <Button tone="strong" onPress={() => void openPattern(studio, card.id)}>
          {open ? 'Go on with it' : 'Open'}
        </Button>
        <Button onPress={() => void copyPattern(studio, card.id)}>Make a copy</Button>
        <Button onPress={() => void giveAway(studio, card.id)}>Save as a file</Button>
        <Button tone="stops" onPress={() => setAsked(true)}>
          Remove
        </Button>
      </div>
      {open ? <CarriedRecipes shelf={shelf} /> : null}
      <Dialog
        title={`Remove “${card.title}”?`}
        isOpen={asked}
        onClose={() => setAsked(false)}
        foot={
          <>
            <Button onPress={() => setAsked(false)}>Leave it</Button>
            <Button
              tone="stops"
              onPress={() => {
                setAsked(false);
                void removePattern(studio, card.id, shelf.again);
              }}
            >
              Remove it
            </Button>
          </>
        }
      >
        <p>It leaves the library with all its sizes. Save it as a file first if you may want it again.</p>
      </Dialog>
    </SidePanel>
  );
}
