/** A design drawn from shapes: later shapes lie over earlier ones. */
import { codeOf, EMPTY } from '../design/codes.ts';
import { defaults } from '../design/defaults.ts';
import type { Design } from '../design/design.ts';
import { newDesign } from '../design/new-design.ts';
import type { Fringe, Yarn } from '../design/schema.ts';
import type { Shape } from './shapes.ts';

export interface Drawing {
  title: string;
  notes: string;
  columns: number;
  rows: number;
  /** Name, colour, symbol; the first is the ground. */
  yarns: readonly (readonly [string, string, string])[];
  fringe: Fringe;
  /** Each with the place of its yarn in `yarns`. */
  shapes: readonly (readonly [Shape, number])[];
}

/** Row height over pitch at the gauge that a new design starts with. */
const rowOverPitch = 4.8 / 5;

export function drawn({ title, notes, columns, rows, yarns, fringe, shapes }: Drawing): Design {
  const template = defaults.yarns[0]!;
  const list: Yarn[] = yarns.map(([name, color, symbol], i) => ({
    ...template,
    id: `y${i + 1}`,
    name,
    color,
    symbol,
  }));
  const design = newDesign({ title, columns, rows, yarns: list, designer: 'Larkrow' });
  const cells = Array.from({ length: rows }, (_, r) =>
    Uint8Array.from({ length: columns }, (_, c) => {
      const top = shapes.findLast(([shape]) => shape(c + 0.5, (r + 0.5) * rowOverPitch));
      return top ? codeOf(list[top[1]]!.id) : EMPTY;
    }),
  );
  const [ground, picture] = design.layers;
  return { ...design, notes, fringe, layers: [ground!, { ...picture!, rows: cells }] };
}
