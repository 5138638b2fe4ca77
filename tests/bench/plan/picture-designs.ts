/**
 * Designs of pictures that nobody here drew: general drawings of an open set (package `@iconify-json/noto`, Apache
 * licence 2.0), rendered, averaged to cells and matched to yarns as any picture that a maker brings in.
 */
import { icons } from '@iconify-json/noto';
import sharp from 'sharp';
import { defaults } from '../../../shared/design/defaults.ts';
import type { Design } from '../../../shared/design/design.ts';
import { averageCells } from '../../../shared/picture/average-cells.ts';
import { designFromPicture } from '../../../shared/picture/design-from-picture.ts';
import { pictureChart } from '../../../shared/picture/picture-chart.ts';
import { alphabet } from '../../../shared/yarn/symbols.ts';

/** Every one of these has shapes large and small; they were taken by their names, before any was planned. */
const names = [
  'fox',
  'owl',
  'peacock',
  'rooster',
  'parrot',
  'turtle',
  'snail',
  'tropical-fish',
  'hedgehog',
  'unicorn',
  'lady-beetle',
  'sunflower',
  'tulip',
  'mushroom',
  'cactus',
  'maple-leaf',
  'cherries',
  'grapes',
  'watermelon',
  'pear',
  'rainbow',
  'sunrise-over-mountains',
  'snow-capped-mountain',
  'hut',
];

/** Each picture at that size in at most `yarns` yarns. */
export async function pictureDesigns(columns: number, rows: number, yarns: number): Promise<Design[]> {
  const { width = 16, height = 16 } = icons;
  const designs: Design[] = [];
  for (const name of names) {
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="512" height="512">${icons.icons[name]!.body}</svg>`;
    const { data, info } = await sharp(Buffer.from(svg))
      .ensureAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const crop = { x: 0, y: 0, width: info.width, height: info.height };
    const cells = averageCells(data, info.width, info.height, crop, columns, rows, defaults.yarns[0]!.color);
    const symbols = alphabet.map(({ text }) => text);
    const chart = await pictureChart(cells, {
      choose: { count: yarns, symbols, like: defaults.yarns[0]! },
    });
    if (!chart.ok) throw new Error(chart.problem.sentence);
    designs.push(designFromPicture({ ...chart.value, title: name }));
  }
  return designs;
}
