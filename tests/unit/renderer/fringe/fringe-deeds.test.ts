import { beforeEach, describe, expect, it } from 'vitest';
import {
  chooseShape,
  dropFringe,
  keepFringe,
  shownFringe,
  tryFringe,
} from '../../../../renderer/draw/fringe/fringe-deeds.ts';
import { undoStep } from '../../../../renderer/store/changing.ts';
import { openDesign, studio } from '../../../../renderer/store/studio.ts';
import type { Fringe } from '../../../../shared/design/schema.ts';
import { designFromLetters } from '../../../notation.ts';

const before: Fringe = { shape: 'v', longMm: 200, shortMm: 80 };
const open = () => studio.getState().open!;
const shown = () => shownFringe(studio.getState());

beforeEach(() => openDesign(designFromLetters(['aaaaa', 'aaaaa'], { fringe: before }), null));

describe('shaping the fringe', () => {
  it('shows every length on the way, and is one step when the hand lets go', () => {
    for (const longMm of [210, 240, 260]) tryFringe({ ...before, longMm });
    expect(shown()!.longMm).toBe(260);
    expect(open().design.fringe).toBe(before);
    keepFringe();
    expect(open().design.fringe.longMm).toBe(260);
    expect(open().history.done.map(({ label }) => label)).toEqual(['Fringe']);
    undoStep();
    expect(shown()).toEqual(before);
  });

  it('leaves no step where it was dropped, or where nothing was tried', () => {
    tryFringe({ ...before, longMm: 300 });
    dropFringe();
    keepFringe();
    expect(shown()).toBe(before);
    expect(open().history.done).toEqual([]);
  });

  it('begins by hand with the lengths that the cords have', () => {
    chooseShape('by-hand');
    expect(shown()).toEqual({
      shape: 'by-hand',
      longMm: 200,
      shortMm: 80,
      byHandMm: [80, 140, 200, 140, 80],
    });
  });

  it('makes all cords as long as the longest where it becomes straight', () => {
    chooseShape('straight');
    expect(shown()).toEqual({ shape: 'straight', longMm: 200, shortMm: 200 });
  });

  it('is one step of the history however many shapes were passed, and the last of them is made from what was kept', () => {
    for (const shape of ['straight', 'by-hand', 'curve'] as const) chooseShape(shape);
    keepFringe();
    expect(open().design.fringe).toEqual({ shape: 'curve', longMm: 200, shortMm: 80 });
    expect(open().history.done).toHaveLength(1);
  });

  it('leaves no lengths by hand behind where another shape is chosen', () => {
    chooseShape('by-hand');
    keepFringe();
    chooseShape('inverted-v');
    keepFringe();
    expect(open().design.fringe).toEqual({ shape: 'inverted-v', longMm: 200, shortMm: 80 });
  });

  it('does nothing where the shape is chosen already', () => {
    chooseShape('v');
    expect(open().history.done).toEqual([]);
  });
});
