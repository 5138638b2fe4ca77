/** Both hosts, for `describe.each`: each promise of the contract is tried on both. */
import { startBrowserTestHost } from './start-browser-test-host.ts';
import { startElectronStandIn } from './start-electron-stand-in.ts';
import type { StartTestHost } from './test-host.ts';

export const bothHosts: readonly { readonly name: string; readonly start: StartTestHost }[] = [
  { name: 'the browser host over HTTP', start: startBrowserTestHost },
  { name: 'the desktop’s handlers behind a stand-in that is not Electron', start: startElectronStandIn },
];
