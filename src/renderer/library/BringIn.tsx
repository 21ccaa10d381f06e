import { FileTrigger } from 'react-aria-components';
import { Button } from '../parts/Button.tsx';

/** Brings a pattern or recipe file in from the disk. */
export function BringIn({ onFiles }: { readonly onFiles: (files: readonly Promise<File>[]) => Promise<void> }) {
  return (
    <FileTrigger
      acceptedFileTypes={['.json']}
      allowsMultiple
      onSelect={(files) => void onFiles([...(files ?? [])].map((file) => Promise.resolve(file)))}
    >
      <Button>Bring in a file</Button>
    </FileTrigger>
  );
}
