/** What the chart shows of the studio on the Plan screen: the hanging as it is, without what belongs to drawing. */
import { startingDrawing } from '../../store/drawing.ts';
import type { StudioState } from '../../store/state.ts';
import { startingViews, type Views } from '../../store/views.ts';

export function plainly(state: StudioState): StudioState {
  return {
    ...state,
    views: viewsOf(state.views),
    drawing: startingDrawing,
    patch: null,
    ghost: null,
    marked: null,
  };
}

let before: { readonly views: Views; readonly plain: Views } | null = null;

/** Cells look as they do on the Draw screen, in the same sight. The same views give the same object. */
function viewsOf(views: Views): Views {
  const { cells, sight, rules } = views;
  if (before?.views !== views) before = { views, plain: { ...startingViews, cells, sight, rules } };
  return before.plain;
}
