/** The motif that the Motif tool sets down, in the yarns of the design that is open. */
import type { Block } from '../../../shared/chart/patch/block.ts';
import { blockOfMotif } from '../../../shared/chart/patch/block-of-motif.ts';
import type { Motif } from '../../../shared/chart/patch/motif.ts';
import {
  flippedLeftRight,
  flippedTopBottom,
  turnedHalf,
  turnedLeft,
  turnedRight,
} from '../../../shared/chart/patch/turn-block.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import type { MotifTurn } from '../../store/drawing.ts';
import { studio } from '../../store/studio.ts';
import type { Means } from './deed.ts';

const turns: Record<MotifTurn, (block: Block) => Block> = {
  'as-kept': (block) => block,
  right: turnedRight,
  half: turnedHalf,
  left: turnedLeft,
};

/** Null where no motif is chosen, or the design has no room for its yarns. */
export function motifBlock({ open, drawing }: Means): Block | null {
  const motif = chosenMotif();
  if (!motif) return null;
  const fitted = blockOfMotif(motif, open.design);
  if (!fitted.ok) return null;
  const turned = turns[drawing.motifTurn](fitted.value.block);
  const flipped = drawing.motifFlipped ? flippedLeftRight(turned) : turned;
  return drawing.motifUpsideDown ? flippedTopBottom(flipped) : flipped;
}

/** Adds the yarns that the chosen motif brings along, as a step of its own. */
export function addMotifYarns(): void {
  const { open } = studio.getState();
  const motif = chosenMotif();
  if (!open || !motif) return;
  const fitted = blockOfMotif(motif, open.design);
  if (!fitted.ok) tellProblem(fitted.problem.sentence);
  else if (fitted.value.newYarns.length > 0) addYarns(open.design.yarns, fitted.value.newYarns);
}

export function addYarns(yarns: readonly Yarn[], more: readonly Yarn[]): void {
  change(more.length === 1 ? 'Add a yarn' : 'Add yarns', {
    kind: 'set',
    field: 'yarns',
    value: [...yarns, ...more],
  });
}

function chosenMotif(): Motif | null {
  const { motifs, drawing } = studio.getState();
  return motifs?.find(({ id }) => id === drawing.motif) ?? null;
}
