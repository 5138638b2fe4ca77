import { useEffect, useReducer } from 'react';
import type { Surface } from '../surface/surface.ts';

/** Renders again whenever the hanging has moved or changed on the screen. */
export function useViewOf(surface: Surface): void {
  const [, renderAgain] = useReducer((count: number) => count + 1, 0);
  useEffect(() => surface.onView(renderAgain), [surface]);
}
