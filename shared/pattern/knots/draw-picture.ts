/** The strands of a picture as items at its place on the page. */
import type { PathItem, PathStep } from '../page.ts';
import { drawStrands } from './draw-strands.ts';
import type { Picture } from './picture.ts';

/** `middleX` and `top` are where the picture's x = 0 and y = 0 come to stand, in mm on the page. */
export function drawPicture({ strands }: Picture, middleX: number, top: number): PathItem[] {
  return drawStrands(strands).map((item) => ({
    ...item,
    steps: item.steps.map((step) => moved(step, middleX, top)),
  }));
}

function moved(step: PathStep, x: number, y: number): PathStep {
  const [atX, atY] = [(value: number) => fine(value + x), (value: number) => fine(value + y)];
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
