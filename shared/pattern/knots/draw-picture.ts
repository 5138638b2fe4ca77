/** A picture of a step as items at its place on the page. */
import { label } from '../label.ts';
import type { PathStep, PlainItem } from '../page.ts';
import { inks, sizes } from '../style.ts';
import { drawStrands } from './draw-strands.ts';
import type { Picture } from './picture.ts';

/** `middleX` and `top` are where the picture's x = 0 and y = 0 come to stand, in mm on the page. */
export function drawPicture({ strands, words = [] }: Picture, middleX: number, top: number): PlainItem[] {
  return [
    ...drawStrands(strands).map((item) => ({
      ...item,
      steps: item.steps.map((step) => moved(step, middleX, top)),
    })),
    ...words.map(({ x, y, text, align }) =>
      label(middleX + x, top + y, text, { sizeMm: sizes.small, color: inks.soft, align }),
    ),
  ];
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
