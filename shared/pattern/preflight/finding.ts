/** What preflight finds: something that would disappoint a buyer, where it is, and how it is mended. */
import type { PatternText } from '../editions/changes-since.ts';

/** 'fault': the pattern can't be followed as it is. 'doubt': a buyer may be disappointed. 'note': worth a look. */
export type Weight = 'fault' | 'doubt' | 'note';

export const weights = ['fault', 'doubt', 'note'] as const satisfies readonly Weight[];

/** Where it is set: a field of the hanging, a choice of the copy, the imprint. */
export type Setting =
  | 'title'
  | 'designer'
  | 'imprint'
  | 'parts'
  | 'copy'
  | 'cover'
  | 'editions'
  | 'gauge'
  | 'dowel'
  | 'reserve'
  | 'yarns'
  | 'pins';

/** Where to go to see it and to mend it; from 1, as a person counts. */
export type Place =
  | { readonly on: 'page'; readonly page: number }
  | { readonly on: 'cell'; readonly row: number; readonly cord: number }
  | { readonly on: 'text'; readonly text: PatternText }
  | { readonly on: 'setting'; readonly setting: Setting };

export type FindingKind =
  | 'alike'
  | 'alike-in-print'
  | 'alike-with-deficiency'
  | 'same-grey'
  | 'beyond-the-edge'
  | 'texts-overlap'
  | 'text-small'
  | 'text-shortened'
  | 'cells-small'
  | 'lift-marks-missing'
  | 'proportions-lost'
  | 'many-pages'
  | 'letters-missing'
  | 'language-mixed'
  | 'text-stale'
  | 'photograph-coarse'
  | 'photograph-unread'
  | 'no-designer'
  | 'no-contact'
  | 'no-terms'
  | 'no-pages'
  | 'no-chart'
  | 'rows-only'
  | 'no-rows'
  | 'rows-not-beside'
  | 'no-map'
  | 'no-reading'
  | 'no-knots'
  | 'no-materials'
  | 'no-cautions'
  | 'lengths-not-told'
  | 'gauge-not-measured'
  | 'swatch-of-another-thickness'
  | 'dowel-long'
  | 'no-reserve'
  | 'knots-may-slide'
  | 'carry-behind-bare'
  | 'pin-not-obeyed'
  | 'nothing-to-tie'
  | 'changed-since-edition';

export interface Finding {
  readonly kind: FindingKind;
  readonly weight: Weight;
  /** What it is, as a sentence. */
  readonly sentence: string;
  /** What to do about it, as a sentence. */
  readonly mend: string;
  readonly place: Place;
}
