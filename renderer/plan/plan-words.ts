/** What the Plan screen says of strands, rows and cells. Rows and cords count from 1. */

import { counted } from '../../shared/units/counted.ts';
import type { Units } from '../../shared/units/units.ts';
import { formatYarnLength } from '../../shared/units/yarn-length.ts';
import type { StrandFacts } from './plans/strand-facts.ts';

/** 'Moss, strand 3: pieces 1-2, rows 4 to 18, 212 knots, 7.9 m; carried 5 times, …; ends at row 18, cord 7'. */
export function strandWords(facts: StrandFacts, yarn: string, units: Units, isEstimate: boolean): string {
  const { start, end, knots, usedMm } = facts;
  const rows = start.row === end.row ? `row ${start.row}` : `rows ${start.row} to ${end.row}`;
  const length = `${isEstimate ? '≈ ' : ''}${formatYarnLength(usedMm, units)}`;
  return [
    `${yarn}, strand ${facts.number}: ${piecesWords(facts.pieces)}, ${rows}, ${counted(knots, 'knot')}, ${length}`,
    carriedWords(facts),
    `ends at row ${end.row}, cord ${end.cord}`,
  ].join('; ');
}

/** 'piece 4', 'pieces 1-3', 'pieces 2, 5-6 and 9'. */
export function piecesWords(pieces: readonly number[]): string {
  const ranges: [first: number, last: number][] = [];
  for (const piece of pieces) {
    const range = ranges.at(-1);
    if (range && range[1] === piece - 1) range[1] = piece;
    else ranges.push([piece, piece]);
  }
  const words = ranges.map(([first, last]) => (first === last ? String(first) : `${first}-${last}`));
  const list = words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
  return `${pieces.length === 1 ? 'piece' : 'pieces'} ${list}`;
}

function carriedWords({ carries, longestCords, longestRows }: StrandFacts): string {
  if (carries === 0) return 'never carried';
  const longest = reachWords(longestCords, longestRows);
  return carries === 1 ? `carried once, ${longest}` : `carried ${carries} times, at most ${longest}`;
}

/** '6 cords', '2 rows down', '6 cords and 2 rows down'. */
export function reachWords(cords: number, rows: number): string {
  const across = cords > 0 ? [counted(cords, 'cord')] : [];
  const down = rows > 0 ? [`${counted(rows, 'row')} down`] : [];
  return [...across, ...down].join(' and ');
}

const nothing = {
  tie: 'there is nothing to tie',
  plan: 'there is nothing to plan',
  cut: 'there is nothing to cut',
  take: 'it takes no yarn',
} as const;

/** Of a design without a knot: what follows from that, and what to do. */
export function nothingTied(then: keyof typeof nothing): string {
  return `Every cell is bare, so ${nothing[then]} yet. Draw on the Draw screen.`;
}
