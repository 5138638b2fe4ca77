/**
 * The ways to have tied a strand up to some run that may still turn out best: for each, how much the piece in hand
 * has used of its room, and what the strand has cost so far. A way that has used more and cost no less is dropped; so
 * is one that costs as much as the cheapest with a fresh piece on top, since a fresh piece may begin at the next run.
 *
 * How a run is tied needs no choice: the piece is used until it runs out. To begin a piece earlier within the run, or
 * one piece more, never pays: a fresh piece at the next run would have more room for the same price, and save the
 * carry. So each way into a run gives one way out, and all choice lies in where a strand is cut instead of carried.
 *
 * Only where the maker has pinned the carry to the next run is a strand never cut there. Then room in the piece is
 * worth a piece more: the run's last knot may be tied with a fresh one, and no way is dropped for being dear.
 *
 * The same holds read backwards, from the end of a strand, since a run tied with the fewest pieces may have its short
 * piece at either end.
 */

/** Ways as two columns of numbers, the room used rising, the cost falling. In tenths. */
export interface OpenPieces {
  size: number;
  readonly used: number[];
  readonly cost: number[];
  /** For each way, the place of the way before it, -1 where a fresh piece began at this run. */
  readonly origin: number[];
}

export function noPieces(): OpenPieces {
  return { size: 0, used: [], cost: [], origin: [] };
}

/** The cheapest of the ways: what the strand costs if it ends here. */
export function closedCost({ size, cost }: OpenPieces): number {
  return cost[size - 1]!;
}

/** What all runs of a yarn have in common, in tenths. */
export interface YarnToTie {
  readonly knot: number;
  /** What a piece holds. */
  readonly room: number;
  readonly attach: number;
}

/** Which links of a run are pinned: the one that it is reached over, and the one that leads on from it. */
export interface Held {
  readonly here: boolean;
  readonly onward: boolean;
}

const free: Held = { here: false, onward: false };

/** The first run of a strand. */
export function beginPieces(into: OpenPieces, knots: number, yarn: YarnToTie, held: Held = free): void {
  into.size = 0;
  addWay(into, 0, yarn.attach, -1, knots, yarn, held);
}

/**
 * Fills `into` with the ways after a run of so many knots, reached from those of `before` over a link. In tenths. There
 * is none only where a pinned carry is too long for every way.
 */
export function tieOpenPieces(
  into: OpenPieces,
  before: OpenPieces,
  carry: number,
  link: number,
  knots: number,
  yarn: YarnToTie,
  held: Held = free,
): void {
  into.size = 0;
  if (!held.here) addWay(into, 0, closedCost(before) + yarn.attach, -1, knots, yarn, held);
  for (let way = 0; way < before.size; way++) {
    addWay(into, before.used[way]! + carry, before.cost[way]! + link, way, knots, yarn, held);
  }
  if (!held.onward) dropHopeless(into, yarn.attach);
}

/** Ties a run with a piece that has used so much: on, until it runs out, and then with as few more as it takes. */
function addWay(
  into: OpenPieces,
  used: number,
  cost: number,
  origin: number,
  knots: number,
  { knot, room, attach }: YarnToTie,
  { onward }: Held,
): void {
  const tied = used + knots * knot;
  let joins = 0;
  if (tied <= room) insert(into, tied, cost, origin);
  else {
    const fit = Math.floor((room - used) / knot);
    if (fit < 1) return;
    const perPiece = Math.floor(room / knot);
    joins = Math.ceil((knots - fit) / perPiece);
    insert(into, (knots - fit - (joins - 1) * perPiece) * knot, cost + joins * attach, origin);
  }
  // Worse than the way above where that one's last piece holds a single knot too, and then it is not kept.
  if (onward && knots > 1) insert(into, knot, cost + (joins + 1) * attach, origin);
}

/** Puts a way in its place, unless another has used no more and cost no more; drops those that it is better than. */
function insert(into: OpenPieces, used: number, cost: number, origin: number): void {
  let at = 0;
  while (at < into.size && into.used[at]! < used) at++;
  if (at > 0 && into.cost[at - 1]! <= cost) return;
  if (at < into.size && into.used[at] === used && into.cost[at]! <= cost) return;
  let end = at;
  while (end < into.size && into.cost[end]! >= cost) end++;
  const kept = into.size - end;
  if (end === at) {
    for (let k = into.size; k > at; k--) copy(into, k - 1, k);
  } else {
    for (let k = 0; k < kept; k++) copy(into, end + k, at + 1 + k);
  }
  into.used[at] = used;
  into.cost[at] = cost;
  into.origin[at] = origin;
  into.size = at + 1 + kept;
}

function copy({ used, cost, origin }: OpenPieces, from: number, to: number): void {
  used[to] = used[from]!;
  cost[to] = cost[from]!;
  origin[to] = origin[from]!;
}

/** Ways are cheaper the more they have used, so the dear ones stand first. */
function dropHopeless(into: OpenPieces, attach: number): void {
  const most = closedCost(into) + attach;
  let first = 0;
  while (first < into.size - 1 && into.cost[first]! >= most) first++;
  if (first === 0) return;
  for (let k = first; k < into.size; k++) copy(into, k, k - first);
  into.size -= first;
}
