/**
 * How the open design changes: by `change`, one step of history, and by strokes (`beginStroke`, `stroke`, `endStroke`:
 * many parts while the pointer moves, one step at the end). Whatever else is done while a stroke is open ends it first,
 * so that nothing drawn is lost; a stroke that is only shown, as a border before it is chosen, is dropped then, so that
 * nothing is drawn unasked. The chart is reflattened only in the rows touched, and `touched` tells which.
 */
import { flatten, reflatten } from '../../shared/chart/chart.ts';
import type { Mask } from '../../shared/chart/patch/mask.ts';
import type { SetBundles, SetCut } from '../../shared/design/bundle-edits.ts';
import { type Design, layerOf } from '../../shared/design/design.ts';
import { apply, type Edit, paintBetween, rowsTouched } from '../../shared/design/edits.ts';
import { record, redo, type Step, undo } from '../../shared/design/history.ts';
import type { OpenDesign, Stroke } from './state.ts';
import { studio, updateOpen } from './studio.ts';

/** One step: applied, recorded, undoable. */
export function change(label: string, edit: Edit): void {
  endStroke();
  updateOpen((open) => {
    const design = apply(open.design, edit);
    return { ...moved(open, design, edit), history: record(open.history, open.design, label, edit) };
  });
}

/**
 * What goes along with the work but is no step of it, as the tick of a bundle: saved with the design, neither undone nor in
 * the way of what can be done again. Only for edits of what no step touches.
 */
export function changeAside(edit: SetBundles | SetCut): void {
  endStroke();
  updateOpen((open) => ({ ...moved(open, apply(open.design, edit), edit), aside: open.aside + 1 }));
}

/** Begins a stroke; one that is open is ended. One that is only shown lasts until `keepStroke`, or is dropped. */
export function beginStroke(label: string, isShown = false): void {
  endStroke();
  updateOpen((open) => ({ ...open, stroke: { label, from: open.design, isShown } }));
}

/**
 * A part of a stroke: cells painted, nearly always on the layer drawn on. `afresh` starts again from the design before
 * the stroke, as a line or rectangle does while its end is dragged about; null then draws nothing.
 */
export function stroke(edit: Edit | null, afresh = false): void {
  updateOpen((open) => {
    if (!open.stroke) return open;
    if (!afresh) return edit ? moved(open, apply(open.design, edit), edit) : open;
    const before = drawnBy(open, open.stroke);
    const parts = [before, edit].filter((part) => part !== null);
    if (parts.length === 0) return open;
    const design = edit ? apply(open.stroke.from, edit) : open.stroke.from;
    return moved(open, design, { kind: 'together', edits: parts });
  });
}

/** Ends the stroke that is open, because something else is done: what was drawn is kept, what was only shown is not. */
export function endStroke(): void {
  if (studio.getState().open?.stroke?.isShown) dropStroke();
  else keepStroke();
}

/** Records the stroke that is open as one step; one that changed nothing leaves none. */
export function keepStroke(): void {
  const { open: before, patch } = studio.getState();
  if (!before?.stroke) return;
  const edit = drawnBy(before, before.stroke);
  const { from, label } = before.stroke;
  const history = edit ? record(before.history, from, label, edit) : before.history;
  const lifted = patch?.lifted;
  const step = history.done.at(-1);
  if (edit && step && lifted?.stroke === before.stroke)
    patches.set(step, { before: lifted.home, after: patch?.mask ?? null });
  updateOpen((open) => ({ ...open, history, stroke: null }));
}

/** Where the patch was before a step that moved it, and after: the outline goes with the cells when they travel. */
const patches = new WeakMap<Step, { readonly before: Mask | null; readonly after: Mask | null }>();

/** Takes back what the stroke has drawn so far. */
export function dropStroke(): void {
  if (!studio.getState().open?.stroke) return;
  updateOpen((open) => {
    if (!open.stroke) return open;
    const drawn = drawnBy(open, open.stroke);
    return { ...(drawn ? moved(open, open.stroke.from, drawn) : open), stroke: null };
  });
}

/** The layer drawn on from now on. What was in the air stays on its layer, and is no longer chosen. */
export function chooseLayer(layer: string): void {
  const { open, patch } = studio.getState();
  if (open?.stroke && patch?.lifted?.stroke === open.stroke) studio.setState({ patch: null });
  endStroke();
  updateOpen((open) => ({ ...open, layer: layerOf(open.design, layer).id }));
}

/** What is only shown is what undo takes away first, and nothing else then. */
export function undoStep(): Step | null {
  if (studio.getState().open?.stroke?.isShown) {
    dropStroke();
    return null;
  }
  return travel(undo, 'before');
}

export function redoStep(): Step | null {
  return travel(redo, 'after');
}

function travel(way: typeof undo, side: 'before' | 'after'): Step | null {
  endStroke();
  const { open } = studio.getState();
  if (!open) return null;
  const next = way(open.history, open.design);
  if (!next) return null;
  updateOpen(() => ({ ...moved(open, next.design, next.step.edit), history: next.history }));
  const gone = patches.get(next.step);
  if (gone) studio.setState({ patch: gone[side] && { mask: gone[side], lifted: null } });
  return next.step;
}

/** What the stroke has changed so far, on whichever layers, yarns that it brought included; null where nothing. */
function drawnBy({ design }: OpenDesign, { from }: Stroke): Edit | null {
  const paints: (Edit | null)[] = design.layers.map((layer, at) =>
    layer === from.layers[at] ? null : paintBetween(from.layers[at]!, layer),
  );
  const yarns: Edit | null =
    design.yarns === from.yarns ? null : { kind: 'set', field: 'yarns', value: design.yarns };
  const parts = [yarns, ...paints].filter((part) => part !== null);
  return parts.length > 1 ? { kind: 'together', edits: parts } : (parts[0] ?? null);
}

/** `open` with the next design, its chart reflattened where `edit` touched. */
function moved(open: OpenDesign, design: Design, edit: Edit): OpenDesign {
  const layer = design.layers.some(({ id }) => id === open.layer) ? open.layer : nearestLayer(open, design);
  const rows = rowsTouched(edit);
  if (rows === null) return { ...open, design, layer };
  if (design.columns !== open.chart.columns || design.rows !== open.chart.rows)
    return { ...open, design, layer, chart: flatten(design), touched: [] };
  const touched = rows === 'all' ? Array.from({ length: design.rows }, (_, row) => row) : rows;
  return { ...open, design, layer, chart: reflatten(open.chart, design, touched), touched };
}

/** The layer drawn on is gone: the one that lay below it is drawn on, or the lowest. */
function nearestLayer(open: OpenDesign, design: Design): string {
  const at = open.design.layers.findIndex(({ id }) => id === open.layer);
  return design.layers[Math.max(0, Math.min(at, design.layers.length) - 1)]!.id;
}
