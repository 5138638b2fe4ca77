import { useStore } from 'zustand';
import type { StudioState } from './state.ts';
import { studio } from './studio.ts';

/** A part of the studio's state, for React. */
export function useStudio<T>(select: (state: StudioState) => T): T {
  return useStore(studio, select);
}
