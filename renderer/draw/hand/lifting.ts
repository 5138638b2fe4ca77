/**
 * Cells in the air: lifted from the layer, pasted, or set down as text or motif, and still movable. They are drawn by
 * an open stroke, afresh at each move, so that what they pass over is left as it was; whatever is done next ends the
 * stroke and ties them down as one step of the history. `state.patch.lifted` says where they are.
 */
import type { Block } from '../../../shared/chart/patch/block.ts';
import { blockStrips, erasureStrips } from '../../../shared/chart/patch/block-strips.ts';
import { liftBlock } from '../../../shared/chart/patch/lift-block.ts';
import { type Mask, maskOf } from '../../../shared/chart/patch/mask.ts';
import { type ChartSize, isInside } from '../../../shared/chart/tools/cell.ts';
import { joinStrips, noStrips } from '../../../shared/chart/tools/strips.ts';
import { EMPTY } from '../../../shared/design/codes.ts';
import { layerOf } from '../../../shared/design/design.ts';
import { beginStroke, dropStroke, stroke } from '../../store/changing.ts';
import type { Lifted } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import { drawStrips } from './draw-strips.ts';
import { withYarns } from './with-yarns.ts';

/** What is in the air; null where all is tied down. */
export function liftedNow(): Lifted | null {
  const { open, patch } = studio.getState();
  const lifted = patch?.lifted ?? null;
  return lifted && open?.stroke === lifted.stroke ? lifted : null;
}

/** Takes up the chosen cells of the layer drawn on; a copy leaves them lying too. False where there are none. */
export function liftPatch(label: string, isCopy: boolean): boolean {
  const { open, patch } = studio.getState();
  if (!open || !patch?.mask.bounds) return false;
  const { bounds } = patch.mask;
  const block = liftBlock(layerOf(open.design, open.layer).rows, patch.mask);
  if (block.cells.every((code) => code === EMPTY)) return false;
  holdBlock(label, block, bounds.top, bounds.left, {
    left: isCopy ? noStrips : erasureStrips(patch.mask),
    shape: shapeOf(patch.mask),
    home: patch.mask,
  });
  return true;
}

/** What a block that is held may have besides its cells; see `Lifted`. */
type Held = Partial<Pick<Lifted, 'left' | 'shape' | 'yarns' | 'home'>>;

/** Holds a block over the layer drawn on with its top left cell at a place. */
export function holdBlock(
  label: string,
  block: Block,
  row: number,
  column: number,
  { left = noStrips, shape = knotsOf(block), yarns = [], home = null }: Held = {},
): void {
  beginStroke(label);
  const stroke = studio.getState().open?.stroke;
  if (stroke) putDown({ block, shape, row, column, left, yarns, home, stroke });
}

export function moveLifted(rowsBy: number, columnsBy: number): void {
  const lifted = liftedNow();
  if (lifted) putDown({ ...lifted, row: lifted.row + rowsBy, column: lifted.column + columnsBy });
}

/** Flips or turns what is in the air, about its middle. */
export function turnLifted(turn: (block: Block) => Block): void {
  const lifted = liftedNow();
  if (!lifted) return;
  const block = turn(lifted.block);
  const row = lifted.row + Math.floor((lifted.block.rows - block.rows) / 2);
  const column = lifted.column + Math.floor((lifted.block.columns - block.columns) / 2);
  putDown({ ...lifted, block, shape: turn(lifted.shape), row, column });
}

/** Takes back what was lifted, as if it had never been; what was chosen before is chosen again. */
export function dropLifted(): void {
  const lifted = liftedNow();
  if (!lifted) return;
  dropStroke();
  studio.setState({ patch: lifted.home && { mask: lifted.home, lifted: null } });
}

/** Puts what is in the air back to where it was at an earlier time. */
export function putBack(lifted: Lifted): void {
  if (liftedNow()?.stroke === lifted.stroke) putDown(lifted);
}

function putDown(lifted: Lifted): void {
  const { open, drawing } = studio.getState();
  if (!open) return;
  const { block, row, column, left, yarns } = lifted;
  const paint = drawStrips({ open, drawing }, joinStrips([left, blockStrips(block, row, column)]));
  stroke(withYarns(paint, yarns), true);
  studio.setState({ patch: { mask: maskAt(lifted, open.design), lifted } });
}

function knotsOf(block: Block): Block {
  return { ...block, cells: block.cells.map((code) => (code === EMPTY ? 0 : 1)) };
}

function maskAt({ shape, row, column }: Lifted, size: ChartSize): Mask {
  const chosen = new Uint8Array(size.columns * size.rows);
  for (let r = 0; r < shape.rows; r++) {
    for (let c = 0; c < shape.columns; c++) {
      if (shape.cells[r * shape.columns + c] !== 1) continue;
      const cell = { row: row + r, column: column + c };
      if (isInside(cell, size)) chosen[cell.row * size.columns + cell.column] = 1;
    }
  }
  return maskOf(chosen, size);
}

function shapeOf({ bounds, chosen, columns }: Mask): Block {
  const { top, left, bottom, right } = bounds!;
  const shape = { columns: right - left + 1, rows: bottom - top + 1 };
  const cells = new Uint8Array(shape.columns * shape.rows);
  for (let r = 0; r < shape.rows; r++) {
    const from = (top + r) * columns + left;
    cells.set(chosen.subarray(from, from + shape.columns), r * shape.columns);
  }
  return { ...shape, cells };
}
