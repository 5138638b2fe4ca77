import type { Way } from '../../../shared/design/size-edits.ts';

interface WayFields {
  readonly one: string;
  readonly many: string;
  readonly before: string;
  readonly after: string;
  /** Their number in a design, and its limit. */
  readonly countKey: 'columns' | 'rows';
}

/** Cords and rows, as the sheets speak of them. */
export const wayFields: Readonly<Record<Way, WayFields>> = {
  cords: {
    one: 'cord',
    many: 'cords',
    before: 'to its left',
    after: 'to its right',
    countKey: 'columns',
  },
  rows: { one: 'row', many: 'rows', before: 'above it', after: 'below it', countKey: 'rows' },
};
