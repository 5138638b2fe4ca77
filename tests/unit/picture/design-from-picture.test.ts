import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import { readDesign } from '../../../shared/design/read-design.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { designFromPicture } from '../../../shared/picture/design-from-picture.ts';
import { lettersOf } from '../../notation.ts';

const chosen: Yarn[] = [
  { ...defaults.yarns[0]!, id: 'y1', name: 'Blue', color: '#3050a0', symbol: 'a' },
  { ...defaults.yarns[0]!, id: 'y2', name: 'Cream', color: '#f0e8d8', symbol: 'b' },
];
const picture = {
  title: 'Ferry',
  columns: 3,
  rows: 2,
  cells: Uint8Array.from([1, 1, 2, 2, 1, 1]),
  yarns: chosen,
};

describe('a design from a picture', () => {
  it('has a sheet of ground below and the picture above', () => {
    const design = designFromPicture(picture);
    expect(design.layers.map(({ id, name }) => [id, name])).toEqual([
      ['ground', 'Ground'],
      ['picture', 'Picture'],
    ]);
    expect(lettersOf(design, 0)).toEqual(['aaa', 'aaa']);
    expect(lettersOf(design, 1)).toEqual(['aab', 'baa']);
    expect([...flatten(design).cells]).toEqual([...picture.cells]);
  });

  it('takes the yarn that covers the most as ground, and keeps the order of the list', () => {
    const design = designFromPicture({ ...picture, cells: Uint8Array.from([1, 2, 2, 2, 1, 2]) });
    expect(design.ground).toBe('y2');
    expect(design.yarns).toEqual(chosen);
    expect(lettersOf(design, 0)).toEqual(['bbb', 'bbb']);
  });

  it("keeps the design's own ground where its yarns were used", () => {
    const template = { ...newDesign({ title: 'Old', columns: 1, rows: 1 }), ground: 'y6' as const };
    const cells = Uint8Array.from([1, 1, 1, 2, 2, 6]);
    expect(designFromPicture({ ...picture, cells, yarns: template.yarns, template }).ground).toBe('y6');
    expect(designFromPicture({ ...picture, template }).ground).toBe('y1');
  });

  it('takes over how the hanging is made, not what it is called or shows', () => {
    const old = newDesign({
      title: 'Old',
      columns: 9,
      rows: 9,
      designer: 'Ada Wren',
      startCorner: 'top-right',
    });
    const template = {
      ...old,
      notes: 'for the hall',
      cord: { ...old.cord, diameterMm: 5 },
      swatches: [{ widthMm: 100, cords: 20, heightMm: 96, rows: 20 }],
      tying: { ...old.tying, tailMm: 80 },
      yarnMargin: 0.2,
    };
    const { cord, swatches, tying, yarnMargin, designer, startCorner } = template;
    const design = designFromPicture({ ...picture, template });
    expect(design).toMatchObject({ cord, swatches, tying, yarnMargin, designer, startCorner });
    expect(design).toMatchObject({ title: 'Ferry', notes: '', columns: 3, rows: 2 });
  });

  it('can be saved and opened again', () => {
    const design = designFromPicture(picture);
    expect(readDesign(writeDesign(design))).toMatchObject({ ok: true, value: design });
  });

  it('refuses cells that are not as many as the chart has', () => {
    expect(() => designFromPicture({ ...picture, rows: 3 })).toThrow('6 cells');
  });
});
