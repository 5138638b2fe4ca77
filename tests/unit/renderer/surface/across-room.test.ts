import { describe, expect, it } from 'vitest';
import {
  awayMmAt,
  type Pane,
  picturedFromAfar,
  scaleFrom,
} from '../../../../renderer/surface/across-room.ts';
import { flatten } from '../../../../shared/chart/chart.ts';
import { designFromLetters } from '../../../notation.ts';

const black = [0, 0, 0] as const;
const white = [1, 1, 1] as const;
const lights = { 1: black, 2: white };

/** Red, green, blue and cover of a pixel. */
function pixelOf(letters: readonly string[], pane: Partial<Pane>, at = 0): number[] {
  const whole = { width: 1, height: 1, x: 0, y: 0, cellWidth: 1, cellHeight: 1, ...pane };
  const bytes = picturedFromAfar(flatten(designFromLetters(letters)), lights, whole);
  return [...bytes.subarray(at * 4, at * 4 + 4)];
}

describe('what cells send to the eye from across the room', () => {
  it('is half the light of white where as many cells are black as white', () => {
    // Half of full light is 188 of 255 in sRGB: IEC 61966-2-1, 1.055 x 0.5^(1/2.4) - 0.055 = 0.7354.
    const pane = { cellWidth: 0.5, cellHeight: 0.5 };
    expect(pixelOf(['ab', 'ba'], pane)).toEqual([188, 188, 188, 255]);
  });

  it('counts a cell by how much of it lies in the pixel', () => {
    // A quarter of full light: 1.055 x 0.25^(1/2.4) - 0.055 = 0.5371, so 137.
    expect(pixelOf(['aaab'], { cellWidth: 0.25 })).toEqual([137, 137, 137, 255]);
    expect(pixelOf(['ab'], { x: -0.25, cellWidth: 1 })).toEqual([137, 137, 137, 255]);
  });

  it('is the cell itself where that is larger than the pixel', () => {
    expect(pixelOf(['ab'], { width: 4, cellWidth: 2 }, 1)).toEqual([0, 0, 0, 255]);
    expect(pixelOf(['ab'], { width: 4, cellWidth: 2 }, 2)).toEqual([255, 255, 255, 255]);
  });

  it('lets the cords show where cells are bare, in part where only some are', () => {
    expect(pixelOf(['--'], { cellWidth: 0.5 })).toEqual([0, 0, 0, 0]);
    expect(pixelOf(['b-'], { cellWidth: 0.5 })).toEqual([255, 255, 255, 128]);
  });

  it('is nothing beside the chart', () => {
    expect(pixelOf(['b'], { width: 2 }, 1)).toEqual([0, 0, 0, 0]);
  });
});

describe('how far away a hanging looks', () => {
  it('shows it at a fifth of its size where it hangs 3 m away and the screen 60 cm', () => {
    // CSS: 96 pixels an inch, so a real mm is 3.7795 of them.
    expect(scaleFrom(3000)).toBeCloseTo(96 / 25.4 / 5, 9);
  });

  it('goes both ways', () => {
    expect(awayMmAt(scaleFrom(4200))).toBeCloseTo(4200, 6);
  });
});
