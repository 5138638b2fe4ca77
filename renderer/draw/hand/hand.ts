/**
 * The tools in the maker's hand: what happens when a tool is pressed on a cell, moved and let go. Pointer and keyboard
 * use the same hand. What each tool draws stands in its deed; each stroke is one step of the history.
 */

import { copyStrips } from '../../../shared/chart/symmetry/copy-strips.ts';
import { type Cell, isInside } from '../../../shared/chart/tools/cell.ts';
import { lineCells } from '../../../shared/chart/tools/line-cells.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { beginStroke, dropStroke, endStroke, stroke } from '../../store/changing.ts';
import type { Tool } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import type { Hand, Held } from '../../surface/gestures.ts';
import { type Deed, type Means, nothingHeld } from './deed.ts';
import { drawStrips } from './draw-strips.ts';
import { drawingDeeds } from './drawing-deeds.ts';
import { patchDeed } from './patch-deed.ts';
import { borderDeed, motifDeed, textDeed } from './stamp-deeds.ts';
import { whyNotDraw } from './why-not-draw.ts';

const deeds: Record<Tool, Deed> = {
  ...drawingDeeds,
  patch: patchDeed,
  text: textDeed,
  motif: motifDeed,
  border: borderDeed,
};

interface Pressed {
  readonly deed: Deed;
  readonly from: Cell;
  at: Cell;
  held: Held;
  /** Drawn afresh from where it was pressed, not all along its way. */
  readonly isShape: boolean;
}

/** Null while the tool is not pressed. */
let pressed: Pressed | null = null;

export function isPressed(): boolean {
  return pressed !== null;
}

/** True where the keyboard presses the tool twice: once where it begins and once where it ends. */
export function hasTwoEnds(): boolean {
  const { tool, drawing } = studio.getState();
  return deeds[tool].hasTwoEnds?.(drawing) ?? false;
}

export const hand: Hand = {
  press(cell, held = nothingHeld) {
    const { tool } = studio.getState();
    const means = meansNow();
    if (!means || pressed) return;
    const deed = deeds[tool];
    const fault = deed.draws ? whyNotDraw(means.open) : null;
    if (fault) return tellProblem(fault);
    const isShape = deed.between !== undefined && (deed.along === undefined || held.shift);
    pressed = { deed, from: cell, at: cell, held, isShape };
    if (deed.own) deed.own.begin(means, cell, held);
    else if (!deed.at) {
      beginStroke(deed.label);
      draw([cell]);
    }
  },

  move(cells, held = nothingHeld) {
    if (!pressed) return;
    const news: Cell[] = [];
    for (const cell of cells) {
      if (cell.row === pressed.at.row && cell.column === pressed.at.column) continue;
      news.push(...lineCells(pressed.at, cell).slice(1));
      pressed.at = cell;
    }
    const isOtherwise = pressed.held.shift !== held.shift;
    pressed.held = held;
    if (news.length > 0 || (isOtherwise && pressed.isShape)) draw(news);
  },

  release() {
    const means = meansNow();
    if (!pressed || !means) return;
    const { deed, at } = pressed;
    pressed = null;
    if (deed.own) deed.own.end(means, at);
    else if (deed.at) deed.at(means, at);
    else endStroke();
  },

  drop() {
    const deed = pressed?.deed;
    pressed = null;
    if (deed?.own) deed.own.drop();
    else if (deed) dropStroke();
  },

  hover(cell) {
    const { under, open, tool, drawing } = studio.getState();
    const next = cell && open && isInside(cell, open.design) ? cell : null;
    if (next?.row === under?.row && next?.column === under?.column) return;
    const { ghost } = deeds[tool];
    const shown = next && open && !pressed && ghost ? ghost({ open, drawing }, next) : null;
    // A single cell is what the outline shows already.
    const isMore = shown !== null && open !== null && (shown.length > 4 || shown[2]! > 1 || isCopying());
    studio.setState({
      under: next,
      ghost: isMore && open ? copyStrips(shown, drawing.symmetry, open.design) : null,
    });
  },
};

function isCopying(): boolean {
  const { point, repeat } = studio.getState().drawing.symmetry;
  return point !== 'none' || repeat !== 'none';
}

function meansNow(): Means | null {
  const { open, drawing } = studio.getState();
  return open && { open, drawing };
}

function draw(cells: readonly Cell[]): void {
  if (!pressed) return;
  // Something else was done in the midst of it, such as saving, and ended the stroke: it goes on as another.
  if (!pressed.deed.own && !pressed.deed.at && !studio.getState().open?.stroke)
    beginStroke(pressed.deed.label);
  const means = meansNow();
  if (!means) return;
  const { deed, from, at, held, isShape } = pressed;
  if (deed.own) deed.own.move(means, at, held);
  else if (isShape) stroke(drawStrips(means, deed.between!(means, from, at, held)), true);
  else if (deed.along) {
    const edit = drawStrips(means, deed.along(means, cells));
    if (edit) stroke(edit);
  }
}
