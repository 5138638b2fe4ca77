/**
 * The lightest path cover of a chart that has changed a little, from the cover of the chart before: runs that are no
 * more are taken out, each place that they leave is put to its best use (`vacate.ts`), and new runs are placed one by
 * one (`augment.ts`). The prices that proved the old cover the lightest still hold for all runs that stayed, so only
 * the neighbourhood of the change is looked at. No two covers weigh the same (`weighed-links.ts`), so this is the very
 * cover that planning anew would give.
 */
import { Augmenter } from './augment.ts';
import { type Cover, emptyCover, hold } from './cover.ts';
import type { KeptRuns } from './kept-runs.ts';
import type { PinnedRuns } from './pinned-runs.ts';
import { vacate } from './vacate.ts';
import type { WeighedLinks } from './weighed-links.ts';

/** The pins obeyed are those of the chart before. */
export function repairCover(
  old: Cover,
  { newOf, oldOf, sameReach }: KeptRuns,
  links: WeighedLinks,
  pinned?: PinnedRuns,
): Cover {
  const count = oldOf.length;
  const cover = emptyCover(count);
  const waits = new Uint8Array(count);
  const waiting: number[] = [];
  for (let run = 0; run < count; run++) {
    const was = oldOf[run]!;
    if (was !== -1) cover.price[run] = old.price[was]!;
    const before = was === -1 ? -1 : old.previous[was]!;
    const place = before === -1 ? -1 : newOf[before]!;
    const held = pinned?.before[run] ?? -1;
    if (held !== -1) hold(cover, held, run);
    else if (was !== -1 && sameReach[run] === 1 && (before === -1) === (place === -1)) {
      cover.previous[run] = place;
      if (place === -1) continue;
      cover.next[place] = run;
      cover.weight[run] = old.weight[was]!;
    } else {
      waits[run] = 1;
      waiting.push(run);
    }
  }
  for (let place = 0; place < count; place++) {
    if (oldOf[place] === -1) cover.price[place] = offered(place, links, cover, waits);
    if (cover.next[place] === -1 && cover.price[place]! < 0) vacate(place, links, cover, waits);
  }
  const augmenter = new Augmenter(links, cover);
  for (const run of waiting) augmenter.place(run);
  return cover;
}

/** The price at which no run gains by a new place; 0 where none would anyway. */
function offered(place: number, links: WeighedLinks, cover: Cover, waits: Uint8Array): number {
  let price = 0;
  links.after(place, (run, weight) => {
    if (waits[run] === 1) return;
    const own = cover.previous[run]!;
    const pays = own === -1 ? links.fresh : cover.weight[run]! - cover.price[own]!;
    price = Math.min(price, weight - pays);
  });
  return price;
}
