/** An item somewhere else on its page, by millimetres to the right and down. */
import type { PathStep, PlainItem } from './page.ts';

export function moved(item: PlainItem, right: number, down: number): PlainItem {
  switch (item.kind) {
    case 'text':
    case 'box':
    case 'cells':
    case 'image':
      return { ...item, x: item.x + right, y: item.y + down };
    case 'rule':
      return {
        ...item,
        x1: item.x1 + right,
        x2: item.x2 + right,
        y1: item.y1 + down,
        y2: item.y2 + down,
      };
    case 'path':
      return { ...item, steps: item.steps.map((step) => movedStep(step, right, down)) };
  }
}

function movedStep(step: PathStep, right: number, down: number): PathStep {
  switch (step[0]) {
    case 'M':
    case 'L':
      return [step[0], step[1] + right, step[2] + down];
    case 'C': {
      const [, x1, y1, x2, y2, x, y] = step;
      return ['C', x1 + right, y1 + down, x2 + right, y2 + down, x + right, y + down];
    }
    case 'Z':
      return step;
  }
}
