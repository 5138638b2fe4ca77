/**
 * Tools that set down something ready-made: Text and Motif, centred where they are pressed, and movable until something
 * else is done; and Border, shown on the chart while its options are chosen and drawn when the chart is pressed.
 */
import type { Block } from '../../../shared/chart/patch/block.ts';
import type { FittedMotif } from '../../../shared/chart/patch/block-of-motif.ts';
import { blockStrips } from '../../../shared/chart/patch/block-strips.ts';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import { noStrips } from '../../../shared/chart/tools/strips.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { endStroke } from '../../store/changing.ts';
import { drawBorder } from './border-preview.ts';
import type { Deed, Means } from './deed.ts';
import { dropLifted, holdBlock, moveLifted } from './lifting.ts';
import { motifBlock } from './motif-block.ts';
import { textBlock } from './text-block.ts';

export const textDeed: Deed = stampDeed('Text', textBlock, 'First write the text, in the bar below.');

export const motifDeed: Deed = stampDeed(
  'Motif',
  motifBlock,
  'Choose a motif in the bar below; a patch can be kept as one.',
);

export const borderDeed: Deed = { label: 'Border', draws: true, at: drawBorder };

function stampDeed(label: string, blockOf: (means: Means) => FittedMotif | null, missing: string): Deed {
  let last: Cell | null = null;
  return {
    label,
    draws: true,
    own: {
      begin(means, cell) {
        endStroke();
        const made = blockOf(means);
        if (!made) return tellProblem(missing);
        const { row, column } = centred(made.block, cell);
        holdBlock(label, made.block, row, column, { yarns: made.newYarns });
        last = cell;
      },
      move(_, cell) {
        if (last) moveLifted(cell.row - last.row, cell.column - last.column);
        last = cell;
      },
      end: () => {
        last = null;
      },
      drop: () => {
        last = null;
        dropLifted();
      },
    },
    ghost: (means, cell) => {
      const made = blockOf(means);
      if (!made) return noStrips;
      const { row, column } = centred(made.block, cell);
      return blockStrips(made.block, row, column);
    },
  };
}

function centred({ columns, rows }: Block, { row, column }: Cell): Cell {
  return { row: row - Math.floor((rows - 1) / 2), column: column - Math.floor((columns - 1) / 2) };
}
