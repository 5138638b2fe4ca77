import { describe, expect, it } from 'vitest';
import type { Fringe } from '../../../shared/design/schema.ts';
import { fringeByHand, fringeMm } from '../../../shared/gauge/fringe.ts';

const of = (shape: Exclude<Fringe['shape'], 'by-hand'>, columns: number) =>
  fringeMm(columns, { shape, longMm: 100, shortMm: 20 });

describe('the fringe', () => {
  it('is even where it is straight', () => {
    expect(of('straight', 4)).toEqual([100, 100, 100, 100]);
  });

  it('of a V is longest in the middle', () => {
    expect(of('v', 5)).toEqual([20, 60, 100, 60, 20]);
    expect(of('v', 6)).toEqual([20, 60, 100, 100, 60, 20]);
  });

  it('of an inverted V is longest at the edges', () => {
    expect(of('inverted-v', 5)).toEqual([100, 60, 20, 60, 100]);
  });

  it('of a curve stays long around the middle', () => {
    expect(of('curve', 5)).toEqual([20, 80, 100, 80, 20]);
  });

  it.each(['straight', 'v', 'inverted-v', 'curve'] as const)('%s is the same on both sides', (shape) => {
    for (const columns of [1, 2, 3, 8, 31]) {
      expect(of(shape, columns)).toHaveLength(columns);
      expect(of(shape, columns).toReversed()).toEqual(of(shape, columns));
    }
  });

  it('drawn by hand gives each cord its own length', () => {
    expect(fringeMm(4, fringeByHand([30, 0, 120.5, 60]))).toEqual([30, 0, 120.5, 60]);
  });

  it('drawn by hand tells its longest and its shortest cord', () => {
    expect(fringeByHand([30, 10, 120.5, 60])).toMatchObject({ longMm: 120.5, shortMm: 10 });
  });

  it('drawn by hand is spread over more cords or fewer, and keeps its ends', () => {
    expect(fringeMm(5, fringeByHand([0, 100, 40]))).toEqual([0, 50, 100, 70, 40]);
    expect(fringeMm(3, fringeByHand([0, 50, 100, 70, 40]))).toEqual([0, 100, 40]);
    expect(fringeMm(2, fringeByHand([10, 99, 99, 20]))).toEqual([10, 20]);
    expect(fringeMm(3, fringeByHand([70]))).toEqual([70, 70, 70]);
    expect(fringeMm(1, fringeByHand([0, 40]))).toEqual([20]);
  });

  it('of one or two cords has no edge', () => {
    expect(of('v', 1)).toEqual([100]);
    expect(of('v', 2)).toEqual([100, 100]);
  });
});
