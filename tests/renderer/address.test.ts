// @vitest-environment happy-dom
import { beforeEach, describe, expect, it } from 'vitest';
import { followAddress } from '../../src/renderer/state/address.ts';
import { inLine } from '../../src/renderer/state/away/inLine.ts';
import { createStudio } from '../../src/renderer/state/studio.ts';
import { fakeHost } from '../helpers/fakeHost.ts';
import { smallPattern } from './pattern.ts';

const studio = () =>
  createStudio({
    host: fakeHost({ patterns: [smallPattern()] }),
    away: inLine({
      workOut: (pattern) => ({
        pattern,
        blocks: [],
        assembly: { way: 'rows', pinned: false, why: '' },
        sizes: [],
        findings: [],
      }),
    }),
  });

describe('the window’s address', () => {
  beforeEach(() => {
    window.location.hash = '';
  });

  it('brings the designer back to the view she reloads', () => {
    window.location.hash = '#cloth';
    const one = studio();
    followAddress(one, window)();
    expect(one.store.getState().view).toBe('cloth');
  });

  it('follows her from view to view and names the pattern', async () => {
    const one = studio();
    const leave = followAddress(one, window);
    await one.start();
    one.show('pages');
    expect(window.location.hash).toBe('#pages');
    expect(document.title).toBe('Low Tide: Pages · Piecewright');
    leave();
  });

  it('takes nothing for a view that is none', () => {
    window.location.hash = '#elsewhere';
    const one = studio();
    followAddress(one, window)();
    expect(one.store.getState().view).toBe('quilt');
  });
});
