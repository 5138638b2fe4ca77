/** The motif that the Motif tool sets down, in the yarns of the design that is open. */
import type { Block } from '../../../shared/chart/patch/block.ts';
import { blockOfMotif, type FittedMotif } from '../../../shared/chart/patch/block-of-motif.ts';
import type { Motif } from '../../../shared/chart/patch/motif.ts';
import {
  flippedLeftRight,
  flippedTopBottom,
  turnedHalf,
  turnedLeft,
  turnedRight,
} from '../../../shared/chart/patch/turn-block.ts';
import type { MotifTurn } from '../../store/drawing.ts';
import { studio } from '../../store/studio.ts';
import type { Means } from './deed.ts';

const turns: Record<MotifTurn, (block: Block) => Block> = {
  'as-kept': (block) => block,
  right: turnedRight,
  half: turnedHalf,
  left: turnedLeft,
};

/** Its yarns that the design lacks come with it. Null where none is chosen, or there is no room for its yarns. */
export function motifBlock({ open, drawing }: Means): FittedMotif | null {
  const motif = chosenMotif();
  if (!motif) return null;
  const fitted = blockOfMotif(motif, open.design);
  if (!fitted.ok) return null;
  const turned = turns[drawing.motifTurn](fitted.value.block);
  const flipped = drawing.motifFlipped ? flippedLeftRight(turned) : turned;
  const block = drawing.motifUpsideDown ? flippedTopBottom(flipped) : flipped;
  return { ...fitted.value, block };
}

function chosenMotif(): Motif | null {
  const { motifs, drawing } = studio.getState();
  return motifs?.find(({ id }) => id === drawing.motif) ?? null;
}
