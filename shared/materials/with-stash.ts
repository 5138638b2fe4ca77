/** The design's yarns with what the maker's stash holds of them. */
import type { Design } from '../design/design.ts';
import type { Yarn } from '../design/schema.ts';
import type { Stash } from '../yarn/stash.ts';

/**
 * Where a yarn does not tell how much of it is owned, the stash's yarn of the same name and colour tells it; of
 * several such, all count, as far as their skeins are of the same size.
 */
export function withStash<D extends Pick<Design, 'yarns'>>(design: D, stash: Stash): D {
  return { ...design, yarns: design.yarns.map((yarn) => ({ ...yarn, ...ownedOf(yarn, stash) })) };
}

function ownedOf({ ownedSkeins, name, color, skeinG }: Yarn, { yarns }: Stash): Pick<Yarn, 'ownedSkeins'> {
  if (ownedSkeins !== undefined) return {};
  const same = yarns.filter((each) => each.name === name && each.color === color && each.skeinG === skeinG);
  if (same.length === 0) return {};
  return { ownedSkeins: same.reduce((sum, each) => sum + each.ownedSkeins, 0) };
}
