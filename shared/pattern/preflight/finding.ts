/** What preflight finds: something that would disappoint a buyer, where it is, and how it is mended. */
/** 'fault': the pattern can't be followed as it is. 'doubt': a buyer may be disappointed. 'note': worth a look. */
export type Weight = 'fault' | 'doubt' | 'note';

export const weights = ['fault', 'doubt', 'note'] as const satisfies readonly Weight[];

/** Where to go to see it; from 1, as a person counts. */
export type Place =
  | { readonly on: 'page'; readonly page: number }
  | { readonly on: 'cell'; readonly row: number; readonly cord: number }
  /** A text, a choice of the copy, the imprint: where it is set. */
  | {
      readonly on: 'setting';
      readonly setting: 'title' | 'designer' | 'imprint' | 'terms' | 'parts' | 'copy' | 'gauge';
    };

export type FindingKind =
  | 'alike'
  | 'alike-in-print'
  | 'alike-with-deficiency'
  | 'beyond-the-edge'
  | 'texts-overlap'
  | 'text-small'
  | 'many-pages'
  | 'letters-missing'
  | 'no-designer'
  | 'no-contact'
  | 'no-terms'
  | 'no-chart'
  | 'no-materials'
  | 'lengths-not-told'
  | 'no-cautions'
  | 'gauge-not-measured'
  | 'swatch-of-another-thickness'
  | 'knots-may-slide'
  | 'pin-not-obeyed'
  | 'nothing-to-tie';

export interface Finding {
  readonly kind: FindingKind;
  readonly weight: Weight;
  /** What it is, as a sentence. */
  readonly sentence: string;
  /** What to do about it, as a sentence. */
  readonly mend: string;
  readonly place?: Place;
}
