/** The imprint as the studio holds it: read once when it is first needed, written at each change. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { emptyImprint, type Imprint } from '../../../shared/pattern/imprint.ts';
import { host } from '../../host.ts';
import { tell, tellProblem } from '../../shell/notices.tsx';

const kept = createStore<{ readonly imprint: Imprint }>(() => ({ imprint: emptyImprint }));
let isRead = false;

export function useImprint(): Imprint {
  return useStore(kept, (state) => state.imprint);
}

export function imprintNow(): Imprint {
  return kept.getState().imprint;
}

export function onImprint(listener: () => void): () => void {
  return kept.subscribe(listener);
}

export async function readImprint(): Promise<void> {
  if (isRead) return;
  const read = await host().call('imprint.read', {});
  if (!read.ok) return tellProblem(read.problem.sentence);
  isRead = true;
  if (read.value.notice) tell(read.value.notice);
  kept.setState({ imprint: read.value.imprint });
}

/** True where it was kept. */
export async function writeImprint(imprint: Imprint): Promise<boolean> {
  const written = await host().call('imprint.write', { imprint });
  if (!written.ok) {
    tellProblem(written.problem.sentence);
    return false;
  }
  kept.setState({ imprint: written.value.imprint });
  return true;
}
