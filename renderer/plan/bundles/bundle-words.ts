/** What the Bundles leaf says of pieces and what cutting to measure saves. */
import type { Bundle, Bundles } from '../../../shared/materials/bundles/bundles.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import type { Units } from '../../../shared/units/units.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import { counted } from '../plan-words.ts';

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
  return `Cutting to measure takes ${formatYarnLength(savedMm, units)} less, ${share}.`;
}

/** The row where the bundle comes in, and the one where its last piece does: 'row 4', 'rows 4 to 31'. */
export function rowsWords({ pieces }: Bundle): string {
  const first = pieces[0]?.row;
  const last = pieces.at(-1)?.row;
  return first === last ? `row ${first}` : `rows ${first} to ${last}`;
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
