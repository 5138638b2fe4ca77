/**
 * What was cut or copied, with its yarns, so that it can be put into another design: a motif without a name. Kept while
 * the studio runs.
 */
import type { Block } from '../../../shared/chart/patch/block.ts';
import { type Motif, motifOf } from '../../../shared/chart/patch/motif.ts';
import type { Design } from '../../../shared/design/design.ts';

interface Kept {
  readonly motif: Motif;
  /** Where it came from: pasted into the same design it comes in at the same place. */
  readonly opening: number;
  readonly row: number;
  readonly column: number;
}

let kept: Kept | null = null;

export function keepOnClipboard(block: Block, { yarns }: Design, place: Omit<Kept, 'motif'>): boolean {
  const motif = motifOf('clipboard', 'Clipboard', block, yarns);
  if (motif.ok) kept = { motif: motif.value, ...place };
  return motif.ok;
}

export function clipboard(): Kept | null {
  return kept;
}
