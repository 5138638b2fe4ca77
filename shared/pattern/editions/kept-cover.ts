/**
 * Covers of editions. A photograph takes far more than all the rest of an edition, and most editions have the one of the edition
 * before: such an edition names that edition, and the photograph is kept once.
 */
import type { Edition, PatternSettings } from '../../design/schema.ts';

type Made = Edition['made'];

/** What is to be published, its photograph left out where an edition before holds the same. */
export function withCoverOf(before: readonly Edition[], made: Made): Made {
  const { cover, ...pattern } = made.pattern ?? {};
  const same = cover && before.find((each) => isSame(each.made.pattern?.cover, cover));
  return same ? { ...made, pattern: { ...pattern, coverOf: same.number } } : made;
}

/** An edition that was published, its photograph put back. Where that is lost it stays without. */
export function withCover(editions: readonly Edition[], made: Made): Made {
  const pattern = patternKept(editions, made);
  return pattern === 'lost' || pattern === undefined ? made : { ...made, pattern };
}

/** 'lost': no edition holds the photograph any more. Undefined: published before patterns were kept. */
export function patternKept(
  editions: readonly Edition[],
  { pattern: kept }: Made,
): Omit<PatternSettings, 'labels'> | undefined | 'lost' {
  if (kept?.coverOf === undefined) return kept;
  const { coverOf, ...pattern } = kept;
  const cover = editions.find(({ number }) => number === coverOf)?.made.pattern?.cover;
  return cover ? { ...pattern, cover } : 'lost';
}

function isSame(a: PatternSettings['cover'], b: NonNullable<PatternSettings['cover']>): boolean {
  return (
    a !== undefined &&
    a.mediaType === b.mediaType &&
    a.picture.length === b.picture.length &&
    a.picture.every((line, i) => line === b.picture[i])
  );
}
