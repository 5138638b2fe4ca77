/** Strokes and their undoing, many times over: what they leave in memory is read from outside the page. */
import { hand } from '../../../renderer/draw/hand/hand.ts';
import { undoStep } from '../../../renderer/store/changing.ts';
import { changeDrawing, chooseCode, studio } from '../../../renderer/store/studio.ts';
import { layeredDesign } from '../parts/layered-design.ts';
import { type Both, bothOf, type Scene } from './stage.ts';

let both: Both | null = null;

export async function openForMemory(scene: Scene): Promise<void> {
  both = await bothOf(layeredDesign(400, 600, 12, null), scene);
  studio.setState({ tool: 'knot' });
  changeDrawing({ width: 5 });
}

/** Strokes across the chart, mirrored both ways. */
export function strokes(count: number): void {
  for (let i = 0; i < count; i++) {
    chooseCode(1 + (i % 6));
    const row = (i * 7) % 300;
    hand.press({ row, column: i % 50 });
    hand.move([{ row: (row + 40) % 300, column: 100 + (i % 90) }]);
    hand.release();
    both!.surface.drawNow();
  }
}

export function undos(count: number): void {
  for (let i = 0; i < count; i++) {
    undoStep();
    both!.surface.drawNow();
  }
}

/** What the history says that it holds. */
export function historyBytes(): number {
  return studio.getState().open!.history.bytes;
}
