/** What a variant does otherwise, and the design that comes of it. */
import { flatten } from '../../../shared/chart/chart.ts';
import { tidyCells } from '../../../shared/chart/cost/tidy-cells.ts';
import type { YarnId } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import { apply, type Edit } from '../../../shared/design/edits.ts';
import { mergeYarns } from '../../../shared/design/yarn-edits.ts';
import { hasRoomForTold, withToldGauge } from '../../../shared/gauge/told-gauge.ts';
import { good, problem, type Result } from '../../../shared/result.ts';

export type Change =
  | { readonly kind: 'working-length'; readonly mm: number }
  | { readonly kind: 'carry'; readonly cords: number; readonly rows: number }
  | { readonly kind: 'reserve'; readonly share: number }
  /** No more strands than this hang at once. */
  | { readonly kind: 'live-wish'; readonly strands: number }
  | { readonly kind: 'merge'; readonly from: YarnId; readonly into: YarnId }
  | { readonly kind: 'tidy' }
  | { readonly kind: 'gauge'; readonly knotsPer10Cm: number; readonly rowsPer10Cm: number };

export type ChangeKind = Change['kind'];

/** A variant as data: the edit that makes it of the design, and the design with it. */
export interface Variation {
  /** Null where nothing changes. */
  readonly edit: Edit | null;
  readonly design: Design;
}

/**
 * The changes one after the other, as one edit. Problems: `no-such-yarn` where a yarn that is to be merged is gone, `too-many-swatches`
 * where a gauge has no room beside them, and those of `mergeYarns`.
 */
export function variationOf(design: Design, changes: readonly Change[]): Result<Variation> {
  const edits: Edit[] = [];
  let next = design;
  for (const change of changes) {
    const made = editFor(next, change);
    if (!made.ok) return made;
    if (!made.value) continue;
    edits.push(made.value);
    next = apply(next, made.value);
  }
  const edit = edits.length > 1 ? { kind: 'together' as const, edits } : (edits[0] ?? null);
  return good({ edit, design: next });
}

function editFor(design: Design, change: Change): Result<Edit | null> {
  const { tying } = design;
  switch (change.kind) {
    case 'working-length':
      return tyingEdit(design, { ...tying, workingLengthMm: change.mm });
    case 'carry':
      return tyingEdit(design, { ...tying, carryMaxCords: change.cords, carryMaxRows: change.rows });
    case 'reserve':
      return tyingEdit(design, { ...tying, reserveShare: change.share });
    case 'live-wish':
      return tyingEdit(design, { ...tying, liveWish: change.strands });
    case 'merge':
      return mergeEdit(design, change.from, change.into);
    case 'tidy':
      return good(tidyCells(design, flatten(design)).edit);
    case 'gauge':
      return toldEdit(design, change);
  }
}

function tyingEdit(design: Design, tying: Design['tying']): Result<Edit | null> {
  const keys = Object.keys(tying) as (keyof Design['tying'])[];
  // A reserve that old files lack is none.
  const isSame = keys.every((key) => (tying[key] ?? 0) === (design.tying[key] ?? 0));
  return good(isSame ? null : { kind: 'set', field: 'tying', value: tying });
}

function mergeEdit(design: Design, from: YarnId, into: YarnId): Result<Edit> {
  const isThere = (id: YarnId) => design.yarns.some((yarn) => yarn.id === id);
  if (isThere(from) && isThere(into)) return mergeYarns(design, from, into);
  return problem('no-such-yarn', 'A yarn that was to be merged is no longer in the design. Choose another.');
}

function toldEdit(
  { swatches }: Design,
  { knotsPer10Cm, rowsPer10Cm }: Extract<Change, { kind: 'gauge' }>,
): Result<Edit> {
  if (!hasRoomForTold(swatches))
    return problem(
      'too-many-swatches',
      'The design holds no more swatches, and so no gauge beside them. Remove one first.',
    );
  const value = withToldGauge(swatches, knotsPer10Cm, rowsPer10Cm);
  return good({ kind: 'set', field: 'swatches', value });
}
