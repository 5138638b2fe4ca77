/** The shape of what the studio holds while it runs. */
import type { Settings, Stamp } from '../../shared/bridge.ts';
import type { Chart } from '../../shared/chart/chart.ts';
import type { Block } from '../../shared/chart/patch/block.ts';
import type { Mask } from '../../shared/chart/patch/mask.ts';
import type { Motif } from '../../shared/chart/patch/motif.ts';
import type { Strips } from '../../shared/chart/tools/strips.ts';
import type { Design } from '../../shared/design/design.ts';
import type { History, Step } from '../../shared/design/history.ts';
import type { Yarn } from '../../shared/design/schema.ts';
import type { Materials } from '../../shared/materials/materials.ts';
import type { Drawing } from './drawing.ts';
import type { Views } from './views.ts';

export type Screen = 'shelf' | 'draw' | 'plan' | 'publish';
export type Tool =
  | 'knot'
  | 'line'
  | 'rectangle'
  | 'ellipse'
  | 'fill'
  | 'text'
  | 'unpick'
  | 'match'
  | 'replace'
  | 'patch'
  | 'motif'
  | 'border';

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
  /** Only shown, until the person says that it shall be kept: whatever else is done drops it. */
  readonly isShown: boolean;
}

export interface OpenDesign {
  /** Goes up with each design that is opened, so that nothing of one is taken for another. */
  readonly opening: number;
  readonly design: Design;
  readonly chart: Chart;
  readonly history: History;
  readonly home: Home | null;
  /** What its file is to be called; null: as the design's title. */
  readonly fileStem: string | null;
  /** The last step that is on disk; 'nothing' where the design was never saved, null at its first state. */
  readonly savedAt: Step | null | 'nothing';
  /** Goes up with each change that is no step of the history, as the tick of a bundle; and what it was on disk. */
  readonly aside: number;
  readonly savedAside: number;
  /** The layer drawn on. */
  readonly layer: string;
  /** The code drawn with: a yarn or BARE. */
  readonly code: number;
  /** Rows whose cells changed at the last change of `chart`, from 0, in order. */
  readonly touched: readonly number[];
  /** Null between strokes. */
  readonly stroke: Stroke | null;
}

/** The cells that were chosen with Patch. */
export interface ChosenPatch {
  readonly mask: Mask;
  /** What was lifted from the layer or pasted, and can still be moved; null where nothing was. */
  readonly lifted: Lifted | null;
}

/** Cells that a stroke holds above the layer: they are tied down when the stroke ends, by whatever is done next. */
export interface Lifted {
  readonly block: Block;
  /** Which cells of the block belong to the patch, empty ones too: 1, else 0. */
  readonly shape: Block;
  /** Where the block's top left cell lies; may lie outside the chart. */
  readonly row: number;
  readonly column: number;
  /** Yarns that the block brings along, and the design has only while it holds the block. */
  readonly yarns: readonly Yarn[];
  /** The patch as it was before; null where none was chosen. */
  readonly home: Mask | null;
  /** What lifting left empty. */
  readonly left: Strips;
  /** The stroke that holds it: where another one or none is open, the block is tied down. */
  readonly stroke: Stroke;
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
  /** Null where no cells are chosen. */
  readonly patch: ChosenPatch | null;
  /** The motifs kept for every design; null until they were asked for. */
  readonly motifs: readonly Motif[] | null;
  /** What the tool would draw where the pointer is; null where that is one cell or nothing. */
  readonly ghost: Strips | null;
  /** A byte a cell, 1 where a cell causes what `views.marks` asks for; null where nothing is marked. */
  readonly marked: Uint8Array | null;
  /** What is being changed and already shown, before it becomes a step of the history. */
  readonly draft: Partial<Pick<Design, 'fringe' | 'reference'>>;
  readonly facts: Facts | null;
}
