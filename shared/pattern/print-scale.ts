/** How large the charts of a copy are printed: their cells, and with them symbols, numbers and key. */
import type { Copy } from './copy.ts';
import { NUMBER_MM, sizes } from './style.ts';

/**
 * Standard cells are never narrower than 4 mm, which is comfortable to read, nor lower than 2.5 mm, the least at which
 * the symbols are told apart; large ones are half as large again. Larger than 12 mm they only look coarse.
 */
interface CellLimits {
  readonly minWidthMm: number;
  readonly minHeightMm: number;
  readonly maxWidthMm: number;
}

export interface KeyScale {
  readonly headingMm: number;
  /** From one entry to the next. */
  readonly lineMm: number;
  readonly swatchMm: number;
  /** Em of the names. */
  readonly nameMm: number;
  /** Narrower columns would leave too little of a name. */
  readonly narrowestMm: number;
}

export interface PrintScale {
  readonly cell: CellLimits;
  /** Em of the numbers around the chart, at most. */
  readonly numberMm: number;
  /** Em of the range above the chart and of the marks that join pages. */
  readonly noteMm: number;
  readonly key: KeyScale;
}

export const printScales: Readonly<Record<Copy['cells'], PrintScale>> = {
  standard: {
    cell: { minWidthMm: 4, minHeightMm: 2.5, maxWidthMm: 12 },
    numberMm: NUMBER_MM,
    noteMm: sizes.small,
    key: { headingMm: 6.4, lineMm: 5.4, swatchMm: 4.2, nameMm: sizes.small * 1.08, narrowestMm: 33 },
  },
  large: {
    cell: { minWidthMm: 6, minHeightMm: 3.75, maxWidthMm: 12 },
    numberMm: NUMBER_MM * 1.5,
    noteMm: sizes.small * 1.4,
    key: { headingMm: 7.6, lineMm: 7.6, swatchMm: 6.3, nameMm: sizes.small * 1.6, narrowestMm: 48 },
  },
};
