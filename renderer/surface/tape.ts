/** The marks of a tape measure laid along the hanging: which there are, how long each is, and what is written there. */
import { mmPerInch } from '../../shared/units/length.ts';
import type { Units } from '../../shared/units/units.ts';

export type TapeUnit = 'cm' | 'in';

export interface TapeMark {
  readonly mm: number;
  /** 1: the longest; 0: the shortest. */
  readonly length: 0 | 0.5 | 1;
  /** The figure at a long mark; empty elsewhere. */
  readonly text: string;
}

interface Steps {
  /** Of marks from the finest on, in mm. */
  readonly marks: readonly number[];
  /** Of figures, in mm. */
  readonly figures: readonly number[];
  readonly mm: number;
}

const inches = (...counts: number[]) => counts.map((count) => count * mmPerInch);

/** As they are printed on tapes: cm halve and end in mm; inches halve three times, and twelve of them are a foot. */
const steps: Record<TapeUnit, Steps> = {
  cm: {
    mm: 10,
    marks: [1, 5, 10, 50, 100, 500, 1000],
    figures: [10, 20, 50, 100, 200, 500, 1000],
  },
  in: {
    mm: mmPerInch,
    marks: inches(1 / 8, 1 / 4, 1 / 2, 1, 6, 12, 60),
    figures: inches(1, 2, 6, 12, 24, 60, 120),
  },
};

/** The units that the tapes at the left, along the dowel's two edges, and at the right are marked in. */
export function tapeUnits(units: Units): { readonly first: TapeUnit; readonly second: TapeUnit } {
  return { first: units === 'us' ? 'in' : 'cm', second: units === 'metric' ? 'cm' : 'in' };
}

/** Marks from 0 to `toMm`, as close together as `leastPx` allows, with figures at least `leastTextPx` apart. */
export function tapeMarks(
  unit: TapeUnit,
  toMm: number,
  pxPerMm: number,
  { leastPx, leastTextPx }: { readonly leastPx: number; readonly leastTextPx: number },
): TapeMark[] {
  const { marks, figures, mm: unitMm } = steps[unit];
  const step = marks.find((each) => each * pxPerMm >= leastPx) ?? marks.at(-1)!;
  const figureStep = Math.max(step, figures.find((each) => each * pxPerMm >= leastTextPx) ?? figures.at(-1)!);
  const halfStep = marks.find((each) => each > step && each < figureStep && isWhole(figureStep / each));
  // A length that is a whole number of steps ends with a mark, whatever the machine makes of its last digit.
  const count = Math.floor(toMm / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => {
    const mm = i * step;
    const isFigure = isWhole(mm / figureStep);
    const isHalf = halfStep !== undefined && isWhole(mm / halfStep);
    return {
      mm,
      length: isFigure ? 1 : isHalf ? 0.5 : 0,
      text: isFigure ? String(Math.round(mm / unitMm)) : '',
    };
  });
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) < 1e-6;
}
