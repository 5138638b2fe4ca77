/** Asks the person for a file to open or a place to save to: by the system's dialogs, or by the studio's own chooser. */
import type { FileKind, Place } from '../../shared/bridge.ts';
import { aboutHost, host } from '../host.ts';
import { chooseFile, chooseFolder, chooseTarget } from '../shell/chooser.tsx';
import { tellProblem } from '../shell/notices.tsx';

export async function fileToOpen(kind: FileKind): Promise<Place | null> {
  if (!aboutHost().nativeDialogs) return chooseFile(kind);
  return answerOf(await host().call('dialog.open', { kind }));
}

export async function placeToSave(kind: FileKind, suggestedName: string): Promise<Place | null> {
  if (!aboutHost().nativeDialogs) return chooseTarget(kind, suggestedName);
  return answerOf(await host().call('dialog.saveAs', { kind, suggestedName }));
}

export async function folderToUse(): Promise<Place | null> {
  if (!aboutHost().nativeDialogs) return chooseFolder();
  return answerOf(await host().call('dialog.folder', {}));
}

function answerOf(
  result: { ok: true; value: Place | null } | { ok: false; problem: { sentence: string } },
): Place | null {
  if (result.ok) return result.value;
  tellProblem(result.problem.sentence);
  return null;
}
