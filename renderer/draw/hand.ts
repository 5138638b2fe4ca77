/**
 * The tools in the maker's hand: what each does when it is pressed on a cell, moved and let go. Pointer and keyboard
 * use the same hand. Each stroke is one step of the history.
 */
import type { Cell } from '../../shared/chart/tools/cell.ts';
import { isInside } from '../../shared/chart/tools/cell.ts';
import { lineCells } from '../../shared/chart/tools/line-cells.ts';
import { paintCells } from '../../shared/chart/tools/paint-cells.ts';
import { paintFill } from '../../shared/chart/tools/paint-fill.ts';
import { paintRectangle } from '../../shared/chart/tools/paint-rectangle.ts';
import { EMPTY } from '../../shared/design/codes.ts';
import type { Paint } from '../../shared/design/edits.ts';
import { beginStroke, change, dropStroke, endStroke, stroke } from '../store/changing.ts';
import type { OpenDesign, Tool } from '../store/state.ts';
import { chooseCode, studio } from '../store/studio.ts';
import type { Hand } from '../surface/gestures.ts';

interface ToolDeed {
  /** For the history and the menu. */
  readonly label: string;
  /** A freehand tool draws all along its way. */
  readonly along?: (open: OpenDesign, cells: readonly Cell[]) => Paint | null;
  /** A shape is drawn afresh from where it was pressed to where it is. */
  readonly between?: (open: OpenDesign, from: Cell, to: Cell) => Paint | null;
  /** Done once, in the cell where the tool is let go: two fingers may still take it back. */
  readonly at?: (open: OpenDesign, cell: Cell) => void;
}

const deeds: Record<Tool, ToolDeed> = {
  knot: {
    label: 'Knot',
    along: ({ layer, code, design }, cells) => paintCells(layer, code, cells, design),
  },
  unpick: {
    label: 'Unpick',
    along: ({ layer, design }, cells) => paintCells(layer, EMPTY, cells, design),
  },
  line: {
    label: 'Line',
    between: ({ layer, code, design }, from, to) => paintCells(layer, code, lineCells(from, to), design),
  },
  rectangle: {
    label: 'Rectangle',
    between: ({ layer, code, design }, from, to) => paintRectangle(layer, code, from, to, design),
  },
  fill: {
    label: 'Fill',
    at: ({ layer, code, chart }, cell) => {
      const edit = paintFill(layer, code, cell, chart);
      if (edit) change('Fill', edit);
    },
  },
  match: {
    label: 'Match',
    at: ({ chart }, cell) => {
      if (isInside(cell, chart)) chooseCode(chart.cells[cell.row * chart.columns + cell.column]!);
    },
  },
};

/** Where the tool was pressed, and where it has come to; null while it is not pressed. */
let pressed: { readonly tool: Tool; readonly from: Cell; at: Cell } | null = null;

export function isPressed(): boolean {
  return pressed !== null;
}

/** True where a tool draws from one cell to another: by keys it is pressed twice. */
export function hasTwoEnds(tool: Tool): boolean {
  return deeds[tool].between !== undefined;
}

export const hand: Hand = {
  press(cell) {
    const { open, tool } = studio.getState();
    if (!open || pressed) return;
    pressed = { tool, from: cell, at: cell };
    if (deeds[tool].at) return;
    beginStroke(deeds[pressed.tool].label);
    draw([cell]);
  },

  move(cells) {
    if (!pressed) return;
    const news: Cell[] = [];
    for (const cell of cells) {
      if (cell.row === pressed.at.row && cell.column === pressed.at.column) continue;
      news.push(...lineCells(pressed.at, cell).slice(1));
      pressed.at = cell;
    }
    if (news.length > 0) draw(news);
  },

  release() {
    const { open } = studio.getState();
    if (!pressed || !open) return;
    const { at } = deeds[pressed.tool];
    const last = pressed.at;
    pressed = null;
    if (at) at(open, last);
    else endStroke();
  },

  drop() {
    pressed = null;
    dropStroke();
  },

  hover(cell) {
    const { under, open } = studio.getState();
    const next = cell && open && isInside(cell, open.design) ? cell : null;
    if (next?.row !== under?.row || next?.column !== under?.column) studio.setState({ under: next });
  },
};

function draw(cells: readonly Cell[]): void {
  const { open } = studio.getState();
  if (!open || !pressed) return;
  const { along, between } = deeds[pressed.tool];
  const edit = along ? along(open, cells) : between?.(open, pressed.from, pressed.at);
  if (edit) stroke(edit, along === undefined);
}
