/**
 * A small chart to tie as a swatch: with the hanging's cord, its ground, and the other yarn that it uses most. Its upper
 * half is ground alone, so that the yarn per knot can be measured on whole rows; in the lower half stands a block of
 * the other yarn, so that the hand meets a colour change as it will in the picture.
 */
import { flatten } from '../chart/chart.ts';
import { codeOf, isYarn, yarnIdOf } from '../design/codes.ts';
import type { Design, Layer } from '../design/design.ts';
import { limits } from '../design/limits.ts';
import { newDesign } from '../design/new-design.ts';
import type { Yarn } from '../design/schema.ts';
import { gaugeOf } from './gauge.ts';

/** About 10 cm each way: gauges are told by it, and a slip of a millimetre is then one in a hundred. */
const sideMm = 100;
/** An even number, so that no leg is spare and the last row ends where the first began. */
const fewest = 12;
const most = 40;
const fringeMm = 50;

/** A design of its own, of one layer, without swatches' results: those are entered in the hanging's design. */
export function swatchDesign(design: Design): Design {
  const gauge = gaugeOf(design);
  const columns = evenCount(sideMm / gauge.pitchMm);
  const rows = evenCount(sideMm / gauge.rowHeightMm);
  const ground = design.yarns.find(({ id }) => id === design.ground)!;
  const other = otherYarn(design);
  const plain = newDesign({
    title: `Swatch for ${design.title}`.slice(0, limits.nameChars),
    designer: design.designer,
    columns,
    rows,
    yarns: other ? [ground, other] : [ground],
    startCorner: design.startCorner,
  });
  const { cord, dowel, swatches, tying, rates, yarnMargin } = design;
  const layers = [{ ...plain.layers[0]!, rows: cellsOf(columns, rows, ground, other) } satisfies Layer];
  const fringe = { shape: 'straight' as const, longMm: fringeMm, shortMm: fringeMm };
  return { ...plain, cord, dowel, fringe, swatches, tying, rates, yarnMargin, layers };
}

function evenCount(count: number): number {
  return Math.min(most, Math.max(fewest, 2 * Math.round(count / 2)));
}

/** The yarn beside the ground that ties most cells of the chart; where the chart has none, the next in the list. */
function otherYarn(design: Design): Yarn | undefined {
  const counts = new Map<string, number>();
  for (const code of flatten(design).cells) {
    if (isYarn(code)) counts.set(yarnIdOf(code), (counts.get(yarnIdOf(code)) ?? 0) + 1);
  }
  const others = design.yarns.filter(({ id }) => id !== design.ground);
  return others.toSorted((a, b) => (counts.get(b.id) ?? 0) - (counts.get(a.id) ?? 0))[0];
}

/** The block stands away from all edges. */
function cellsOf(columns: number, rows: number, ground: Yarn, other: Yarn | undefined): Uint8Array[] {
  const left = Math.floor(columns / 4);
  return Array.from({ length: rows }, (_, row) => {
    const cells = new Uint8Array(columns).fill(codeOf(ground.id));
    const isBlock = row >= rows / 2 && row < rows - 2;
    if (other && isBlock) cells.fill(codeOf(other.id), left, columns - left);
    return cells;
  });
}
