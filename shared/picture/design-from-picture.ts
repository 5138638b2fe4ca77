/** A picture's cells as a new design to go on drawing in: a layer filled with ground, the picture above it. */
import type { YarnId } from '../design/codes.ts';
import type { Design } from '../design/design.ts';
import { newDesign } from '../design/new-design.ts';
import type { Yarn } from '../design/schema.ts';
import { mostUsedYarn } from './most-used-yarn.ts';

export interface DesignFromPicture {
  readonly title: string;
  readonly columns: number;
  readonly rows: number;
  /** Codes by row, left to right; each is that of one of `yarns`. */
  readonly cells: Uint8Array;
  readonly yarns: readonly Yarn[];
  /** Designer, start corner, cord, dowel, fringe, swatches and rates are taken over from it. */
  readonly template?: Design;
}

/**
 * The ground is the template's own ground yarn where that is among the yarns, else the yarn that covers the most.
 * Throws where the size is outside the limits, or cells and size don't agree.
 */
export function designFromPicture(picture: DesignFromPicture): Design {
  const { title, columns, rows, cells, yarns, template } = picture;
  if (cells.length !== columns * rows) {
    throw new Error(`${cells.length} cells are no picture of ${columns} cords and ${rows} rows`);
  }
  const groundId = groundOf(picture);
  const ground = yarns.find(({ id }) => id === groundId);
  if (!ground) throw new Error(`the ground ${groundId} is not in the list of yarns`);
  // The ground comes first only to make the design: the list keeps its order.
  const design = newDesign({
    title,
    columns,
    rows,
    yarns: [ground, ...yarns.filter((each) => each !== ground)],
  });
  const [groundLayer, pictureLayer] = design.layers;
  const sheet = { ...pictureLayer!, rows: rowsOf(cells, columns) };
  const settings = template ? settingsOf(template) : {};
  return { ...design, ...settings, yarns: [...yarns], layers: [groundLayer!, sheet] };
}

function groundOf({ cells, yarns, template }: DesignFromPicture): YarnId | undefined {
  const own = template?.yarns.find(({ id }) => id === template.ground);
  const kept =
    own && yarns.find(({ id, name, color }) => id === own.id && name === own.name && color === own.color);
  return kept?.id ?? mostUsedYarn(cells) ?? yarns[0]?.id;
}

function settingsOf({
  designer,
  startCorner,
  cord,
  dowel,
  fringe,
  swatches,
  tying,
  rates,
  yarnMargin,
  money,
}: Design) {
  return { designer, startCorner, cord, dowel, fringe, swatches, tying, rates, yarnMargin, money };
}

function rowsOf(cells: Uint8Array, columns: number): Uint8Array[] {
  const rows: Uint8Array[] = [];
  for (let at = 0; at < cells.length; at += columns) rows.push(cells.slice(at, at + columns));
  return rows;
}
