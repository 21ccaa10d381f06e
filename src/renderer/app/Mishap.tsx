import { Component, type ReactNode } from 'react';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';

interface MishapState {
  readonly words: string | null;
}

/** Holds a view that breaks, so that the pattern, undo and the other views stay at hand. */
export class Mishap extends Component<{ readonly children: ReactNode }, MishapState> {
  override state: MishapState = { words: null };

  static getDerivedStateFromError(thrown: unknown): MishapState {
    return { words: thrown instanceof Error ? thrown.message : String(thrown) };
  }

  override render(): ReactNode {
    const { words } = this.state;
    if (words === null) return this.props.children;
    return (
      <EmptyState
        title="This view came apart"
        act={<Button onPress={() => this.setState({ words: null })}>Show it again</Button>}
      >
        <p>Your pattern is safe. Undo the last act, or go to another view. What the view said: {words}</p>
      </EmptyState>
    );
  }
}
