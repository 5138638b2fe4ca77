/**
 * From the mean light of each cell to a chart in yarns. Which part of the picture and how many cells is decided
 * before (`rows-for.ts`), the light is averaged before (`cell-averager.ts`); decoding is the host's.
 */
import type { CallOptions } from '../bridge.ts';
import type { YarnId } from '../design/codes.ts';
import type { Yarn } from '../design/schema.ts';
import { good, problem, type Result } from '../result.ts';
import type { PictureCells } from './cell-averager.ts';
import { cellColours } from './cell-colours.ts';
import { chooseYarns, type YarnsToChoose } from './choose-yarns.ts';
import { matchYarns } from './match-yarns.ts';
import { mostUsedYarn } from './most-used-yarn.ts';

export interface PictureChart {
  readonly columns: number;
  readonly rows: number;
  /** Codes by row, left to right; each is that of one of `yarns`. */
  readonly cells: Uint8Array<ArrayBuffer>;
  readonly yarns: readonly Yarn[];
  /** The yarn that covers the most cells: the one to take as the ground. */
  readonly mostUsed: YarnId;
}

/** Yarns to be chosen from the picture, or those of a design. */
export type YarnsForPicture = { readonly choose: YarnsToChoose } | { readonly from: readonly Yarn[] };

export interface PictureOptions extends CallOptions {
  /**
   * Lets the host see to other things, and to a click on Cancel, between two parts of the work: this code has no
   * clock of its own. Without it the work is done in one go.
   */
  readonly pause?: () => Promise<void>;
}

/** Problem: `cancelled`. */
export async function pictureChart(
  { columns, rows, linear }: PictureCells,
  wanted: YarnsForPicture,
  { signal, onProgress, pause }: PictureOptions = {},
): Promise<Result<PictureChart>> {
  onProgress?.({ done: 0, what: 'Weighing the colours' });
  await pause?.();
  if (signal?.aborted) return cancelled;
  const colours = cellColours(linear);

  onProgress?.({ done: 0.3, what: 'from' in wanted ? 'Matching the yarns' : 'Choosing the yarns' });
  await pause?.();
  if (signal?.aborted) return cancelled;
  const { yarns, codes } =
    'from' in wanted
      ? { yarns: wanted.from, codes: matchYarns(colours, wanted.from) }
      : chooseYarns(colours, wanted.choose);

  await pause?.();
  if (signal?.aborted) return cancelled;
  const mostUsed = mostUsedYarn(codes);
  if (!mostUsed) throw new Error('a chart of no cells');
  onProgress?.({ done: 1, what: 'The chart is ready' });
  return good({ columns, rows, cells: codes, yarns, mostUsed });
}

export const cancelled = problem('cancelled', 'No chart was made. Start again whenever you like.');
