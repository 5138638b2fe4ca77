/**
 * How the open design changes: by `change`, one step of history, and by strokes (`beginStroke`, `stroke`, `endStroke`:
 * many parts while the pointer moves, one step at the end). Whatever else is done while a stroke is open ends it first,
 * so that nothing drawn is lost. The chart is reflattened only in the rows touched, and `touched` tells which.
 */
import { flatten, reflatten } from '../../shared/chart/chart.ts';
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

/** Begins a stroke on the layer drawn on; one that is open is ended. */
export function beginStroke(label: string): void {
  endStroke();
  updateOpen((open) => ({ ...open, stroke: { label, from: open.design } }));
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

/** Records the stroke that is open as one step; one that changed nothing leaves none. */
export function endStroke(): void {
  if (!studio.getState().open?.stroke) return;
  updateOpen((open) => {
    if (!open.stroke) return open;
    const edit = drawnBy(open, open.stroke);
    const { from, label } = open.stroke;
    return { ...open, history: edit ? record(open.history, from, label, edit) : open.history, stroke: null };
  });
}

/** Takes back what the stroke has drawn so far. */
export function dropStroke(): void {
  if (!studio.getState().open?.stroke) return;
  updateOpen((open) => {
    if (!open.stroke) return open;
    const drawn = drawnBy(open, open.stroke);
    return { ...(drawn ? moved(open, open.stroke.from, drawn) : open), stroke: null };
  });
}

/** The layer drawn on from now on. */
export function chooseLayer(layer: string): void {
  endStroke();
  updateOpen((open) => ({ ...open, layer: layerOf(open.design, layer).id }));
}

export function undoStep(): Step | null {
  return travel(undo);
}

export function redoStep(): Step | null {
  return travel(redo);
}

function travel(way: typeof undo): Step | null {
  endStroke();
  const { open } = studio.getState();
  if (!open) return null;
  const next = way(open.history, open.design);
  if (!next) return null;
  updateOpen(() => ({ ...moved(open, next.design, next.step.edit), history: next.history }));
  return next.step;
}

/** What the stroke has changed so far, on whichever layers; null where it changed nothing. */
function drawnBy({ design }: OpenDesign, { from }: Stroke): Edit | null {
  const paints = design.layers
    .map((layer, at) => (layer === from.layers[at] ? null : paintBetween(from.layers[at]!, layer)))
    .filter((paint) => paint !== null);
  return paints.length > 1 ? { kind: 'together', edits: paints } : (paints[0] ?? null);
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
