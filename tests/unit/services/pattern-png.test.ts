import { createCanvas, loadImage, type SKRSContext2D } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { makeChartPng } from '../../../app/services/pattern/draw-png.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import { BARE, codeOf } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { copyOf, designForCopy } from '../../../shared/pattern/copy.ts';
import { layOutPicture, PICTURE_PX_PER_MM, pictureLimits } from '../../../shared/pattern/lay-out-picture.ts';
import type { CellsItem, Page } from '../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../shared/pattern/page/plain-items.ts';
import { designFromLetters } from '../../notation.ts';

function blockOf(page: Page): CellsItem {
  return page.items.find((item): item is CellsItem => item.kind === 'cells' && Boolean(item.alt))!;
}

async function pixelsOf(png: Uint8Array): Promise<{ pen: SKRSContext2D; width: number; height: number }> {
  const image = await loadImage(png);
  const pen = createCanvas(image.width, image.height).getContext('2d');
  pen.drawImage(image, 0, 0);
  return { pen, width: image.width, height: image.height };
}

/** The colours of a block of pixels, and how many there are of each. */
function colorsIn(
  pen: SKRSContext2D,
  x: number,
  y: number,
  width: number,
  height: number,
): Map<string, number> {
  const { data } = pen.getImageData(Math.round(x), Math.round(y), Math.round(width), Math.round(height));
  const counts = new Map<string, number>();
  for (let i = 0; i < data.length; i += 4) {
    const color = `#${[data[i]!, data[i + 1]!, data[i + 2]!].map((each) => each.toString(16).padStart(2, '0')).join('')}`;
    counts.set(color, (counts.get(color) ?? 0) + 1);
  }
  return counts;
}

describe('the chart as a PNG', { timeout: 30_000 }, () => {
  it('shows every cell in the colour of its yarn, and bare cells white', async () => {
    const design = designFromLetters(['aabbccd', 'abcdef-', '-------', 'ffeeddc']);
    const chart = flatten(design);
    const page = layOutPicture(design, chart, gaugeOf(design), copyOf(design));
    const block = blockOf(page);
    const { pen } = await pixelsOf(await makeChartPng(design));
    const colors = new Map(design.yarns.map(({ id, color }) => [codeOf(id), color]));
    for (let r = 0; r < chart.rows; r++) {
      for (let c = 0; c < chart.columns; c++) {
        const code = chart.cells[r * chart.columns + c]!;
        const x = (block.x + (c + 0.2) * block.cellWidth) * PICTURE_PX_PER_MM;
        const y = (block.y + (r + 0.2) * block.cellHeight) * PICTURE_PX_PER_MM;
        const inside = colorsIn(
          pen,
          x,
          y,
          block.cellWidth * 0.6 * PICTURE_PX_PER_MM,
          block.cellHeight * 0.6 * PICTURE_PX_PER_MM,
        );
        const fills = [...colors.values(), '#ffffff'].filter((color) => (inside.get(color) ?? 0) > 0);
        // The ink of a symbol may be white as well.
        expect(fills.filter((color) => color !== '#ffffff')).toEqual(code === BARE ? [] : [colors.get(code)]);
        if (code === BARE) expect(fills).toEqual(['#ffffff']);
      }
    }
  });

  it('is tied and printed as its copy: hand, inks and language', async () => {
    const design = designFromLetters(['abc', 'cab']);
    const copy = { ...copyOf(design), ink: 'grey', language: 'de', leftHanded: true } as const;
    const chart = flatten(designForCopy(design, copy));
    const page = layOutPicture(design, chart, gaugeOf(design), copy);
    const texts = plainItems(page.items).filter((item) => item.kind === 'text');
    expect(texts.map(({ text }) => text)).toContain('Legende');
    // Row 1 begins, and is numbered, at the right.
    expect(texts.filter(({ align }) => align === 'left').map(({ text }) => text)).toContain('1');
    const { pen, width, height } = await pixelsOf(await makeChartPng(design, copy));
    const colors = [...colorsIn(pen, 0, 0, width, (height * 2) / 3).keys()];
    const isOfYarn = (color: string) => design.yarns.some((yarn) => yarn.color === color);
    expect(colors.filter(isOfYarn)).toEqual([]);
  });

  it('has the size that was laid out', async () => {
    const design = designFromLetters(['ab', 'ba']);
    const page = layOutPicture(design, flatten(design), gaugeOf(design), copyOf(design));
    const { width, height } = await pixelsOf(await makeChartPng(design));
    expect(width).toBe(Math.ceil(page.widthMm * PICTURE_PX_PER_MM));
    expect(height).toBe(Math.ceil(page.heightMm * PICTURE_PX_PER_MM));
  });

  const sized = (columns: number, rows: number): Page => {
    const design: Design = newDesign({ title: 'Size', columns, rows });
    return layOutPicture(design, flatten(design), gaugeOf(design), copyOf(design));
  };

  it('keeps to its limits, and to cells of at least 4 px, for the largest chart there may be', () => {
    const page = sized(limits.columns, limits.rows);
    const { cellWidth, cellHeight } = blockOf(page);
    const [width, height] = [page.widthMm * PICTURE_PX_PER_MM, page.heightMm * PICTURE_PX_PER_MM];
    expect(Math.min(cellWidth, cellHeight) * PICTURE_PX_PER_MM).toBeGreaterThanOrEqual(4 - 1e-9);
    expect(width * height).toBeLessThanOrEqual(pictureLimits.pixels);
    expect(Math.max(width, height)).toBeLessThanOrEqual(pictureLimits.sidePx);
  });

  it('gives small charts large cells', () => {
    const { cellWidth, cellHeight } = blockOf(sized(30, 36));
    expect(Math.min(cellWidth, cellHeight) * PICTURE_PX_PER_MM).toBeCloseTo(pictureLimits.cellPx.most, 9);
  });
});
