/** The system's own dialogs, for one window. */
import { type BrowserWindow, dialog, type FileFilter } from 'electron';
import type { FileKind } from '../../shared/bridge.ts';
import type { Dialogs } from '../services/host.ts';
import { endings } from '../services/names/endings.ts';

const names: Record<FileKind, string> = {
  design: 'Designs',
  picture: 'Pictures',
  pattern: 'Patterns',
  png: 'PNG pictures',
  parcel: 'ZIP archives',
};

export function systemDialogs(window: BrowserWindow): Dialogs {
  return {
    async open(kind) {
      const options = { properties: ['openFile' as const], filters: filtersToOpen(kind) };
      return first(await dialog.showOpenDialog(window, options));
    },
    async saveAs(kind, suggestedPath) {
      const chosen = await dialog.showSaveDialog(window, {
        defaultPath: suggestedPath,
        filters: filtersOf(kind),
        properties: ['createDirectory', 'showOverwriteConfirmation'],
      });
      return chosen.canceled || !chosen.filePath ? null : chosen.filePath;
    },
    async folder() {
      return first(await dialog.showOpenDialog(window, { properties: ['openDirectory', 'createDirectory'] }));
    },
  };
}

function first({ canceled, filePaths }: { canceled: boolean; filePaths: string[] }): string | null {
  return canceled ? null : (filePaths[0] ?? null);
}

/** A design may be inside a pattern. */
function filtersToOpen(kind: FileKind): FileFilter[] {
  if (kind !== 'design') return filtersOf(kind);
  const extensions = [...filtersOf('design'), ...filtersOf('pattern')].flatMap((filter) => filter.extensions);
  return [{ name: 'Designs, and patterns with their design inside', extensions }, ...filtersOf('design')];
}

function filtersOf(kind: FileKind): FileFilter[] {
  return [{ name: names[kind], extensions: endings[kind].map((ending) => ending.slice(1)) }];
}
