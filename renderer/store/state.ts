/** The shape of what the studio holds while it runs. */
import type { Settings, Stamp } from '../../shared/bridge.ts';
import type { Chart } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import type { History, Step } from '../../shared/design/history.ts';
import type { Materials } from '../../shared/materials/materials.ts';
import type { Drawing } from './drawing.ts';
import type { Views } from './views.ts';

export type Screen = 'shelf' | 'draw' | 'publish';
export type Tool = 'knot' | 'line' | 'rectangle' | 'fill' | 'unpick' | 'match';

/** Where the open design lives. A design that was never saved has no place yet. */
export interface Home {
  readonly design: string;
  readonly fileName: string;
  readonly stamp: Stamp;
}

/** A stroke that is being drawn: many parts, one step at the end. */
export interface Stroke {
  /** For the history and the menu. */
  readonly label: string;
  /** The design as it was when the stroke began. */
  readonly from: Design;
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
  /** Rows whose cells changed at the last change of `chart`, from 0, in order. */
  readonly touched: readonly number[];
  /** Null between strokes. */
  readonly stroke: Stroke | null;
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
  readonly drawing: Drawing;
  readonly views: Views;
  /** The cell under the pointer, or under the cell cursor while drawing by keys. */
  readonly under: CellPlace | null;
  readonly facts: Facts | null;
}
