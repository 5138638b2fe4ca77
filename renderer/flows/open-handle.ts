/** Opens a file by its handle and puts it on the Draw screen; what is open now is kept where this fails. */
import type { Handle } from '../../shared/bridge.ts';
import { readDesign } from '../../shared/design/read-design.ts';
import { host } from '../host.ts';
import { tellProblem } from '../shell/notices.tsx';
import { openDesign } from '../store/studio.ts';

export async function openHandle(handle: Handle): Promise<void> {
  const opened = await host().call('design.open', { design: handle });
  if (!opened.ok) return tellProblem(opened.problem.sentence);
  const { design, fileName, text, stamp } = opened.value;
  const read = readDesign(text);
  if (!read.ok) return tellProblem(`${fileName}: ${read.problem.sentence}`);
  openDesign(read.value, { design, fileName, stamp });
}
