import { describe, expect, it } from 'vitest';
import { tapeMarks, tapeUnits } from '../../../../renderer/surface/tape.ts';

const room = { leastPx: 5, leastTextPx: 34 };

function figures(...args: Parameters<typeof tapeMarks>): [mm: number, text: string][] {
  return tapeMarks(...args)
    .filter(({ text }) => text !== '')
    .map(({ mm, text }) => [Math.round(mm * 10) / 10, text]);
}

describe('the marks of a tape in cm', () => {
  it('are a mm apart with a figure at every cm where there is room', () => {
    const marks = tapeMarks('cm', 30, 6, room);
    expect(marks).toHaveLength(31);
    expect(marks.map(({ length }) => length).slice(0, 11)).toEqual([1, 0, 0, 0, 0, 0.5, 0, 0, 0, 0, 1]);
    expect(figures('cm', 30, 6, room)).toEqual([
      [0, '0'],
      [10, '1'],
      [20, '2'],
      [30, '3'],
    ]);
  });

  it('thin out with the zoom, figures staying apart', () => {
    expect(figures('cm', 960, 0.45, room).map(([, text]) => text)).toEqual([
      '0',
      '10',
      '20',
      '30',
      '40',
      '50',
      '60',
      '70',
      '80',
      '90',
    ]);
  });

  it('end with the length that is measured, not beyond it', () => {
    expect(tapeMarks('cm', 29.9, 6, room).at(-1)!.mm).toBe(29);
  });
});

describe('the marks of a tape in inches', () => {
  it('are eighths where there is room, with a figure at every inch of 25.4 mm', () => {
    const marks = tapeMarks('in', 50.8, 2, room);
    expect(marks).toHaveLength(17);
    expect(figures('in', 50.8, 2, room)).toEqual([
      [0, '0'],
      [25.4, '1'],
      [50.8, '2'],
    ]);
  });

  it('count feet in inches, as they are written in US patterns', () => {
    expect(figures('in', 1000, 0.2, room).map(([, text]) => text)).toEqual(['0', '12', '24', '36']);
  });
});

describe('the units of the tapes', () => {
  it('are those of the settings, and one of each where both are shown', () => {
    expect(tapeUnits('metric')).toEqual({ first: 'cm', second: 'cm' });
    expect(tapeUnits('us')).toEqual({ first: 'in', second: 'in' });
    expect(tapeUnits('both')).toEqual({ first: 'cm', second: 'in' });
  });
});
