/** Inks, sizes and line widths of the pages. Sizes are ems in mm: 2.9 mm is a little over 8 points. */

export const inks = {
  text: '#26231f',
  soft: '#6b6459',
  hair: '#d8d0c2',
  linen: '#f5f0e6',
  accent: '#9e3329',
  paper: '#ffffff',
} as const;

/** One scale for all pages: display and page titles, headings, what leads, what is read, notes and feet. */
export const sizes = {
  display: 15,
  pageTitle: 9,
  heading: 4.6,
  lead: 3.9,
  body: 3.15,
  note: 2.8,
  small: 2.6,
  foot: 2.35,
} as const;

/** Distance of two baselines, in ems. */
export const LEADING = 1.45;

/** Rules of a chart, in mm. ISO 128: each width at least twice as thick as the one below. */
export const ruleMm = { thin: 0.18, fifth: 0.36, tenth: 0.72 } as const;

/** The em of a row's or cord's number beside the chart, at most. */
export const NUMBER_MM = 2.6;
