import { Component, type ReactNode } from 'react';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { Refused } from '../state/host.ts';

interface MishapState {
  readonly words: string | null;
  /** Nothing broke: the view is not to be had just now. */
  readonly away: boolean;
}

/** Holds a view that breaks, so that the pattern, undo and the other views stay at hand. */
export class Mishap extends Component<{ readonly children: ReactNode }, MishapState> {
  override state: MishapState = { words: null, away: false };

  static getDerivedStateFromError(thrown: unknown): MishapState {
    return { words: thrown instanceof Error ? thrown.message : String(thrown), away: thrown instanceof Refused };
  }

  override render(): ReactNode {
    const { words, away } = this.state;
    if (words === null) return this.props.children;
    return (
      <EmptyState
        title={away ? 'This view cannot be shown yet' : 'This view came apart'}
        act={<Button onPress={() => this.setState({ words: null })}>Show it again</Button>}
      >
        <p>
          {away
            ? words
            : `Your pattern is safe. Undo the last act, or go to another view. What the view said: ${words}`}
        </p>
      </EmptyState>
    );
  }
}
