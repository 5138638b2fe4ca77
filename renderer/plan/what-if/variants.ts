/** The variants that are weighed: kept while the design is open, whichever leaf is shown. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Design } from '../../../shared/design/design.ts';
import type { Change } from './change.ts';
import { newChange } from './new-change.ts';

export interface Variant {
  /** Its own while the studio runs. */
  readonly key: string;
  readonly changes: readonly Change[];
}

/** As many as stand side by side and can be told apart. */
export const mostVariants = 4;

/** What variants begin with, in this order. */
const begun = ['working-length', 'carry', 'tidy', 'merge', 'gauge', 'live-wish', 'reserve'] as const;

interface Variants {
  /** The design's opening that they belong to. */
  readonly opening: number;
  readonly list: readonly Variant[];
}

const variants = createStore<Variants>(() => ({ opening: 0, list: [] }));
let made = 0;

/** Two to begin with: longer pieces, and longer carries. */
export function startVariants(opening: number, design: Design): void {
  if (variants.getState().opening === opening) return;
  const list = begun.slice(0, 2).map((kind) => newVariant([newChange(kind, design, null)]));
  variants.setState({ opening, list });
}

export function useVariants(): readonly Variant[] {
  return useStore(variants, ({ list }) => list);
}

/**
 * It begins with a change that none of the others makes, so that it is no second one of them. `liveMax`: how many strands
 * hang at once as it is, where that is known.
 */
export function addVariant(design: Design, liveMax: number | null): void {
  variants.setState(({ list }) => {
    if (list.length >= mostVariants) return { list };
    const made = new Set(list.flatMap(({ changes }) => changes.map(({ kind }) => kind)));
    const kind = begun.find((each) => !made.has(each)) ?? 'tidy';
    return { list: [...list, newVariant([newChange(kind, design, liveMax)])] };
  });
}

export function removeVariant(key: string): void {
  variants.setState(({ list }) => ({ list: list.filter((each) => each.key !== key) }));
}

export function changeVariant(key: string, changes: readonly Change[]): void {
  variants.setState(({ list }) => ({
    list: list.map((each) => (each.key === key ? { key, changes } : each)),
  }));
}

function newVariant(changes: readonly Change[]): Variant {
  return { key: `v${++made}`, changes };
}
