import { beforeEach, describe, expect, it } from 'vitest';
import {
  fittedOver,
  keepReference,
  setReference,
  shownReference,
  tryReference,
} from '../../../renderer/draw/reference/reference-deeds.ts';
import { undoStep } from '../../../renderer/store/changing.ts';
import { openDesign, studio } from '../../../renderer/store/studio.ts';
import type { Reference } from '../../../shared/design/schema.ts';
import { gaugeFromPer10Cm } from '../../../shared/gauge/gauge-from-per-10-cm.ts';
import { designFromLetters } from '../../notation.ts';

/** 4 cords of 5 mm and 2 rows of 4 mm: 20 mm wide, 8 mm high. */
const design = designFromLetters(['aaaa', 'aaaa'], { swatches: [gaugeFromPer10Cm(20, 25)] });
const picture: Reference = {
  name: 'hill.png',
  mediaType: 'image/png',
  picture: ['AAAA'],
  opacity: 0.5,
  leftMm: 0,
  topMm: 0,
  widthMm: 20,
  heightMm: 8,
  visible: true,
};
const shown = () => shownReference(studio.getState());

beforeEach(() => openDesign(design, null));

describe('a picture laid under the chart', () => {
  it('is as large as fits over the chart, in its middle', () => {
    const square = fittedOver(design, 1);
    expect([square.leftMm, square.topMm, square.widthMm, square.heightMm].map(Math.round)).toEqual([
      6, 0, 8, 8,
    ]);
    const long = fittedOver(design, 5);
    expect([long.leftMm, long.topMm, long.widthMm, long.heightMm].map(Math.round)).toEqual([0, 2, 20, 4]);
  });

  it('is seen at once while its opacity is tried, and is one step in the end', () => {
    setReference(picture);
    for (const opacity of [0.6, 0.7]) tryReference({ ...picture, opacity });
    expect(shown()!.opacity).toBe(0.7);
    keepReference();
    keepReference();
    expect(studio.getState().open!.history.done).toHaveLength(2);
    undoStep();
    expect(shown()!.opacity).toBe(0.5);
  });

  it('can be removed, and comes back by undo', () => {
    setReference(picture);
    setReference(null);
    expect(shown()).toBeNull();
    undoStep();
    expect(shown()).toEqual(picture);
  });
});
