/** Which layer's name is being written in the panel. It is no part of the design. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

const renaming = createStore<{ layer: string | null }>(() => ({ layer: null }));

export function startRenaming(layer: string): void {
  renaming.setState({ layer });
}

export function endRenaming(): void {
  renaming.setState({ layer: null });
}

/** The layer's id; null where no name is being written. */
export function useRenaming(): string | null {
  return useStore(renaming, (state) => state.layer);
}
