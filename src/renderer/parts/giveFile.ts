export interface GivenFile {
  readonly name: string;
  readonly type: string;
  readonly parts: readonly BlobPart[];
}

/** Hands a file to the designer: the window or the browser asks where it goes. */
export function giveFile({ name, type, parts }: GivenFile): void {
  const url = URL.createObjectURL(new Blob([...parts], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has its own hold on the data once it has begun.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
