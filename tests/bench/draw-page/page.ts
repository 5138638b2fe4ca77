/**
 * Measures the real tools, store and surface on 400 x 600 cells in 12 layers, mirrored both ways, in blocks that
 * alternate with the same by bare canvas calls. Each sample ends by reading one pixel back, so that the picture is
 * really painted.
 */
import '../../../renderer/shell/theme.css';
import { layeredDesign } from '../parts/layered-design.ts';
import { type Deed, deeds } from './deeds.ts';
import { historyBytes, openForMemory, strokes, undos } from './memory.ts';
import { type Both, bothOf, nextFrame, type Scene } from './stage.ts';
import { shownSoFar, watch } from './watch.ts';

export interface Measured {
  readonly deed: string;
  readonly bareDraws: Deed['bareDraws'];
  readonly larkrow: number[];
  readonly bare: number[];
}

/** What is done over and over, and what only now and then. */
const often = { blocks: 20, samples: 25 };
const seldom = { blocks: 12, samples: 4 };

async function measure(scene: Scene): Promise<Measured[]> {
  const measured: Measured[] = [];
  for (const covered of [false, true]) {
    const both = await bothOf(layeredDesign(400, 600, 12, covered ? 1 : null), scene);
    const these = deeds.filter(({ isOnCovered = false }) => isOnCovered === covered);
    if (covered) measured.push(...(await alternately(both, these, seldom)));
    else
      for (const deed of these)
        measured.push(...(await alternately(both, [deed], deed.name === 'layer toggle' ? seldom : often)));
    both.surface.destroy();
  }
  return measured;
}

/** Several deeds are done one after the other, as a fill and its undo, and measured apart. */
async function alternately(
  both: Both,
  these: readonly Deed[],
  { blocks, samples }: typeof often,
): Promise<Measured[]> {
  const all = these.map(
    ({ name, bareDraws }): Measured => ({ deed: name, bareDraws, larkrow: [], bare: [] }),
  );
  for (const deed of these) deed.begin?.(both);
  for (let block = 0; block <= blocks; block++) {
    for (const side of ['larkrow', 'bare'] as const) {
      for (let s = 0; s < samples; s++) {
        for (const [i, deed] of these.entries()) {
          const began = performance.now();
          deed[side](both, block * samples + s);
          // The first block warms up.
          if (block > 0) all[i]![side].push(performance.now() - began);
        }
      }
      await nextFrame();
    }
  }
  for (const deed of these) deed.end?.(both);
  return all;
}

const page = { measure, watch, shownSoFar, openForMemory, strokes, undos, historyBytes };

export type DrawPage = typeof page;

Object.assign(window, page);
