/** What is drawn over the cloth of the quilt. */
export type Over = 'turns' | 'letters' | 'grey' | 'squint';

export const OVERS: readonly { readonly id: Over; readonly says: string }[] = [
  { id: 'turns', says: 'Turns' },
  { id: 'letters', says: 'Block letters' },
  { id: 'grey', says: 'Light and dark only' },
  { id: 'squint', says: 'Squint' },
];
