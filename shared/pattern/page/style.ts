/** Inks, sizes and line widths of the pages. Sizes are ems in mm: 3.3 mm is a little over 9 points. */
import type { Copy } from '../copy.ts';

export const inks = {
  text: '#26231f',
  soft: '#57514a',
  hair: '#d8d0c2',
  linen: '#f5f0e6',
  accent: '#9e3329',
  paper: '#ffffff',
} as const;

/** Page titles, headings, what leads, what is read, notes and feet. */
export interface TypeScale {
  readonly pageTitle: number;
  readonly heading: number;
  readonly lead: number;
  readonly body: number;
  readonly note: number;
  readonly small: number;
  readonly foot: number;
}

/** One scale for all pages of a copy: nothing is smaller than 7.5 points, and what is read in large print is 16 at least. */
export const typeScales: Readonly<Record<Copy['cells'], TypeScale>> = {
  standard: {
    pageTitle: 9,
    heading: 4.6,
    lead: 3.9,
    body: 3.3,
    note: 2.95,
    small: 2.7,
    foot: 2.65,
  },
  large: {
    pageTitle: 10,
    heading: 7,
    lead: 6.2,
    body: 5.85,
    note: 5.7,
    small: 5.65,
    foot: 3.8,
  },
};

export const sizes = typeScales.standard;

/** Distance of two baselines, in ems. */
export const LEADING = 1.45;

/** Rules of a chart, in mm. ISO 128: each width at least twice as thick as the one below. */
export const ruleMm = { thin: 0.18, fifth: 0.36, tenth: 0.72 } as const;

/** The em of a row's or cord's number beside the chart, at most. */
export const NUMBER_MM = 2.65;
