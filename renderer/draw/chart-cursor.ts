/** The cell cursor, for drawing by keys: where it begins, where a key takes it, and what is said of a cell. */
import { goesRight } from '../../shared/chart/chart.ts';
import type { Cell } from '../../shared/chart/tools/cell.ts';
import { layerOf } from '../../shared/design/design.ts';
import type { OpenDesign } from '../store/state.ts';
import { nameOfCode } from './code-names.ts';

/** What a key event says of the keys pressed. */
interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
}

/** Row 1 begins in the start corner, and so does the cell cursor. */
export function startOf({ design }: OpenDesign): Cell {
  return { row: 0, column: goesRight(design.startCorner, 0) ? 0 : design.columns - 1 };
}

/** Rows down and columns to the right that an arrow key means, ten with a key held; null for any other key. */
export function stepOf({ key, ctrlKey, metaKey, shiftKey }: Pressed): [rows: number, columns: number] | null {
  const by = ctrlKey || metaKey || shiftKey ? 10 : 1;
  const ways: Record<string, [number, number]> = {
    ArrowLeft: [0, -by],
    ArrowRight: [0, by],
    ArrowUp: [-by, 0],
    ArrowDown: [by, 0],
  };
  return ways[key] ?? null;
}

/** Where a key takes the cell cursor; null where it is no key of the cursor. */
export function movedBy(pressed: Pressed, { row, column }: Cell, { design }: OpenDesign): Cell | null {
  const jumps: Record<string, [number, number]> = {
    PageUp: [-10, 0],
    PageDown: [10, 0],
    Home: [0, -design.columns],
    End: [0, design.columns],
  };
  const way = stepOf(pressed) ?? jumps[pressed.key];
  if (!way) return null;
  const within = (value: number, most: number) => Math.min(most - 1, Math.max(0, value));
  return { row: within(row + way[0], design.rows), column: within(column + way[1], design.columns) };
}

export function spokenCell({ design, chart, layer }: OpenDesign, { row, column }: Cell): string {
  const name = nameOfCode(design, chart.cells[row * chart.columns + column]!);
  return `Row ${row + 1}, cord ${column + 1}, ${name}, layer ${layerOf(design, layer).name}`;
}
