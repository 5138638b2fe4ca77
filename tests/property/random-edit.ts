/**
 * Random edits that a screen may make: strokes on any layer, reaching beyond the chart too, fields, yarns, layers, sizes,
 * several as one.
 */

import { cutOf } from '../../shared/design/bundle-edits.ts';
import { BARE, codeOf, EMPTY } from '../../shared/design/codes.ts';
import { defaults } from '../../shared/design/defaults.ts';
import type { Design } from '../../shared/design/design.ts';
import { apply, type Edit, type Paint } from '../../shared/design/edits.ts';
import {
  addLayer,
  duplicateLayer,
  mergeDown,
  moveContent,
  moveLayer,
  removeLayer,
  renameLayer,
} from '../../shared/design/layer-edits.ts';
import {
  type Anchor,
  cropTo,
  deleteLines,
  insertLines,
  resizeTo,
  scaleTo,
  type Way,
} from '../../shared/design/size-edits.ts';
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

/** Another size of the chart, which stays small. */
export function randomSizeEdit(random: Random, design: Design): Edit {
  return pick(random, sizes)(random, design);
}

export function randomAnchor(random: Random): Anchor {
  return {
    across: pick(random, ['left', 'middle', 'right']),
    down: pick(random, ['top', 'middle', 'bottom']),
  };
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

/** The edit that changes nothing. */
const nothing: Edit = { kind: 'together', edits: [] };

type Kind = (random: Random, design: Design) => Edit;

const mostLines = 14;
const mostLayers = 6;
const ways: readonly Way[] = ['cords', 'rows'];

function linesOf({ columns, rows }: Design, way: Way): number {
  return way === 'cords' ? columns : rows;
}

function anyLayer(random: Random, design: Design): string {
  return pick(random, design.layers).id;
}

const sizes: readonly Kind[] = [
  (random, design) => {
    const way = pick(random, ways);
    const old = linesOf(design, way);
    const count = Math.min(1 + whole(random, 4), mostLines - old);
    return count < 1 ? nothing : possible(insertLines(design, way, whole(random, old + 1), count));
  },
  (random, design) => {
    const way = pick(random, ways);
    return possible(deleteLines(design, way, whole(random, linesOf(design, way)), 1 + whole(random, 3)));
  },
  (random, design) => {
    const top = whole(random, design.rows);
    const left = whole(random, design.columns);
    // Now and then beyond the chart's edge.
    const bottom = top + whole(random, design.rows);
    return possible(cropTo(design, { top, left, bottom, right: left + whole(random, design.columns) }));
  },
  (random, design) => possible(resizeTo(design, randomSize(random), randomAnchor(random))),
  (random, design) => possible(scaleTo(design, randomSize(random))),
];

function randomSize(random: Random): { columns: number; rows: number } {
  return { columns: 1 + whole(random, mostLines), rows: 1 + whole(random, mostLines) };
}

const layers: readonly Kind[] = [
  (random, design) =>
    design.layers.length < mostLayers ? possible(addLayer(design, anyLayer(random, design))) : nothing,
  (random, design) =>
    design.layers.length < mostLayers ? possible(duplicateLayer(design, anyLayer(random, design))) : nothing,
  (random, design) => possible(removeLayer(design, anyLayer(random, design))),
  (random, design) => possible(mergeDown(design, anyLayer(random, design))),
  (random, design) =>
    possible(moveLayer(design, anyLayer(random, design), whole(random, design.layers.length))),
  (random, design) => possible(renameLayer(design, anyLayer(random, design), `Layer ${whole(random, 50)}`)),
  (random, design) =>
    moveContent(design, anyLayer(random, design), whole(random, 7) - 3, whole(random, 7) - 3) ?? nothing,
  (random, design) => ({
    kind: 'set-layer',
    layer: anyLayer(random, design),
    field: pick(random, ['visible', 'locked']),
    value: random() < 0.7,
  }),
];

const kinds: readonly Kind[] = [
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
  (random) => ({
    kind: 'set',
    field: 'money',
    value: random() < 0.3 ? undefined : { hourlyRate: whole(random, 40), wholesale: 'keystone' },
  }),
  (random) => ({
    kind: 'set',
    field: 'pattern',
    value:
      random() < 0.3
        ? undefined
        : { parts: ['cover', 'chart'], texts: { welcome: `To ${whole(random, 9)}` } },
  }),
  (random, design) => cutOf(design, { yarn: pick(random, design.yarns).id, cutMm: 1524 }, whole(random, 9)),
  (random) => ({ kind: 'set-bundles', field: 'fitted', value: pick(random, [true, false, undefined]) }),
  (random) => ({
    kind: 'set-bundles',
    field: 'labelled',
    value: pick(random, [undefined, '0f'.repeat(32)]),
  }),
  (random) => ({
    kind: 'set-bundles',
    field: 'plan',
    value: pick(random, [
      undefined,
      { pitchMm: 5, rowHeightMm: 4.8, knots: [], rows: ['-'], of: 'e1'.repeat(32) },
    ]),
  }),
  (random) => ({
    kind: 'set',
    field: 'pins',
    value: Array.from({ length: whole(random, 3) }, () => ({
      kind: pick(random, ['cut', 'no-carry']),
      row: 1 + whole(random, 10),
      cord: 1 + whole(random, 10),
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
  ...layers,
  randomSizeEdit,
];

/** What the studio refuses is no edit: then nothing changes. */
function possible(edit: Result<Edit>): Edit {
  return edit.ok ? edit.value : nothing;
}
