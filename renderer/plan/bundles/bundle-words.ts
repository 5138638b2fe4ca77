/** What the Bundles leaf says of pieces, of what is cut already, and what cutting to measure saves. */

import type { CutPieces } from '../../../shared/design/bundle-edits.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import type { Bundle, Bundles } from '../../../shared/materials/bundles/bundles.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatCutLength } from '../../../shared/units/cut-length.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import type { Units } from '../../../shared/units/units.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';

/** '212 pieces of 5 yarns: 323.1 m.' */
export function bundlesWords({ bundles, pieces, totalMm }: Bundles, units: Units): string {
  const yarns = new Set(bundles.map(({ yarn }) => yarn)).size;
  const length = formatYarnLength(totalMm, units, { enough: true });
  return `${counted(pieces, 'piece')} of ${counted(yarns, 'yarn')}: ${length}.`;
}

/** 'Cutting to measure takes 41.2 m less, 13 %.' */
export function savingWords({ savedMm, totalMm }: Bundles, units: Units): string {
  if (savedMm <= 0) return 'Cutting to measure would save nothing: every piece is used to its end.';
  const share = formatPercent(savedMm / (totalMm + savedMm));
  return `Cutting to measure takes ${formatYarnLength(savedMm, units, { spare: true })} less, ${share}.`;
}

/** The row where the bundle comes in, and the one where its last piece does: 'row 4', 'rows 4 to 31'. */
export function rowsWords({ pieces }: Bundle): string {
  const first = pieces[0]?.row;
  const last = pieces.at(-1)?.row;
  return first === last ? `row ${first}` : `rows ${first} to ${last}`;
}

/** '12 are cut', '2 more are cut': where it is not as many as the bundle has. */
export function cutWords(cut: number, { pieces }: Pick<Bundle, 'pieces'>): string {
  const more = cut - pieces.length;
  return more > 0
    ? `${more.toLocaleString('en')} more ${are(more)} cut`
    : `${cut.toLocaleString('en')} ${are(cut)} cut`;
}

/** Pieces that were cut for another plan: '…: 12 pieces of Tide at 152.4 cm; 3 pieces of Moss at 80 cm. …' */
export function spareWords(
  spare: readonly CutPieces[],
  yarns: readonly Pick<Yarn, 'id' | 'name'>[],
  units: Units,
): string {
  const each = spare.map(({ yarn, cutMm, pieces }) => {
    const name = yarns.find(({ id }) => id === yarn)?.name ?? 'a yarn that is gone';
    return `${counted(pieces, 'piece')} of ${name} at ${formatCutLength(cutMm, units)}`;
  });
  return `Cut for another plan, or in another way, and not in this list: ${each.join('; ')}. They may serve as shorter ones.`;
}

/** `fits`: the cut list is the one that labels were printed for. */
export function labelsWords(fits: boolean): string {
  return fits
    ? 'The labels printed last are of just these bundles.'
    : 'The plan, or how pieces are cut, has changed since labels were printed: they no longer fit. Print them anew.';
}

function are(count: number): string {
  return count === 1 ? 'is' : 'are';
}

/** Numbers as ranges: '1-3, 5, 9-12'. */
export function numbersWords({ pieces }: Bundle): string {
  const ranges: [first: number, last: number][] = [];
  for (const { number } of pieces) {
    const range = ranges.at(-1);
    if (range && range[1] === number - 1) range[1] = number;
    else ranges.push([number, number]);
  }
  return ranges.map(([first, last]) => (first === last ? String(first) : `${first}-${last}`)).join(', ');
}
