/** How large the charts of a copy are printed: their cells, and with them symbols, numbers and key. */
import type { Copy } from '../copy.ts';
import { NUMBER_MM, type TypeScale, typeScales } from '../page/style.ts';

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
  /** From the key's top to its first entry. */
  readonly headingMm: number;
  /** From one entry to the next. */
  readonly lineMm: number;
  readonly swatchMm: number;
  /** Em of the names. */
  readonly nameMm: number;
  /** Narrower columns would leave too little of a name. */
  readonly narrowestMm: number;
}

/** The small map of all pages. */
export interface MapScale {
  /** What it takes, with its heading. */
  readonly width: number;
  readonly height: number;
  /** A page's box is no higher. */
  readonly mostBoxMm: number;
  /** Em of the pages' numbers; there are none where smaller ones would be needed. */
  readonly numberMm: number;
}

/**
 * Large print is 16 points at least where it is read as text, and 14 where it stands within the chart (common practice, no
 * source): 5.65 and 4.94 mm.
 */
export interface PrintScale {
  readonly cell: CellLimits;
  /** Em of the numbers around the chart, and of the rows in words beside it, at most. */
  readonly numberMm: number;
  /** Em of the marks that join pages. */
  readonly noteMm: number;
  /** Em of the title above the chart, and what it takes with the range. */
  readonly titleMm: number;
  readonly headMm: number;
  readonly key: KeyScale;
  readonly map: MapScale;
  /** Of what stands on the page besides. */
  readonly type: TypeScale;
}

export const printScales: Readonly<Record<Copy['cells'], PrintScale>> = {
  standard: {
    cell: { minWidthMm: 4, minHeightMm: 2.5, maxWidthMm: 12 },
    numberMm: NUMBER_MM,
    noteMm: typeScales.standard.small,
    titleMm: 6.4,
    headMm: 11,
    key: { headingMm: 6.4, lineMm: 5.4, swatchMm: 4.2, nameMm: 2.92, narrowestMm: 33 },
    map: { width: 34, height: 20, mostBoxMm: 9, numberMm: NUMBER_MM },
    type: typeScales.standard,
  },
  large: {
    cell: { minWidthMm: 6, minHeightMm: 3.75, maxWidthMm: 12 },
    numberMm: 4.95,
    noteMm: 4.95,
    titleMm: 8,
    headMm: 13.5,
    key: { headingMm: 9.8, lineMm: 8, swatchMm: 6.4, nameMm: 5.65, narrowestMm: 60 },
    map: { width: 50, height: 30, mostBoxMm: 12, numberMm: 4.95 },
    type: typeScales.large,
  },
};
