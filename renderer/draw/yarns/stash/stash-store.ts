/** The stash as the page knows it: read anew whenever it is shown, written whole at each change. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { limits } from '../../../../shared/design/limits.ts';
import { emptyStash, type Stash, type StashYarn } from '../../../../shared/yarn/stash.ts';
import { host } from '../../../host.ts';

/** Null until it was read. */
const stashStore = createStore<{ stash: Stash | null }>(() => ({ stash: null }));

export function useStash(): Stash | null {
  return useStore(stashStore, ({ stash }) => stash);
}

export function stashNow(): Stash | null {
  return stashStore.getState().stash;
}

/** Reads it, and gives what the person should be told: a damaged file was set aside, or it could not be read. */
export async function readStash(): Promise<string> {
  const answer = await host().call('stash.read', {});
  if (!answer.ok) return answer.problem.sentence;
  take(answer.value.entries);
  return answer.value.notice ?? '';
}

/** Writes it, and gives what the person should be told where that is anything. The page then holds what was written. */
export async function writeStash(yarns: readonly StashYarn[]): Promise<string> {
  if (yarns.length > limits.stashYarns) {
    return `The stash holds at most ${limits.stashYarns} yarns. Remove some that are used up.`;
  }
  const answer = await host().call('stash.write', { entries: [...yarns] });
  if (!answer.ok) return answer.problem.sentence;
  take(answer.value.entries);
  return answer.value.notice ?? '';
}

function take(yarns: StashYarn[]): void {
  stashStore.setState({ stash: { ...emptyStash, yarns } });
}
