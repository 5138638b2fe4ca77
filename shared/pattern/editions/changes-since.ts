/** What changed between two states of a pattern: as data, told by `words/edition-words.ts`. */

import type { PatternPart } from '../../design/pattern-schema.ts';
import { codesAllowed, readRow } from '../../design/row-text.ts';
import type { Edition, PatternSettings } from '../../design/schema.ts';
import { chosenParts } from '../chosen-parts.ts';

type Made = Edition['made'];

export type PatternText = keyof NonNullable<PatternSettings['texts']>;

export type Change =
  | { readonly kind: 'title'; readonly from: string; readonly to: string }
  | { readonly kind: 'size'; readonly from: Size; readonly to: Size }
  /** Cells that are tied otherwise, in rows from 1; only where the size is the same. */
  | { readonly kind: 'cells'; readonly count: number; readonly rows: readonly Stretch[] }
  | { readonly kind: 'start-corner' }
  | { readonly kind: 'yarn-added' | 'yarn-gone'; readonly name: string }
  | { readonly kind: 'yarn-renamed'; readonly from: string; readonly to: string }
  | { readonly kind: 'yarn-colour' | 'yarn-symbol' | 'yarn-figures'; readonly name: string }
  | { readonly kind: 'designer' | 'cord' | 'dowel' | 'fringe' | 'gauge' | 'tying' | 'margin' }
  /** Whether pieces are cut to measure; the times that hours follow from. */
  | { readonly kind: 'fitted' | 'rates' }
  /** Parts that are printed since, or no more. */
  | { readonly kind: 'parts-added' | 'parts-gone'; readonly parts: readonly PatternPart[] }
  | { readonly kind: 'parts-order' }
  | { readonly kind: 'text'; readonly text: PatternText }
  /** The photograph of the cover. */
  | { readonly kind: 'cover' }
  /** How a copy is printed that is not asked for otherwise. */
  | { readonly kind: 'copy' }
  /** The same chart and settings, planned otherwise. */
  | { readonly kind: 'plan' };

interface Size {
  readonly columns: number;
  readonly rows: number;
}

/** Rows from one to another, both told. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export function changesSince(before: Made, now: Made): Change[] {
  const chart = ofChart(before, now);
  const settings = ofSettings(before, now);
  const planned = chart.length === 0 && settings.every(({ kind }) => !movesPlan.has(kind));
  return [
    ...(before.title === now.title ? [] : [{ kind: 'title', from: before.title, to: now.title } as const]),
    ...chart,
    ...ofYarns(before, now),
    ...settings,
    ...ofPattern(before.pattern, now.pattern),
    ...(planned && !same(before.plan.rows, now.plan.rows) ? [{ kind: 'plan' } as const] : []),
  ];
}

/** Where one of these has changed it goes without saying that the plan has too. */
const movesPlan = new Set<Change['kind']>(['gauge', 'tying', 'cord', 'start-corner']);

function ofChart(before: Made, now: Made): Change[] {
  const from = { columns: before.columns, rows: before.chart.length };
  const to = { columns: now.columns, rows: now.chart.length };
  if (!same(from, to)) return [{ kind: 'size', from, to }];
  const rows: number[] = [];
  let count = 0;
  for (const [r, text] of now.chart.entries()) {
    const cells = differing(before, r, now, text);
    count += cells;
    if (cells > 0) rows.push(r + 1);
  }
  return count === 0 ? [] : [{ kind: 'cells', count, rows: stretches(rows) }];
}

function differing(before: Made, r: number, now: Made, text: string): number {
  if (before.chart[r] === text) return 0;
  const was = readRow(before.chart[r]!, before.columns, codesAllowed(before.yarns));
  const is = readRow(text, now.columns, codesAllowed(now.yarns));
  // A row that can't be read is told as changed altogether.
  if (typeof was === 'string' || typeof is === 'string') return now.columns;
  return is.reduce((sum, code, c) => sum + (code === was[c] ? 0 : 1), 0);
}

