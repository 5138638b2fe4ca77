import { describe, expect, it } from 'vitest';
import type { Chart } from '../../../shared/chart/chart.ts';
import { drawHanging } from '../../../shared/chart/hanging/draw-hanging.ts';
import { hungGeometry } from '../../../shared/chart/hanging/hung-geometry.ts';

import { BARE } from '../../../shared/design/codes.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import type { Item, PathItem } from '../../../shared/pattern/page/page.ts';
import { darker } from '../../../shared/pattern/page/tones.ts';
import { itemBounds } from '../../item-bounds.ts';

const box = { x: 20, y: 30, width: 100, height: 150 };
const colors = { 1: '#e6ddc9', 2: '#9e3329' };

function picture(columns: number, rows: number, codeAt: (row: number, column: number) => number): Item[] {
  const cells = Uint8Array.from({ length: columns * rows }, (_, i) =>
    codeAt(Math.floor(i / columns), i % columns),
  );
  const chart: Chart = { columns, rows, startCorner: 'top-left', cells };
  const design = { columns, rows, cord: defaults.cord, dowel: defaults.dowel, fringe: defaults.fringe };
  const gauge = { pitchMm: 5, rowHeightMm: 4.8 };
  const geometry = hungGeometry(design, gauge);
  return drawHanging({ chart, geometry, colors, cordColor: '#e6ddc9', box });
}

/** Separate strokes of a yarn's turns: those of its own colour. */
function turnsIn(items: readonly Item[], color: string): PathItem['steps'] {
  const path = items.find((item): item is PathItem => item.kind === 'path' && item.stroke === color);
  return path ? path.steps.filter(([letter]) => letter === 'M') : [];
}

describe('the picture of a hanging', () => {
  it('lies within its box', () => {
    for (const [columns, rows] of [
      [1, 1],
      [16, 12],
      [12, 90],
      [150, 200],
    ] as const) {
      for (const item of picture(columns, rows, () => 2)) {
        const at = itemBounds(item);
        expect(at.left).toBeGreaterThanOrEqual(box.x - 0.01);
        expect(at.right).toBeLessThanOrEqual(box.x + box.width + 0.01);
        expect(at.bottom).toBeLessThanOrEqual(box.y + box.height + 0.01);
        // The handles of the hanger's curve lie above the curve itself.
        if (item.kind !== 'path') expect(at.top).toBeGreaterThanOrEqual(box.y - 0.01);
      }
    }
  });

  it('has two turns for each knot', () => {
    const items = picture(10, 8, (r, c) => (c < 3 && r < 2 ? 2 : 1));
    expect(turnsIn(items, colors[2])).toHaveLength(6);
  });

  it('leans the turns with the row: up to the right where it goes right, down where it goes left', () => {
    const path = picture(4, 2, () => 2).find(
      (item): item is PathItem => item.kind === 'path' && item.stroke === colors[2],
    )!;
    const lean = (knot: number) => path.steps[2 * knot + 1]![2]! - path.steps[2 * knot]![2]!;
    expect(lean(0)).toBeLessThan(0);
    expect(lean(4)).toBeGreaterThan(0);
  });

  it('shows the cord where a cell is bare: nothing is drawn over it', () => {
    const items = picture(10, 8, (r) => (r === 3 ? BARE : 2));
    expect(turnsIn(items, colors[2])).toHaveLength(70);
    const cells = items.find((item) => item.kind === 'cells')!;
    expect(cells.kind === 'cells' && cells.inks[BARE]).toBeUndefined();
  });

  it('draws no single knots where they would be under 1.2 mm, so that large hangings stay small', () => {
    const items = picture(150, 200, (r, c) => 1 + (((r >> 4) + (c >> 4)) % 2));
    expect(items.filter((item) => item.kind === 'path' && item.stroke === colors[2])).toEqual([]);
    const steps = items.reduce((sum, item) => sum + (item.kind === 'path' ? item.steps.length : 0), 0);
    expect(steps).toBeLessThan(3000);
  });

  it('takes one path for each tone of a yarn', () => {
    const items = picture(30, 36, (r, c) => 1 + ((r + c) % 2));
    const strokes = items
      .filter((item): item is PathItem => item.kind === 'path')
      .map(({ stroke }) => stroke);
    expect(strokes.filter((stroke) => stroke === colors[2])).toHaveLength(1);
    expect(items.some((item) => item.kind === 'cells' && item.inks[2]?.fill === darker(colors[2], 0.3))).toBe(
      true,
    );
  });
});
