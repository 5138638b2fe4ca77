import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { homeHere } from '../../../../app/services/home/home.ts';
import { openConfig } from '../../../../app/services/state/config-file.ts';
import { studioState } from '../../../../app/services/state/studio-state.ts';
import { settingsSchema } from '../../../../shared/bridge.ts';
import { temporaryFolder } from '../../../temporary-folder.ts';

const defaults = settingsSchema.parse({});

describe('settings', () => {
  it('are the defaults at first, and are kept from then on', () => {
    const folder = join(temporaryFolder(), 'config');
    const state = studioState(openConfig(folder));
    expect(state.settings()).toEqual(defaults);
    expect(state.change({ units: 'us', theme: undefined })).toEqual({ ...defaults, units: 'us' });
    expect(studioState(openConfig(folder)).settings().units).toBe('us');
  });

  it.each(['', '{"settings":', '[]', '\u0000\u0001'])(
    'of a damaged file (%j) are set aside, and it works on',
    (text) => {
      const folder = temporaryFolder();
      writeFileSync(join(folder, 'config.json'), text);
      writeFileSync(join(folder, 'config damaged 1.json'), 'an older one');
      const state = studioState(openConfig(folder));
      expect(state.settings()).toEqual(defaults);
      expect(state.change({ paper: 'letter' }).paper).toBe('letter');
      expect(readFileSync(join(folder, 'config damaged 2.json'), 'utf8')).toBe(text);
      expect(readFileSync(join(folder, 'config damaged 1.json'), 'utf8')).toBe('an older one');
    },
  );

  it('lose only the one value that makes no sense', () => {
    const folder = temporaryFolder();
    const stored = { settings: { units: 'cubits', theme: 'dark', unknown: 1 }, recent: 'x', demosGiven: 7 };
    writeFileSync(join(folder, 'config.json'), JSON.stringify(stored));
    const state = studioState(openConfig(folder));
    expect(state.settings()).toEqual({ ...defaults, theme: 'dark' });
    expect(state.recent()).toEqual([]);
    expect(state.demosGiven()).toBe(false);
  });
});

describe('recent designs', () => {
  it('stand latest first, each once, twelve at most', () => {
    const state = studioState(openConfig(temporaryFolder()));
    for (let n = 1; n <= 14; n++) state.noteRecent(`/${n}`);
    state.noteRecent('/10');
    expect(state.recent()).toHaveLength(12);
    expect(state.recent().slice(0, 3)).toEqual(['/10', '/14', '/13']);
    state.moveRecent('/14', '/new');
    state.moveRecent('/13', null);
    expect(state.recent().slice(0, 3)).toEqual(['/10', '/new', '/12']);
    state.clearRecent();
    expect(state.recent()).toEqual([]);
  });

  it('that can’t be kept stop nobody', () => {
    const full = () => {
      throw Object.assign(new Error('full'), { code: 'ENOSPC' });
    };
    expect(() => studioState({ get: () => undefined, set: full }).noteRecent('/fox')).not.toThrow();
  });
});

describe('the home of the studio', () => {
  it('is one folder where LARKROW_HOME names it', () => {
    expect(homeHere({ LARKROW_HOME: '/try' })).toEqual({
      shelf: join('/try', 'Larkrow'),
      config: join('/try', 'config'),
      bin: join('/try', 'bin'),
      folders: [],
    });
  });

  it('follows the platform’s conventions for settings', () => {
    expect(homeHere({ XDG_CONFIG_HOME: '/c', XDG_DATA_HOME: '/d' }, 'linux')).toMatchObject({
      config: join('/c', 'larkrow'),
      bin: join('/d', 'Trash'),
    });
    expect(homeHere({ APPDATA: '/roaming' }, 'win32').config).toBe(join('/roaming', 'Larkrow'));
    expect(homeHere({}, 'darwin').config).toMatch(/Library.Application Support.Larkrow$/);
  });

  it('makes no folder by being asked for', () => {
    const folder = join(temporaryFolder(), 'none');
    homeHere({ LARKROW_HOME: folder });
    expect(existsSync(folder)).toBe(false);
    mkdirSync(folder);
    expect(readdirSync(folder)).toEqual([]);
  });
});
