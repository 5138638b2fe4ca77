/**
 * What the studio holds while it runs: one open design with its history, the flat chart that follows it, and what
 * the person has chosen. A store without React; `use-studio.ts` is the thin adapter.
 *
 * The design changes only through `change` (one step of history) and strokes (`beginStroke`, `stroke`, `endStroke`:
 * many parts while the pointer moves, one step at the end). The chart is reflattened only in the rows touched, and
 * `touched` tells listeners which those were.
 */
import { createStore } from 'zustand/vanilla';
import type { Settings, Stamp } from '../../shared/bridge.ts';
import { settingsSchema } from '../../shared/bridge.ts';
import { type Chart, flatten, reflatten } from '../../shared/chart/chart.ts';
import { codeOf } from '../../shared/design/codes.ts';
import { type Design, layerOf } from '../../shared/design/design.ts';
import { apply, type Edit, paintBetween, rowsTouched } from '../../shared/design/edits.ts';
import { type History, noHistory, record, redo, type Step, undo } from '../../shared/design/history.ts';
import type { Materials } from '../../shared/materials/materials.ts';

export type Screen = 'shelf' | 'draw' | 'publish';
export type Tool = 'knot' | 'line' | 'rectangle' | 'fill' | 'unpick' | 'match';

/** Where the open design lives. A design that was never saved has no place yet. */
export interface Home {
  readonly design: string;
  readonly fileName: string;
  readonly stamp: Stamp;
}

export interface OpenDesign {
  /** Goes up with each design that is opened, so that nothing of one is taken for another. */
  readonly opening: number;
  readonly design: Design;
  readonly chart: Chart;
  readonly history: History;
  readonly home: Home | null;
  /** The last step that is on disk; 'nothing' where the design was never saved, null at its first state. */
  readonly savedAt: Step | null | 'nothing';
  /** The layer drawn on. */
  readonly layer: string;
  /** The code drawn with: a yarn or BARE. */
  readonly code: number;
  /** Rows whose cells changed at the last change of `chart`, from 0. */
  readonly touched: { readonly first: number; readonly last: number };
  /** The design as it was when the stroke began; null between strokes. */
  readonly strokeFrom: Design | null;
}

/** Where the pointer or the cell cursor is: row and column from 0. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

/** Figures of the last plan. */
export interface Facts {
  /** Null where the design can't be planned; `problem` then says why and what to do. */
  readonly materials: Materials | null;
  readonly problem: string;
  /** False while the design has changed since. */
  readonly settled: boolean;
}

export interface StudioState {
  readonly screen: Screen;
  readonly settings: Settings;
  readonly open: OpenDesign | null;
  readonly tool: Tool;
  readonly symbols: boolean;
  /** The cell under the pointer, or under the cell cursor while drawing by keys. */
  readonly under: CellPlace | null;
  readonly facts: Facts | null;
}

export const studio = createStore<StudioState>(() => ({
  screen: 'shelf',
  settings: settingsSchema.parse({}),
  open: null,
  tool: 'knot',
  symbols: false,
  under: null,
  facts: null,
}));

let openings = 0;

/** Puts a design on the Draw screen. `home` null: it was never saved. */
export function openDesign(design: Design, home: Home | null): void {
  const chart = flatten(design);
  const top = design.layers.findLast((layer) => layer.visible && !layer.locked) ?? design.layers.at(-1)!;
  const firstYarn = design.yarns.find((yarn) => yarn.id !== design.ground) ?? design.yarns[0]!;
  studio.setState({
    screen: 'draw',
    under: null,
    facts: null,
    open: {
      opening: ++openings,
      design,
      chart,
      history: noHistory,
      home,
      savedAt: home ? null : 'nothing',
      layer: top.id,
      code: codeOf(firstYarn.id),
      touched: { first: 0, last: design.rows - 1 },
      strokeFrom: null,
    },
  });
}

export function closeDesign(): void {
  studio.setState({ open: null, facts: null, under: null, screen: 'shelf' });
}

/** True where the open design holds work that is not on disk. */
export function isUnsaved(open: OpenDesign | null): boolean {
  return open !== null && (open.history.done.at(-1) ?? null) !== open.savedAt;
}

/** One step: applied, recorded, undoable. */
export function change(label: string, edit: Edit): void {
  update((open) => {
    const design = apply(open.design, edit);
    return { ...moved(open, design, edit), history: record(open.history, open.design, label, edit) };
  });
}

export function beginStroke(): void {
  update((open) => ({ ...open, strokeFrom: open.design }));
}

/**
 * A part of a stroke. `afresh` starts again from the design before the stroke, as a line or rectangle does while
 * its end is dragged about.
 */
export function stroke(edit: Edit, afresh = false): void {
  update((open) => {
    if (!open.strokeFrom) return open;
    const design = apply(afresh ? open.strokeFrom : open.design, edit);
    if (!afresh) return moved(open, design, edit);
    const before = paintBetween(layerOf(open.strokeFrom, open.layer), layerOf(open.design, open.layer));
    return moved(open, design, { kind: 'together', edits: before ? [before, edit] : [edit] });
  });
}

/** Records the stroke as one step; a stroke that changed nothing leaves none. */
export function endStroke(label: string): void {
  update((open) => {
    if (!open.strokeFrom) return open;
    const edit = paintBetween(layerOf(open.strokeFrom, open.layer), layerOf(open.design, open.layer));
    const history = edit ? record(open.history, open.strokeFrom, label, edit) : open.history;
    return { ...open, history, strokeFrom: null };
  });
}

/** Takes back what the stroke has drawn so far. */
export function dropStroke(): void {
  update((open) => {
    if (!open.strokeFrom) return open;
    const drawn = paintBetween(layerOf(open.strokeFrom, open.layer), layerOf(open.design, open.layer));
    const back = drawn ? moved(open, open.strokeFrom, drawn) : open;
    return { ...back, strokeFrom: null };
  });
}

export function undoStep(): Step | null {
  return travel(undo);
}

export function redoStep(): Step | null {
  return travel(redo);
}

/** The design is on disk as it was at `step`, the last step when its text was made. */
export function markSaved(home: Home, step: Step | null): void {
  update((open) => ({ ...open, home, savedAt: step }));
}

export function chooseCode(code: number): void {
  update((open) => ({ ...open, code }));
}

function travel(way: typeof undo): Step | null {
  const open = studio.getState().open;
  if (!open || open.strokeFrom) return null;
  const next = way(open.history, open.design);
  if (!next) return null;
  studio.setState({ open: { ...moved(open, next.design, next.step.edit), history: next.history } });
  return next.step;
}

function update(next: (open: OpenDesign) => OpenDesign): void {
  studio.setState((state) => (state.open ? { open: next(state.open) } : state));
}

/** `open` with the next design, its chart reflattened where `edit` touched. */
function moved(open: OpenDesign, design: Design, edit: Edit): OpenDesign {
  const rows = rowsTouched(edit);
  if (rows === null) return { ...open, design };
  const touched = rows === 'all' ? { first: 0, last: design.rows - 1 } : rows;
  return { ...open, design, chart: reflatten(open.chart, design, touched.first, touched.last), touched };
}
