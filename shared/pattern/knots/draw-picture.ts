/** The strands of a picture as items at its place on the page. */
import type { PathItem, PathStep } from '../page/page.ts';
import { drawStrands } from './draw-strands.ts';
import type { Picture } from './picture.ts';

/** Where the picture's x = 0 and y = 0 come to stand, in mm on the page, and how much larger than usual it is drawn. */
export interface PicturePlace {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

export function drawPicture({ strands }: Picture, place: PicturePlace): PathItem[] {
  const { scale } = place;
  return drawStrands(strands).map((item) => ({
    ...item,
    ...(item.strokeMm !== undefined && { strokeMm: fine(item.strokeMm * scale) }),
    ...(item.dashMm && { dashMm: item.dashMm.map((each) => fine(each * scale)) }),
    steps: item.steps.map((step) => moved(step, place)),
  }));
}

function moved(step: PathStep, { x, y, scale }: PicturePlace): PathStep {
  const [atX, atY] = [(value: number) => fine(value * scale + x), (value: number) => fine(value * scale + y)];
  switch (step[0]) {
    case 'M':
    case 'L':
      return [step[0], atX(step[1]), atY(step[2])];
    case 'C':
      return ['C', atX(step[1]), atY(step[2]), atX(step[3]), atY(step[4]), atX(step[5]), atY(step[6])];
    case 'Z':
      return step;
  }
}

/** To 10 micrometres, less than a printer's dot: longer figures would only make the file larger. */
function fine(mm: number): number {
  return Math.round(mm * 100) / 100;
}
