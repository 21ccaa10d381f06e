import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Bridge } from '../../../src/shared/contract.ts';

const invoked: unknown[][] = [];
const heard = new Map<string, (...words: unknown[]) => void>();
const exposed = new Map<string, unknown>();

vi.mock('electron', () => ({
  contextBridge: { exposeInMainWorld: (name: string, api: unknown) => exposed.set(name, api) },
  ipcRenderer: {
    invoke: async (...words: unknown[]) => {
      invoked.push(words);
      return { value: [] };
    },
    on: (name: string, listener: (...words: unknown[]) => void) => heard.set(name, listener),
  },
}));

beforeEach(async () => {
  await import('../../../src/main/preload.ts');
});

describe('what the page finds of the desktop', () => {
  const bridge = () => exposed.get('piecewright') as Bridge;

  it('is one bridge with two ways over it', () => {
    expect([...exposed.keys()]).toEqual(['piecewright']);
    expect(Object.keys(bridge())).toEqual(['call', 'opened']);
  });

  it('carries a call and its answer', async () => {
    expect(await bridge().call('patterns', [])).toEqual({ value: [] });
    expect(invoked).toEqual([['call', 'patterns', []]]);
  });

  it('tells of an opened file and nothing of the desktop’s event', () => {
    const told: unknown[][] = [];
    bridge().opened((...words: unknown[]) => told.push(words));
    heard.get('opened')?.({ sender: 'secret' }, { kind: 'pattern', id: 'slack-water' });
    expect(told).toEqual([[{ kind: 'pattern', id: 'slack-water' }]]);
  });
});
