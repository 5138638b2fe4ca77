/** Frames and ms from a pointer event to the end of the frame that shows it, drawn by the studio and by bare calls. */
import { hand } from '../../../renderer/draw/hand/hand.ts';
import { studio } from '../../../renderer/store/studio.ts';
import { listenToGestures } from '../../../renderer/surface/gestures.ts';
import { cellAt } from '../../../renderer/surface/view.ts';
import { layeredDesign } from '../parts/layered-design.ts';
import { bareCanvas, bothOf, room, type Scene } from './stage.ts';

export interface Shown {
  readonly frames: number;
  readonly ms: number;
}

let frame = 0;
let shown: Shown[] = [];
let forget: () => void = () => {};

/** Begins to note what pointer moves over the studio's chart, or over the bare canvas, take to be shown. */
export async function watch(what: 'larkrow' | 'bare', scene: Scene): Promise<void> {
  forget();
  shown = [];
  const { surface, bare, view, design } = await bothOf(layeredDesign(400, 600, 12, null), scene);
  studio.setState({ tool: 'knot' });
  let running = true;
  const count = () => {
    frame++;
    if (running) requestAnimationFrame(count);
  };
  count();
  const endings: (() => void)[] = [() => surface.destroy(), () => (running = false)];
  const note = (event: PointerEvent) => {
    const began = frame;
    // The channel's message comes after the frame that is being made was painted.
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => shown.push({ frames: frame - began, ms: performance.now() - event.timeStamp });
      port2.postMessage(0);
    });
  };
  if (what === 'larkrow') {
    endings.push(listenToGestures(room, surface, hand));
    // After the studio's own listener, whose drawing it must wait for.
    room.addEventListener('pointermove', note);
    endings.push(() => room.removeEventListener('pointermove', note));
  } else {
    const draw = (event: PointerEvent) => {
      const { left, top } = bareCanvas.getBoundingClientRect();
      const size = { pitchMm: 5, rowHeightMm: 4.8 };
      const cell = cellAt(view, size, event.clientX - left, event.clientY - top);
      if (cell.row >= 0 && cell.row < design.rows && cell.column >= 0 && cell.column < design.columns)
        bare.drawCells(view, bare.paintMirrored(design.layers.length - 1, [cell], 2));
      note(event);
    };
    bareCanvas.addEventListener('pointermove', draw);
    endings.push(() => bareCanvas.removeEventListener('pointermove', draw));
  }
  forget = () => {
    for (const end of endings) end();
  };
}

export function shownSoFar(): Shown[] {
  return shown;
}
