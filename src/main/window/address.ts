/** The scheme under which the desktop window finds its files: a place of its own, never a page of the machine's disk. */
export const SCHEME = 'piecewright';

/** The window's own address; while it is being worked on, the tool that rebuilds its files serves them (`served`). */
export function addressOf(served: string | undefined, isInstalled: boolean): string {
  return isInstalled || served === undefined || served === '' ? `${SCHEME}://studio/` : served;
}

/** Whether a page is the studio's own. */
export function isOwn(url: string, address: string): boolean {
  return url === address || url.startsWith(address.endsWith('/') ? address : `${address}/`);
}
