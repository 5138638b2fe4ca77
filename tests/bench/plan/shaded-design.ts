import { yarnIdOf } from '../../../shared/design/codes.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import type { Design } from '../../../shared/design/design.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import { alphabet } from '../../../shared/yarn/symbols.ts';

/**
 * A design as a photograph gives it: soft shades that roll over the chart in ten yarns, with grain, so that a run is
 * two to three knots long. The same cells each time.
 */
export function shadedDesign(columns: number, rows: number): Design {
  const yarns = Array.from({ length: count }, (_, i) => ({
    ...defaults.yarns[0]!,
    id: yarnIdOf(i + 1),
    name: `Shade ${i + 1}`,
    symbol: alphabet[i]!.text,
  }));
  const design = newDesign({ title: 'Shaded', columns, rows, yarns });
  let state = 11;
  const grain = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32 - 0.5;
  };
  const cells = Array.from({ length: rows }, (_, row) =>
    Uint8Array.from({ length: columns }, (__, column) => {
      const roll = Math.sin(row / 17 + Math.sin(column / 23) * 2) + Math.sin(column / 13 + row / 31);
      const shade = Math.floor(((roll + 2) / 4) * count + grain() * 1.1);
      return 1 + Math.max(0, Math.min(count - 1, shade));
    }),
  );
  return { ...design, layers: [{ ...design.layers[0]!, rows: cells }] };
}

const count = 10;
