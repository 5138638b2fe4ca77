/** All verbs of the bridge, over one studio. */
import { good } from '../../../shared/result.ts';
import { attempt } from '../files/attempt.ts';
import type { Handlers } from '../handlers.ts';
import type { Studio } from '../studio.ts';
import { designVerbs } from './design-verbs.ts';
import { folderVerbs } from './folder-verbs.ts';
import { imprintVerbs } from './imprint-verbs.ts';
import { motifVerbs } from './motif-verbs.ts';
import { paperVerbs } from './paper-verbs.ts';
import { parcelVerbs } from './parcel-verbs.ts';
import { shelfVerbs } from './shelf-verbs.ts';
import { stashVerbs } from './stash-verbs.ts';

export function studioHandlers(studio: Studio): Handlers {
  const { host, state } = studio;
  return {
    'host.about': () =>
      good({
        host: host.name,
        platform: platformNames[studio.platform] ?? 'linux',
        version: studio.version,
        nativeDialogs: host.dialogs !== null,
        nativeMenu: host.nativeMenu,
      }),
    'settings.read': () => good(state.settings()),
    'settings.write': (changes) =>
      attempt('Settings', 'could not be saved', async () => state.change(changes)),
    'window.describe': ({ title, unsaved }) => {
      host.window.describe(title, unsaved);
      return good({});
    },
    'window.close': () => {
      host.window.close();
      return good({});
    },
    ...shelfVerbs(studio),
    ...designVerbs(studio),
    ...folderVerbs(studio),
    ...paperVerbs(studio),
    ...parcelVerbs(studio),
    ...stashVerbs(studio),
    ...imprintVerbs(studio),
    ...motifVerbs(studio),
  };
}

const platformNames: Partial<Record<NodeJS.Platform, 'mac' | 'windows' | 'linux'>> = {
  darwin: 'mac',
  win32: 'windows',
};
