/** Files dropped on the window, or pasted: a picture is turned into a chart, a design, or the one
 * inside a pattern, is opened as unsaved work. */
import { limits } from '../../shared/design/limits.ts';
import { readDesignBytes } from '../../shared/design/read-design.ts';
import { host } from '../host.ts';
import { pictureByPlace } from '../picture/picture-to-chart.tsx';
import { runCommand } from '../shell/command-bus.ts';
import { isAsking } from '../shell/dialogs.tsx';
import { isInText } from '../shell/keys.ts';
import { tellProblem } from '../shell/notices.tsx';
import { openDesign } from '../store/studio.ts';
import { isPatternName, openInPattern } from './open-in-pattern.ts';
import { mayLeave } from './opening.ts';

/** Listens until the function that is given back is called. */
export function listenToDrops(): () => void {
  const over = (event: DragEvent) => event.preventDefault();
  const drop = (event: DragEvent) => {
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    if (file) takeFile(file);
  };
  const paste = (event: ClipboardEvent) => {
    const file = event.clipboardData?.files[0];
    if (file) takeFile(file);
    else if (!isInText(event.target) && !isAsking()) runCommand('paste');
  };
  window.addEventListener('dragover', over);
  window.addEventListener('drop', drop);
  window.addEventListener('paste', paste);
  return () => {
    window.removeEventListener('dragover', over);
    window.removeEventListener('drop', drop);
    window.removeEventListener('paste', paste);
  };
}

async function takeFile(file: File): Promise<void> {
  if (isAsking()) return;
  if (file.name.endsWith('.larkrow')) return takeDesign(file);
  if (isPatternName(file.name)) return takePattern(file);
  if (file.size > limits.pictureBytes)
    return tellProblem(
      `“${file.name}” is larger than ${megabytes(limits.pictureBytes)}. Save a smaller version of the picture and try again.`,
    );
  const place = await host().call('picture.take', {
    name: file.name || 'Picture',
    bytes: new Uint8Array(await file.arrayBuffer()),
  });
  if (place.ok) await pictureByPlace(place.value);
  else tellProblem(place.problem.sentence);
}

async function takeDesign(file: File): Promise<void> {
  if (file.size > limits.fileBytes)
    return tellProblem(
      `“${file.name}” is larger than ${megabytes(limits.fileBytes)}, too large for a design. Choose another file.`,
    );
  const read = readDesignBytes(new Uint8Array(await file.arrayBuffer()));
  if (!read.ok) return tellProblem(`${file.name}: ${read.problem.sentence}`);
  if (await mayLeave()) openDesign(read.value, null);
}

/** Whole patterns go to the host as bytes: larger ones are better opened than dropped. */
async function takePattern(file: File): Promise<void> {
  if (file.size > limits.fileBytes)
    return tellProblem(
      `“${file.name}” is larger than ${megabytes(limits.fileBytes)}. Use Open, or the design itself, a .larkrow file.`,
    );
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (await mayLeave()) await openInPattern(bytes, file.name);
}

function megabytes(bytes: number): string {
  return `${bytes / 1024 / 1024} MB`;
}
