/** What lies in the middle of the Plan screen: the chart with its strands, or what is planned from it, in its place. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

export type Leaf = 'chart' | 'order' | 'swatches' | 'sizes' | 'bundles' | 'materials' | 'what-if';

const leaves = createStore<{ readonly leaf: Leaf }>(() => ({ leaf: 'chart' }));

export function useLeaf(): Leaf {
  return useStore(leaves, ({ leaf }) => leaf);
}

export function showLeaf(leaf: Leaf): void {
  leaves.setState({ leaf });
}

/** Whether the leaf shows what is tied at the place in the tying order. */
export function followsOrder(leaf: Leaf): boolean {
  return leaf === 'chart' || leaf === 'order';
}

/** Turns to the chart from a leaf that doesn't show the place in the tying order. */
export function showPlace(): void {
  if (!followsOrder(leaves.getState().leaf)) showLeaf('chart');
}
