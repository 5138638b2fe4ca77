/** Recolouring as the person wants it, made into one edit: yarns of the stash are added to the design on the way. */
import type { YarnId } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import { apply, type Edit } from '../../../shared/design/edits.ts';
import { addYarns, recolour, type YarnLook } from '../../../shared/design/yarn-edits.ts';
import { good, type Result } from '../../../shared/result.ts';

/** What a yarn becomes: another of the design's, or one that the design does not have yet. */
export type Becomes =
  | { readonly from: 'design'; readonly id: YarnId }
  | { readonly from: 'stash'; readonly look: YarnLook };

/**
 * Null where nothing changes. A look that several yarns become (the same object) is added once. Problems: those of
 * `addYarns`.
 */
export function recolourEdit(
  design: Design,
  symbols: readonly string[],
  wanted: ReadonlyMap<YarnId, Becomes>,
): Result<Edit | null> {
  const looks = new Set<YarnLook>();
  for (const becomes of wanted.values()) if (becomes.from === 'stash') looks.add(becomes.look);
  const added = looks.size > 0 ? addYarns(design, symbols, [...looks]) : null;
  if (added && !added.ok) return added;
  const larger = added ? apply(design, added.value) : design;
  const idOf = new Map<YarnLook, YarnId>();
  for (const [i, look] of [...looks].entries()) {
    idOf.set(look, larger.yarns[design.yarns.length + i]!.id);
  }
  const mapping = new Map<YarnId, YarnId>();
  for (const [id, becomes] of wanted) {
    const to = becomes.from === 'design' ? becomes.id : idOf.get(becomes.look)!;
    if (to !== id) mapping.set(id, to);
  }
  if (mapping.size === 0) return good(null);
  const recoloured = recolour(larger, mapping);
  return good(added ? { kind: 'together', edits: [added.value, recoloured] } : recoloured);
}
