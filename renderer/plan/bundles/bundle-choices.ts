/** How pieces are cut, and which bundles are cut already: kept while the studio runs. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Bundle } from '../../../shared/materials/bundles/bundles.ts';

interface BundleChoices {
  /** True: each piece as long as it is used. */
  readonly fitted: boolean;
  /** Keys of the bundles that are cut. */
  readonly cut: ReadonlySet<string>;
}

const choices = createStore<BundleChoices>(() => ({ fitted: false, cut: new Set() }));

export function useBundleChoices(): BundleChoices {
  return useStore(choices);
}

export function chooseFitted(fitted: boolean): void {
  choices.setState({ fitted });
}

export function tickBundle(key: string, isCut: boolean): void {
  choices.setState(({ cut }) => {
    const next = new Set(cut);
    if (isCut) next.add(key);
    else next.delete(key);
    return { cut: next };
  });
}

/** A bundle of another design, length, or number of pieces is another bundle, and not cut yet. */
export function bundleKey(opening: number, { yarn, cutMm, pieces }: Bundle): string {
  return `${opening} ${yarn} ${cutMm} ${pieces.length}`;
}
