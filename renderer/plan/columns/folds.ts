/**
 * Which of the two columns beside the chart are folded away. Where the window is narrow the settings are, so that the chart
 * has room, until the person decides otherwise; what was decided stays while the studio is open.
 */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

export type Side = 'settings' | 'figures';

/** Null: as the width of the window has it. */
type Folds = Readonly<Record<Side, boolean | null>>;

const narrow = '(max-width: 1100px)';

const folds = createStore<Folds & { readonly isNarrow: boolean }>(() => ({
  settings: null,
  figures: null,
  isNarrow: false,
}));

export function useFolded(side: Side): boolean {
  return useStore(folds, (state) => isFolded(state, side));
}

export function toggleFold(side: Side): void {
  folds.setState((state) => ({ [side]: !isFolded(state, side) }));
}

export function unfoldColumn(side: Side): void {
  folds.setState({ [side]: false });
}

/** Follows the width of the window until the function that is given back is called. */
export function followWidth(): () => void {
  const query = window.matchMedia(narrow);
  const follow = () => folds.setState({ isNarrow: query.matches });
  follow();
  query.addEventListener('change', follow);
  return () => query.removeEventListener('change', follow);
}

function isFolded({ isNarrow, ...decided }: Folds & { readonly isNarrow: boolean }, side: Side): boolean {
  return decided[side] ?? (side === 'settings' && isNarrow);
}
