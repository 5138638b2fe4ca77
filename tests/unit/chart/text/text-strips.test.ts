import { describe, expect, it } from 'vitest';
import { cellText } from '../../../../shared/chart/text/cell-text.ts';
import { textStrips } from '../../../../shared/chart/text/text-strips.ts';

describe('a text on the chart', () => {
  it('is laid down in strips of knots side by side, its corner where it is put', () => {
    const strips = textStrips(cellText('E', 'small'), 10, 20, 7);
    expect([...strips]).toEqual(
      [
        [13, 20, 3, 7],
        [14, 20, 1, 7],
        [15, 20, 2, 7],
        [16, 20, 1, 7],
        [17, 20, 3, 7],
      ].flat(),
    );
  });

  it('covers each knot of the text once', () => {
    const text = cellText('Ærøskøbing\n& Łódź', 'tall', { align: 'middle' });
    const again = new Uint8Array(text.cells.length);
    const strips = textStrips(text, -3, -5, 255);
    for (let i = 0; i < strips.length; i += 4) {
      for (let c = 0; c < strips[i + 2]!; c++)
        again[(strips[i]! + 3) * text.columns + strips[i + 1]! + 5 + c]!++;
    }
    expect(again).toEqual(text.cells);
  });
});
