/** What can be printed to go with a finished hanging, in its usual order. */
export const hangingPapers = [
  'care-card',
  'fibre-label',
  'price-tag',
  'backing',
  'backing-tiles',
  'packing-note',
] as const;

export type HangingPaper = (typeof hangingPapers)[number];
