import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { dataFolder } from '../../../src/main/store/folder.ts';

// Where programs keep a user's data: the XDG base directory specification (Linux), Apple's file system programming
// guide, and the known folder RoamingAppData (Windows). From memory.
describe('the data folder', () => {
  it('is where PIECEWRIGHT_HOME says, on every system', () => {
    const env = { PIECEWRIGHT_HOME: 'quilts' };
    expect(dataFolder({ env, platform: 'linux', home: '/home/ada' })).toBe(resolve('quilts'));
  });

  it('is the place the system keeps for a program’s data', () => {
    expect(dataFolder({ env: {}, platform: 'linux', home: '/home/ada' })).toBe('/home/ada/.local/share/piecewright');
    expect(dataFolder({ env: { XDG_DATA_HOME: '/data' }, platform: 'linux', home: '/home/ada' })).toBe(
      '/data/piecewright',
    );
    expect(dataFolder({ env: {}, platform: 'darwin', home: '/Users/ada' })).toBe(
      '/Users/ada/Library/Application Support/Piecewright',
    );
    expect(dataFolder({ env: { APPDATA: 'C:\\Ada\\Roaming' }, platform: 'win32', home: 'C:\\Ada' })).toBe(
      'C:\\Ada\\Roaming\\Piecewright',
    );
    expect(dataFolder({ env: {}, platform: 'win32', home: 'C:\\Ada' })).toBe('C:\\Ada\\AppData\\Roaming\\Piecewright');
  });

  it('takes no notice of an empty wish or a relative XDG folder', () => {
    const env = { PIECEWRIGHT_HOME: '', XDG_DATA_HOME: 'here' };
    expect(dataFolder({ env, platform: 'linux', home: '/home/ada' })).toBe('/home/ada/.local/share/piecewright');
  });
});
