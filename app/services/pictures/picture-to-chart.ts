/** A picture file becomes the cells of a chart: what the bridge's `picture.chart` and the command line ask for. */
import { setImmediate as pause } from 'node:timers/promises';
import type { Answer, Args, CallOptions } from '../../../shared/bridge.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import type { Crop } from '../../../shared/picture/average-cells.ts';
import { cellAverager, type PictureCells } from '../../../shared/picture/cell-averager.ts';
import { cancelled, pictureChart } from '../../../shared/picture/picture-chart.ts';
import { rowsFor } from '../../../shared/picture/rows-for.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { alphabet } from '../../../shared/yarn/symbols.ts';
import { type OpenPicture, openPicture, type Pixels, pixelsOf } from './decoder.ts';
import { type PictureSource, pictureBytes } from './picture-bytes.ts';

export type PictureRequest = Omit<Args<'picture.chart'>, 'picture'>;

interface Size {
  readonly columns: number;
  readonly rows: number;
}

/** Pixels that are averaged between two looks at Cancel: about 10 ms. */
const PIXELS_AT_ONCE = 1_000_000;

/** How the work is shared out over the progress bar, by the time that it takes. */
const AVERAGING_FROM = 0.4;
const YARNS_FROM = 0.8;

/**
 * Problems: those of `pictureBytes`, `openPicture` and `pixelsOf`; `crop-outside`, `bad-size`, `too-many-rows`;
 * `cancelled`.
 */
export async function pictureToChart(
  source: PictureSource,
  request: PictureRequest,
  { signal, onProgress }: CallOptions = {},
): Promise<Result<Answer<'picture.chart'>>> {
  onProgress?.({ done: 0, what: 'Reading the picture' });
  const bytes = await pictureBytes(source);
  if (!bytes.ok) return bytes;
  const picture = await openPicture(bytes.value);
  if (!picture.ok) return picture;
  const crop = wholeCrop(picture.value, request.crop);
  if (!crop.ok) return crop;
  const size = sizeOf(request, crop.value);
  if (!size.ok) return size;
  if (signal?.aborted) return cancelled;
  const pixels = await pixelsOf(picture.value, crop.value);
  if (!pixels.ok) return pixels;

  const options = { ...(signal && { signal }), ...(onProgress && { onProgress }) };
  const ground = groundOf(request);
  const cells = await averaged(pixels.value, crop.value, size.value, ground.color, options);
  if (!cells.ok) return cells;
  const { yarns } = request;
  const wanted =
    'from' in yarns
      ? yarns
      : { choose: { count: yarns.count, like: ground, symbols: alphabet.map(({ text }) => text) } };
  const chart = await pictureChart(cells.value, wanted, {
    ...options,
    pause,
    onProgress: ({ done, what }) => onProgress?.({ done: YARNS_FROM + (1 - YARNS_FROM) * done, what }),
  });
  if (!chart.ok) return chart;
  const { columns, rows, cells: codes } = chart.value;
  return good({ columns, rows, cells: codes, yarns: [...chart.value.yarns] });
}

async function averaged(
  { bytes, channels }: Pixels,
  { width: widthPx, height: heightPx }: Crop,
  { columns, rows }: Size,
  background: string,
  { signal, onProgress }: CallOptions,
): Promise<Result<PictureCells>> {
  const averager = cellAverager({ columns, rows, widthPx, heightPx, channels, background });
  const rowsAtOnce = Math.max(1, Math.floor(PIXELS_AT_ONCE / widthPx));
  for (let y = 0; y < heightPx; y++) {
    if (y % rowsAtOnce === 0) {
      const done = AVERAGING_FROM + ((YARNS_FROM - AVERAGING_FROM) * y) / heightPx;
      onProgress?.({ done, what: 'Averaging the light under each knot' });
      await pause();
      if (signal?.aborted) return cancelled;
    }
    averager.addRow(bytes, y * widthPx * channels);
  }
  return good(averager.finish());
}

/** The crop in whole pixels; the whole picture where there is none. */
function wholeCrop({ widthPx, heightPx }: OpenPicture, crop: PictureRequest['crop']): Result<Crop> {
  if (!crop) return good({ x: 0, y: 0, width: widthPx, height: heightPx });
  const x = Math.round(crop.x);
  const y = Math.round(crop.y);
  const width = Math.round(crop.x + crop.width) - x;
  const height = Math.round(crop.y + crop.height) - y;
  const inside =
    x >= 0 && y >= 0 && width >= 1 && height >= 1 && x + width <= widthPx && y + height <= heightPx;
  return inside
    ? good({ x, y, width, height })
    : problem(
        'crop-outside',
        `The crop does not lie inside the picture, which has ${widthPx} × ${heightPx} pixels. Draw it again inside the picture, at least one pixel wide and high.`,
      );
}

function sizeOf({ columns, rows, pitchMm, rowHeightMm }: PictureRequest, crop: Crop): Result<Size> {
  if (!isCount(columns, limits.columns) || (rows !== undefined && !isCount(rows, limits.rows))) {
    return problem(
      'bad-size',
      `A chart has 1 to ${limits.columns} cords and 1 to ${limits.rows} rows. Choose whole numbers between them.`,
    );
  }
  const kept = rows ?? rowsFor(columns, crop.width, crop.height, pitchMm, rowHeightMm);
  return kept <= limits.rows
    ? good({ columns, rows: kept })
    : problem(
        'too-many-rows',
        `The picture is so tall that ${columns} cords would need ${kept} rows; ${limits.rows} are the most. Choose fewer cords, or crop it.`,
      );
}

function isCount(number: number, most: number): boolean {
  return Number.isInteger(number) && number >= 1 && number <= most;
}

function groundOf({ ground, yarns }: PictureRequest): Yarn {
  return ground ?? ('from' in yarns ? yarns.from[0]! : defaults.yarns[0]!);
}
