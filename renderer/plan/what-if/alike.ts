/** Which variants come to the same hanging, tied in the same way: whatever changes led there. */
import type { Weighable } from './weigh.worker.ts';

/**
 * For each key the first one before it that is the same; none for those that are like no other before them. `all` in the
 * order in which they stand, the hanging as it is first.
 */
export function alike(all: readonly Weighable[]): Readonly<Record<string, string>> {
  const first: Weighable[] = [];
  const found: Record<string, string> = {};
  for (const one of all) {
    const before = first.find((each) => isSame(each, one));
    if (before) found[one.key] = before.key;
    else first.push(one);
  }
  return found;
}

function isSame({ design: a, chart: charted }: Weighable, { design: b, chart }: Weighable): boolean {
  // Layers may differ under the same picture; and nothing else of a design is varied.
  return (
    JSON.stringify([a.tying, a.swatches, a.yarns]) === JSON.stringify([b.tying, b.swatches, b.yarns]) &&
    charted.cells.every((code, i) => chart.cells[i] === code)
  );
}
