import { describe, expect, it } from 'vitest';
import { electronBinary, hasDisplay } from '../../../src/main/start/desktop.ts';
import { readWishes } from '../../../src/main/start/wishes.ts';
import { freshFolder } from '../helpers/folder.ts';

describe('what the designer asks for at the start', () => {
  it('is the window, at any port, when she asks for nothing', () => {
    expect(readWishes([], {})).toEqual({ ok: true, value: { browser: false, port: null } });
    expect(readWishes([], { PIECEWRIGHT_PORT: '' })).toMatchObject({ value: { port: null } });
  });

  it('is the browser, and a port, when she says so', () => {
    expect(readWishes(['--browser'], { PIECEWRIGHT_PORT: '8080' })).toEqual({
      ok: true,
      value: { browser: true, port: 8080 },
    });
    expect(readWishes([], { PIECEWRIGHT_PORT: '0' })).toMatchObject({ value: { port: 0 } });
  });

  it.each([['80a'], ['-1'], ['65536'], ['1.5'], [' 80'], ['0x50']])('is refused when the port is %j', (port) => {
    expect(readWishes([], { PIECEWRIGHT_PORT: port })).toMatchObject({
      ok: false,
      findings: [{ what: expect.stringContaining(port) }],
    });
  });

  it('is refused when it is not known', () => {
    expect(readWishes(['--brower'], {})).toMatchObject({
      ok: false,
      findings: [{ what: expect.stringContaining('--brower') }],
    });
  });
});

describe('a window of its own', () => {
  it('needs a display, which only some systems lack', () => {
    expect(hasDisplay({}, 'linux')).toBe(false);
    expect(hasDisplay({ DISPLAY: '' }, 'linux')).toBe(false);
    expect(hasDisplay({ DISPLAY: ':0' }, 'linux')).toBe(true);
    expect(hasDisplay({ WAYLAND_DISPLAY: 'wayland-0' }, 'linux')).toBe(true);
    expect(hasDisplay({}, 'darwin')).toBe(true);
    expect(hasDisplay({}, 'win32')).toBe(true);
  });

  it('needs the desktop program, wherever it was put', () => {
    expect(electronBinary(freshFolder(), {})).toBeNull();
    expect(electronBinary(freshFolder(), { ELECTRON_OVERRIDE_DIST_PATH: freshFolder() })).toBeNull();
  });
});