function stretches(rows: readonly number[]): Stretch[] {
  const list: { from: number; to: number }[] = [];
  for (const row of rows) {
    const last = list.at(-1);
    if (last && last.to === row - 1) last.to = row;
    else list.push({ from: row, to: row });
  }
  return list;
}

function ofYarns(before: Made, now: Made): Change[] {
  const was = new Map(before.yarns.map((yarn) => [yarn.id, yarn]));
  const ids = new Set(now.yarns.map(({ id }) => id));
  return [
    ...now.yarns.flatMap((yarn): Change[] => {
      const old = was.get(yarn.id);
      if (!old) return [{ kind: 'yarn-added', name: yarn.name }];
      const { name } = yarn;
      const figures = ['diameterMm', 'metresPer100G', 'skeinG'] as const;
      return [
        ...(old.name === name ? [] : [{ kind: 'yarn-renamed', from: old.name, to: name } as const]),
        ...(old.color === yarn.color ? [] : [{ kind: 'yarn-colour', name } as const]),
        ...(old.symbol === yarn.symbol ? [] : [{ kind: 'yarn-symbol', name } as const]),
        ...(figures.every((key) => old[key] === yarn[key]) ? [] : [{ kind: 'yarn-figures', name } as const]),
      ];
    }),
    ...before.yarns.filter(({ id }) => !ids.has(id)).map(({ name }): Change => ({ kind: 'yarn-gone', name })),
  ];
}

function ofSettings(before: Made, now: Made): Change[] {
  const compared = [
    ['designer', before.designer, now.designer],
    ['start-corner', before.startCorner, now.startCorner],
    ['cord', before.cord, now.cord],
    ['dowel', before.dowel, now.dowel],
    ['fringe', before.fringe, now.fringe],
    ['gauge', before.swatches, now.swatches],
    ['tying', before.tying, now.tying],
    ['margin', before.yarnMargin, now.yarnMargin],
    ['fitted', before.fitted, now.fitted],
    ['rates', before.rates, now.rates],
  ] as const;
  return compared.flatMap(([kind, was, is]): Change[] => (isUnknown(was) || same(was, is) ? [] : [{ kind }]));
}

/** An edition that was published before this was kept does not tell whether it changed. */
function isUnknown(was: unknown): was is undefined {
  return was === undefined;
}

function ofPattern(before: Made['pattern'], now: Made['pattern'] = {}): Change[] {
  if (isUnknown(before)) return [];
  const [was, is] = [before, now].map((pattern) => chosenParts({ pattern })) as [Parts, Parts];
  const added = is.filter((part) => !was.includes(part));
  const gone = was.filter((part) => !is.includes(part));
  const both = (parts: Parts, others: Parts) => parts.filter((part) => others.includes(part));
  const texts = Object.keys({ ...before.texts, ...now.texts }) as PatternText[];
  return [
    ...(added.length > 0 ? [{ kind: 'parts-added', parts: added } as const] : []),
    ...(gone.length > 0 ? [{ kind: 'parts-gone', parts: gone } as const] : []),
    ...(same(both(was, is), both(is, was)) ? [] : [{ kind: 'parts-order' } as const]),
    ...texts
      .filter((text) => before.texts?.[text] !== now.texts?.[text])
      .map((text) => ({ kind: 'text', text }) as const),
    ...(same(before.cover, now.cover) ? [] : [{ kind: 'cover' } as const]),
    ...(same(before.copy ?? {}, now.copy ?? {}) ? [] : [{ kind: 'copy' } as const]),
  ];
}

type Parts = readonly PatternPart[];

/** Values of plain JSON. */
function same(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const left = Object.entries(a).filter(([, value]) => value !== undefined);
  const right = new Map(Object.entries(b).filter(([, value]) => value !== undefined));
  return (
    left.length === right.size && left.every(([key, value]) => right.has(key) && same(value, right.get(key)))
  );
}
