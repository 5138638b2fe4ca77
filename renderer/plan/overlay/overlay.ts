/** What lies over the chart on the Plan screen: all that its drawing depends on. */
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import type { Pin } from '../../../shared/design/schema.ts';
import type { CellBlock } from '../../surface/chart-bitmap.ts';
import type { Placed } from '../../surface/placed.ts';
import type { CellSize } from '../../surface/view.ts';
import type { ShownPin } from '../pins/shown-pins.ts';
import type { Planned } from '../plans/planned.ts';
import type { PlanView } from '../plans/plans.ts';
import type { RowMeasure } from '../plans/row-facts.ts';

export type Pen = CanvasRenderingContext2D;

export interface Overlay {
  readonly planned: Planned;
  readonly view: PlanView;
  /** The chosen strand; null where none is. */
  readonly strand: number | null;
  /** Knots that are tied; null: all of them, and nothing is faint. */
  readonly tied: number | null;
  readonly pins: readonly ShownPin[];
  /** A cell of the run from which a carry is being pinned; null where none is. */
  readonly carryFrom: Cell | null;
  /** A pin that is only pointed at; null where none is. */
  readonly pinAhead: Pin | null;
  readonly overMm: number;
  readonly rowsBy: RowMeasure;
  readonly inks: OverlayInks;
  /** By code, as #rrggbb. */
  readonly colors: Readonly<Record<number, string>>;
}

export interface OverlayInks {
  readonly ink: string;
  readonly paper: string;
  readonly accent: string;
}

/** An overlay where it lies now. */
export interface PlacedOverlay extends Overlay {
  readonly placed: Placed;
  readonly size: CellSize;
  /** The cells in sight. */
  readonly inSight: CellBlock;
  /** The right edge of what is not covered by row numbers, in device pixels. */
  readonly rightPx: number;
}

/** Middle of a cell, in device pixels. */
export function middleOf({ placed: { view }, size }: PlacedOverlay, { row, column }: Cell): [number, number] {
  const x = Math.round(view.x) + (column + 0.5) * size.pitchMm * view.scale;
  const y = Math.round(view.y) + (row + 0.5) * size.rowHeightMm * view.scale;
  return [x, y];
}

/** Width of a cell in CSS pixels: what can be drawn in it. */
export function cellPx({ placed: { view, ratio }, size }: PlacedOverlay): number {
  return (Math.min(size.pitchMm, size.rowHeightMm) * view.scale) / ratio;
}
