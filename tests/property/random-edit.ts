/** Random edits that a screen may make: strokes on any layer, reaching beyond the chart too, fields, yarns, several as one. */
import { BARE, codeOf, EMPTY } from '../../shared/design/codes.ts';
import { defaults } from '../../shared/design/defaults.ts';
import type { Design } from '../../shared/design/design.ts';
import { apply, type Edit, type Paint } from '../../shared/design/edits.ts';
import {
  addYarn,
  changeYarn,
  mergeYarns,
  removeYarn,
  replaceYarnEverywhere,
} from '../../shared/design/yarn-edits.ts';
import type { Result } from '../../shared/result.ts';
import { symbolAlphabet } from './arbitrary-design.ts';

/** From 0 up to, not including, 1. */
export type Random = () => number;

/** Always the same numbers from the same seed (mulberry32). */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export function whole(random: Random, below: number): number {
  return Math.floor(random() * below);
}

export function pick<T>(random: Random, from: readonly T[]): T {
  return from[whole(random, from.length)]!;
}

export function randomEdit(random: Random, design: Design): Edit {
  return pick(random, kinds)(random, design);
}

export function randomPaint(random: Random, design: Design): Paint {
  const codes = [EMPTY, BARE, ...design.yarns.map(({ id }) => codeOf(id))];
  const runs: number[] = [];
  let row = whole(random, design.rows);
  for (let left = 1 + whole(random, 6); left > 0; left--) {
    const column = whole(random, design.columns + 1);
    runs.push(row, column, 1 + whole(random, design.columns), pick(random, codes));
    row += whole(random, 3);
  }
  return { kind: 'paint', layer: pick(random, design.layers).id, runs: Uint16Array.from(runs) };
}

const kinds: readonly ((random: Random, design: Design) => Edit)[] = [
  randomPaint,
  randomPaint,
  randomPaint,
  randomPaint,
  (random) => ({ kind: 'set', field: 'title', value: `Title ${whole(random, 100)}` }),
  (random) => ({ kind: 'set', field: 'startCorner', value: pick(random, ['top-left', 'top-right']) }),
  (random) => ({ kind: 'set', field: 'cord', value: { ...defaults.cord, diameterMm: 1 + whole(random, 9) } }),
  (random) => ({
    kind: 'set',
    field: 'swatches',
    value: Array.from({ length: whole(random, 3) }, () => ({
      widthMm: 1 + whole(random, 200),
      cords: 20,
      heightMm: 100,
      rows: 21,
    })),
  }),
  (random, design) => ({ kind: 'set', field: 'ground', value: pick(random, design.yarns).id }),
  (random, design) =>
    possible(addYarn(design, symbolAlphabet, { ...defaults.yarns[0]!, name: `Yarn ${whole(random, 50)}` })),
  (random, design) =>
    possible(
      changeYarn(design, pick(random, design.yarns).id, {
        name: `Changed ${whole(random, 50)}`,
        symbol: pick(random, symbolAlphabet),
      }),
    ),
  (random, design) => possible(removeYarn(design, pick(random, design.yarns).id)),
  (random, design) => {
    const [from, to] = [pick(random, design.yarns).id, pick(random, design.yarns).id];
    return replaceYarnEverywhere(design, from, to);
  },
  (random, design) =>
    possible(mergeYarns(design, pick(random, design.yarns).id, pick(random, design.yarns).id)),
  (random, design) => {
    const edits: Edit[] = [];
    let next = design;
    for (let left = whole(random, 4); left > 0; left--) {
      const edit = randomPaint(random, next);
      edits.push(edit);
      next = apply(next, edit);
    }
    return { kind: 'together', edits };
  },
];

/** What the studio refuses is no edit: then nothing changes. */
function possible(edit: Result<Edit>): Edit {
  return edit.ok ? edit.value : { kind: 'together', edits: [] };
}
