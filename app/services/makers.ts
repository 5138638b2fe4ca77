/** The long jobs behind the bridge; a test may pass slower or failing ones. */
import type { Answer, CallOptions } from '../../shared/bridge.ts';
import type { Result } from '../../shared/result.ts';
import { makeChartPng } from './pattern/draw-png.ts';
import { makeHangingPapers } from './pattern/make-hanging-papers.ts';
import { makeLabels } from './pattern/make-labels.ts';
import { makePattern } from './pattern/make-pattern.ts';
import { makeParcel } from './pattern/parcel/make-parcel.ts';
import { lookAtPicture } from './pictures/look-at-picture.ts';
import type { PictureSource } from './pictures/picture-bytes.ts';
import { type PictureRequest, pictureToChart } from './pictures/picture-to-chart.ts';
import { markPicture, referencePicture } from './pictures/reference-picture.ts';

export interface Makers {
  readonly makePattern: typeof makePattern;
  readonly makeLabels: typeof makeLabels;
  readonly makeHangingPapers: typeof makeHangingPapers;
  readonly makeParcel: typeof makeParcel;
  readonly makeChartPng: typeof makeChartPng;
  readonly lookAtPicture: typeof lookAtPicture;
  readonly referencePicture: typeof referencePicture;
  readonly markPicture: typeof markPicture;
  readonly pictureToChart: (
    source: PictureSource,
    request: PictureRequest,
    options?: CallOptions,
  ) => Promise<Result<Answer<'picture.chart'>>>;
}

export const ourMakers: Makers = {
  makePattern,
  makeLabels,
  makeHangingPapers,
  makeParcel,
  makeChartPng,
  lookAtPicture,
  referencePicture,
  markPicture,
  pictureToChart,
};
