import { describe, expect, it } from 'vitest';
import { drawnLengths } from '../../../../renderer/draw/fringe/drawn-lengths.ts';

describe('cord ends that a hand goes over', () => {
  it('leaves none out, though the hand went over 200 of them at once', () => {
    const drawn = drawnLengths(Array(200).fill(50), { cord: 0, mm: 100 }, { cord: 199, mm: 299 });
    expect(drawn).toEqual(Array.from({ length: 200 }, (_, cord) => 100 + cord));
  });

  it('are as long as the hand is low, in either direction', () => {
    expect(drawnLengths([50, 50, 50, 50, 50], { cord: 3, mm: 40 }, { cord: 1, mm: 80 })).toEqual([
      50, 80, 60, 40, 50,
    ]);
  });

  it('follow the hand where it stays over one cord', () => {
    expect(drawnLengths([50, 50], { cord: 1, mm: 40 }, { cord: 1, mm: 90 })).toEqual([50, 90]);
  });

  it('are never shorter than nothing; where the hand is beside the cords it changes none', () => {
    expect(drawnLengths([50, 50], { cord: -4, mm: -20 }, { cord: 9, mm: -20 })).toEqual([0, 0]);
  });
});
