/**
 * The lightest path cover of a chart that has changed a little, from the cover of the chart before: runs that are no
 * more are taken out, new runs are placed one by one (`augment.ts`), mostly where the others were, and each place that is
 * still left is put to its best use (`vacate.ts`). The prices that proved the old cover the lightest still hold for all
 * runs that stayed, so only the neighbourhood of the change is looked at. No two covers weigh the same
 * (`weighed-links.ts`), so this is the very cover that planning anew would give.
 */
import { Augmenter, type SearchTable } from '../cover/augment.ts';
import { type Cover, hold } from '../cover/cover.ts';
import type { SpareArrays } from '../cover/spare-arrays.ts';
import { vacate } from '../cover/vacate.ts';
import type { WeighedLinks } from '../cover/weighed-links.ts';
import type { PinnedRuns } from '../pins/pinned-runs.ts';
import { GONE, type KeptRuns } from './kept-runs.ts';

export interface RepairedCover extends Cover {
  /** The runs that are new, or that do not follow, or are not followed by, what they were. */
  readonly changed: readonly number[];
}

/** What repairs work with, one after another. */
export interface RepairDesk {
  readonly spare: SpareArrays;
  /** For as many runs as there are, or more. */
  readonly table: SearchTable;
}

/** The pins obeyed are those of the chart before. */
export function repairCover(
  old: Cover,
  kept: KeptRuns,
  links: WeighedLinks,
  { spare, table }: RepairDesk,
  pinned?: PinnedRuns,
): RepairedCover {
  const previous = kept.movedRuns(old.previous);
  const next = kept.movedRuns(old.next);
  const cover: Cover = {
    previous: copied(previous, spare),
    next: copied(next, spare),
    weight: kept.moved(old.weight),
    price: kept.moved(old.price),
  };
  const waiting = lift(cover, kept, pinned);
  const waits = new Set(waiting);
  for (let place = kept.first; place < kept.newEnd; place++)
    if (kept.isNew(place)) cover.price[place] = offered(place, links, cover, waits);
  const augmenter = new Augmenter(links, cover, table);
  for (const run of waiting) augmenter.place(run);
  // Only now, since runs that are new mostly take what others have left.
  for (let place = 0; place < previous.length; place++)
    if (cover.next[place] === -1 && cover.price[place]! < 0) vacate(place, links, cover);
  const changed = differing(previous, cover.previous, next, cover.next);
  spare.takeBack(previous, next);
  return { ...cover, changed };
}

function copied(runs: Int32Array, spare: SpareArrays): Int32Array {
  const copy = spare.ints(runs.length);
  copy.set(runs);
  return copy;
}

/** Takes the runs out of their places that can't stay there, or have none yet, but for those that pins hold. */
function lift(cover: Cover, kept: KeptRuns, pinned?: PinnedRuns): number[] {
  const { previous, next } = cover;
  const waiting: number[] = [];
  for (let run = 0; run < previous.length; run++) {
    if (next[run] === GONE) next[run] = -1;
    const held = pinned ? pinned.before[run]! : -1;
    if (held !== -1) hold(cover, held, run);
    else if (previous[run] === GONE || !kept.isReachedAsBefore(run)) {
      if (previous[run]! >= 0) next[previous[run]!] = -1;
      previous[run] = -1;
      waiting.push(run);
    }
  }
  return waiting;
}

function differing(
  wasBefore: Int32Array,
  before: Int32Array,
  wasAfter: Int32Array,
  after: Int32Array,
): number[] {
  const changed: number[] = [];
  for (let run = 0; run < before.length; run++)
    if (before[run] !== wasBefore[run] || after[run] !== wasAfter[run]) changed.push(run);
  return changed;
}

/** The price at which no run gains by a new place; 0 where none would anyway. */
function offered(place: number, links: WeighedLinks, cover: Cover, waits: ReadonlySet<number>): number {
  let price = 0;
  links.after(place, (run, weight) => {
    if (waits.has(run)) return;
    const own = cover.previous[run]!;
    const pays = own === -1 ? links.fresh : cover.weight[run]! - cover.price[own]!;
    price = Math.min(price, weight - pays);
  });
  return price;
}
