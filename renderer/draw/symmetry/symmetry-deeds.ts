/** What is done with the symmetry: chosen, switched on and off, its centre set. None of it is part of the design. */

import { pointKinds } from '../../../shared/chart/symmetry/kinds.ts';
import { centreOf, soundSymmetry } from '../../../shared/chart/symmetry/sound-symmetry.ts';
import type { PointKind, RepeatKind, Symmetry } from '../../../shared/chart/symmetry/symmetry.ts';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import type { CommandId } from '../../../shared/commands.ts';
import { tell } from '../../shell/notices.tsx';
import { changeDrawing, studio } from '../../store/studio.ts';

/** Changes the symmetry to the nearest that holds on this chart. */
export function changeSymmetry(change: Partial<Symmetry>): void {
  const { open, drawing } = studio.getState();
  if (!open) return;
  changeDrawing({ symmetry: soundSymmetry({ ...drawing.symmetry, ...change }, open.design) });
}

/** A repeat that was never set begins as a quarter of the chart. */
export function chooseRepeat(repeat: RepeatKind): void {
  const { open, drawing } = studio.getState();
  if (!open) return;
  const { periodColumns, periodRows } = drawing.symmetry;
  const isSet = periodColumns > 1 || periodRows > 1;
  const quarter = (cells: number) => Math.max(1, Math.round(cells / 4));
  const periods = isSet
    ? {}
    : { periodColumns: quarter(open.design.columns), periodRows: quarter(open.design.rows) };
  changeSymmetry({ repeat, ...periods });
}

/** The kind, or none where it is chosen already. */
function toggle(point: PointKind): () => void {
  return () => {
    const chosen = studio.getState().drawing.symmetry.point === point ? 'none' : point;
    changeSymmetry({ point: chosen });
    tell(`${pointKinds.find(({ kind }) => kind === chosen)!.label}.`);
  };
}

/** Puts the centre into the middle of a cell. */
function centreOn({ row, column }: Cell): void {
  changeSymmetry({ centre: { acrossHalves: 2 * column + 1, downHalves: 2 * row + 1 } });
}

export const symmetryCommands = {
  'symmetry-off': () => {
    changeSymmetry({ point: 'none', repeat: 'none' });
    tell('No symmetry.');
  },
  'mirror-left-right': toggle('mirror-left-right'),
  'mirror-top-bottom': toggle('mirror-top-bottom'),
  'mirror-both': toggle('mirror-both'),
  'mirror-diagonal': toggle('mirror-diagonal'),
  'mirror-antidiagonal': toggle('mirror-antidiagonal'),
  'mirror-diagonals': toggle('mirror-diagonals'),
  'half-turn': toggle('half-turn'),
  'quarter-turn': toggle('quarter-turn'),
  'quarter-turn-mirrored': toggle('quarter-turn-mirrored'),
  translation: () => chooseRepeat('translation'),
  'half-drop': () => chooseRepeat('half-drop'),
  'repeat-off': () => chooseRepeat('none'),
  'centre-here': () => {
    const { under } = studio.getState();
    if (under) centreOn(under);
    else tell('Move to the cell that shall be the centre first.');
  },
  'centre-middle': () => {
    const { open } = studio.getState();
    if (open) changeSymmetry({ centre: centreOf(open.design) });
  },
} satisfies Partial<Record<CommandId, () => void>>;
