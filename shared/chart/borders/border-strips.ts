/**
 * A border of one motif along the edges of the chart. The motif is drawn as it stands on the top edge; on the other
 * edges it is turned, so that what is outside on one edge is outside on all. Each edge's frieze is centred on the edge.
 *
 * Corners are mitred: a cell belongs to the edge that it is nearer to. On the mitre itself the edges of a frieze with
 * mirrors across give way to the top and bottom, so that the border stays symmetric; without such mirrors each edge
 * keeps the mitre at its beginning, so that a border of a square chart looks the same at every quarter turn.
 */
import { EMPTY } from '../../design/codes.ts';
import type { Block } from '../patch/block.ts';
import { addStrips, drawnAs } from '../symmetry/sheet.ts';
import type { ChartSize } from '../tools/cell.ts';
import { noStrips, type Strips } from '../tools/strips.ts';
import { type Frieze, friezeAlong } from './frieze.ts';
import type { FriezeGroup } from './frieze-groups.ts';

export interface BorderEdges {
  readonly top: boolean;
  readonly right: boolean;
  readonly bottom: boolean;
  readonly left: boolean;
}

export interface Border {
  readonly group: FriezeGroup;
  /** What the frieze is laid from. Where it is EMPTY nothing is drawn. */
  readonly motif: Block;
  readonly edges: BorderEdges;
  /** Cells left free between the chart's edge and the border, 0 or more. */
  readonly insetCells: number;
  /** 'mitred' where two edges meet in a slanting seam; 'open' leaves the corners free for a motif of their own. */
  readonly corners: 'mitred' | 'open';
}

/** The cells of the border, all within the chart; none where the motif or what the inset leaves has no cell. */
export function borderStrips(border: Border, size: ChartSize): Strips {
  const { motif, insetCells, corners } = border;
  const columns = size.columns - 2 * insetCells;
  const rows = size.rows - 2 * insetCells;
  if (motif.columns < 1 || motif.rows < 1 || columns < 1 || rows < 1) return noStrips;
  const sides = sidesOf(border, columns, rows);
  const depth = sides[0]?.frieze.depth;
  if (!depth) return noStrips;
  const strips: number[] = [];
  const cells = new Uint16Array(columns);
  for (let row = 0; row < rows; row++) {
    cells.fill(0);
    const isBetween = row >= depth && row < rows - depth;
    for (let column = 0; column < columns; column++) {
      const code = codeAt(sides, row, column, corners);
      if (code !== EMPTY) cells[column] = drawnAs(code);
      // Between the top and the bottom, what lies between the left and the right has no border.
      if (isBetween && column === depth - 1) column = Math.max(column, columns - depth - 1);
    }
    addStrips(strips, cells, row + insetCells, insetCells);
  }
  return Int32Array.from(strips);
}

/** One edge with its frieze. Rows and columns are counted within the inset. */
interface Side {
  readonly isUpright: boolean;
  readonly frieze: Frieze;
  readonly along: (row: number, column: number) => number;
  readonly depth: (row: number, column: number) => number;
}

/** The chosen edges, those first that keep the mitre where mirrors stand across. */
function sidesOf({ group, motif, edges }: Border, columns: number, rows: number): Side[] {
  const level = friezeAlong(group, motif, columns);
  const upright = friezeAlong(group, motif, rows);
  const sides: Record<keyof BorderEdges, Side> = {
    top: { isUpright: false, frieze: level, along: (_, column) => column, depth: (row) => row },
    bottom: {
      isUpright: false,
      frieze: level,
      along: (_, column) => columns - 1 - column,
      depth: (row) => rows - 1 - row,
    },
    right: {
      isUpright: true,
      frieze: upright,
      along: (row) => row,
      depth: (_, column) => columns - 1 - column,
    },
    left: { isUpright: true, frieze: upright, along: (row) => rows - 1 - row, depth: (_, column) => column },
  };
  return (['top', 'bottom', 'right', 'left'] as const)
    .filter((edge) => edges[edge])
    .map((edge) => sides[edge]);
}

function codeAt(sides: readonly Side[], row: number, column: number, corners: Border['corners']): number {
  let owner: Side | null = null;
  let isLevel = false;
  let isUpright = false;
  for (const side of sides) {
    if (side.depth(row, column) >= side.frieze.depth) continue;
    if (side.isUpright) isUpright = true;
    else isLevel = true;
    if (!owner || isNearer(side, owner, row, column)) owner = side;
  }
  if (!owner || (corners === 'open' && isLevel && isUpright)) return EMPTY;
  return owner.frieze.codeAt(owner.along(row, column), owner.depth(row, column));
}

function isNearer(side: Side, owner: Side, row: number, column: number): boolean {
  const nearer = owner.depth(row, column) - side.depth(row, column);
  if (nearer !== 0 || side.frieze.mirrorsAcross) return nearer > 0;
  return side.along(row, column) < owner.along(row, column);
}
