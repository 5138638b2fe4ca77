/** Opens the design inside a pattern as a new one, which is not saved yet; its file will be called as the pattern is. */
import type { Handle } from '../../shared/bridge.ts';
import { limits } from '../../shared/design/limits.ts';
import { readDesign } from '../../shared/design/read-design.ts';
import { host } from '../host.ts';
import { tell, tellProblem } from '../shell/notices.tsx';
import { openDesign } from '../store/studio.ts';

/** A handle, or the bytes of a pattern that was dropped on the studio. */
export async function openInPattern(
  pattern: Handle | Uint8Array<ArrayBuffer>,
  fileName: string,
): Promise<void> {
  const inside = await host().call('design.ofPattern', { pattern });
  if (!inside.ok) return tellProblem(`${fileName}: ${inside.problem.sentence}`);
  const read = readDesign(inside.value.text);
  if (!read.ok) return tellProblem(`${fileName}: ${read.problem.sentence}`);
  openDesign(read.value, null, fileName.replace(/\.pdf$/i, '').slice(0, limits.nameChars));
  tell(`This is the design inside ${fileName}. The pattern stays as it is; save the design to keep it.`);
}

export function isPatternName(fileName: string): boolean {
  return /\.pdf$/i.test(fileName);
}
