/** The largest file that is sent to be looked at, bytes: any camera's photograph is smaller. */
const LARGEST_FILE = 40_000_000;

/** Why a file is not even sent, in words; null when it may be. */
export function tooLarge({ name, size }: Pick<File, 'name' | 'size'>): string | null {
  if (size <= LARGEST_FILE) return null;
  return `${name} has ${Math.round(size / 1_000_000)} megabytes. Save it smaller, below ${LARGEST_FILE / 1_000_000}, and take that.`;
}

/** A file's bytes in base 64. */
export function base64Of(file: Blob): Promise<string> {
  return new Promise((done, fail) => {
    const reader = new FileReader();
    reader.onload = () => done(String(reader.result).replace(/^data:[^,]*,/, ''));
    reader.onerror = () => fail(new Error('The file could not be read.'));
    reader.readAsDataURL(file);
  });
}
