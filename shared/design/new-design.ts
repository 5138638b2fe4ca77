/** A new design: one layer filled with ground, and an empty one to draw on above it. */
import { codeOf, EMPTY } from './codes.ts';
import { defaults } from './defaults.ts';
import type { Design } from './design.ts';
import type { Yarn } from './schema.ts';
import { sizeFault } from './size-fault.ts';

export interface NewDesign {
  title: string;
  columns: number;
  rows: number;
  /** The first yarn is the ground. */
  yarns?: readonly Yarn[];
  designer?: string;
  startCorner?: Design['startCorner'];
}

/** Throws where the size is outside the limits: `sizeFault` tells before, in words. */
export function newDesign({
  title,
  columns,
  rows,
  yarns,
  designer = '',
  startCorner = 'top-left',
}: NewDesign): Design {
  const fault = sizeFault(columns, rows, 2);
  if (fault) throw new Error(fault);
  const list = yarns ?? defaults.yarns;
  const ground = list[0];
  if (!ground) throw new Error('a new design needs at least its ground yarn');
  return {
    title,
    designer,
    notes: '',
    startCorner,
    columns,
    rows,
    cord: defaults.cord,
    dowel: defaults.dowel,
    fringe: defaults.fringe,
    swatches: [],
    tying: defaults.tying,
    rates: defaults.rates,
    yarnMargin: defaults.yarnMargin,
    ground: ground.id,
    yarns: [...list],
    layers: [
      {
        id: 'ground',
        name: 'Ground',
        visible: true,
        locked: false,
        rows: filled(columns, rows, codeOf(ground.id)),
      },
      { id: 'picture', name: 'Picture', visible: true, locked: false, rows: filled(columns, rows, EMPTY) },
    ],
    reference: null,
  };
}

function filled(columns: number, rows: number, code: number): Uint8Array[] {
  return Array.from({ length: rows }, () => new Uint8Array(columns).fill(code));
}
