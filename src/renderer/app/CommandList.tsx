import { useState } from 'react';
import { Autocomplete, Header, ListBox, ListBoxItem, ListBoxSection, useFilter } from 'react-aria-components';
import type { Command, CommandGroup } from '../commands/command.ts';
import { useAllCommands } from '../commands/context.ts';
import { keysText } from '../commands/keys.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { Search } from '../parts/Search.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import styles from './CommandList.module.css';

const GROUPS: readonly CommandGroup[] = ['Here', 'Pattern', 'Go to', 'Sizes', 'Studio'];

/** Everything that can be done now, by name, with its keys. Type to narrow it; Enter does it. */
export function CommandList() {
  const studio = useStudio();
  const isOpen = useStudioState(({ dialog }) => dialog === 'commands');
  const close = () => studio.openDialog(null);
  return (
    <Dialog title="What can be done here" isOpen={isOpen} onClose={close} width="wide">
      <Finder onRun={close} />
    </Dialog>
  );
}

function Finder({ onRun }: { readonly onRun: () => void }) {
  const studio = useStudio();
  const commands = useAllCommands();
  const state = useStudioState((all) => all);
  const { contains } = useFilter({ sensitivity: 'base' });
  const [words, setWords] = useState('');
  const run = (id: unknown) => {
    const command = commands.find((one) => one.id === id);
    onRun();
    if (command !== undefined) void command.run(studio);
  };
  const shown = GROUPS.map((group) => ({ group, commands: commands.filter((one) => one.group === group) }));
  return (
    <Autocomplete filter={contains} inputValue={words} onInputChange={setWords}>
      <div className={styles.search}>
        <Search label="Find something to do" autoFocus />
      </div>
      <ListBox
        className={styles.list ?? ''}
        aria-label="What can be done"
        onAction={run}
        disabledKeys={commands.filter((one) => !one.enabled(state)).map(({ id }) => id)}
        renderEmptyState={() => <p className="quiet">Nothing by that name.</p>}
      >
        {shown
          .filter((one) => one.commands.length > 0)
          .map((one) => (
            <ListBoxSection key={one.group} id={one.group}>
              <Header className={styles.group}>{one.group}</Header>
              {one.commands.map((command) => (
                <Line key={command.id} command={command} label={command.label(state)} />
              ))}
            </ListBoxSection>
          ))}
      </ListBox>
    </Autocomplete>
  );
}

function Line({ command, label }: { readonly command: Command; readonly label: string }) {
  return (
    <ListBoxItem id={command.id} textValue={label} className={styles.line ?? ''}>
      <span className={styles.label}>{label}</span>
      {command.keys?.map((keys) => (
        <kbd key={keys} className={styles.keys}>
          {keysText(keys)}
        </kbd>
      ))}
    </ListBoxItem>
  );
}
