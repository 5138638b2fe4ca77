/** What is measured: the studio's surface and the bare canvas, beside each other, on the same design and view. */
import Konva from 'konva';
import { beginStroke, endStroke } from '../../../renderer/store/changing.ts';
import { changeDrawing, changeViews, openDesign, studio } from '../../../renderer/store/studio.ts';
import { inksOf } from '../../../renderer/surface/look.ts';
import { Surface } from '../../../renderer/surface/surface.ts';
import type { View } from '../../../renderer/surface/view.ts';
import { centreOf } from '../../../shared/chart/symmetry/sound-symmetry.ts';
import type { Design } from '../../../shared/design/design.ts';
import { BareChart } from './bare-chart.ts';

export interface Scene {
  readonly name: string;
  /** Width of a cell in pixels; 0: the whole hanging. */
  readonly cellPx: number;
  readonly cells: 'knots' | 'symbols';
}

export interface Both {
  readonly design: Design;
  readonly surface: Surface;
  readonly bare: BareChart;
  readonly view: View;
  /** Ends what is measured on either side: reading a pixel makes the browser really paint. */
  paintSurface(): void;
  paintBare(): void;
}

export const width = 1100;
export const height = 720;

export const room = document.getElementById('larkrow') as HTMLDivElement;
export const bareCanvas = document.getElementById('bare') as HTMLCanvasElement;
for (const each of [room, bareCanvas])
  each.style.cssText = `display: block; width: ${width}px; height: ${height}px; overflow: hidden`;

/** Both with the design, all of it drawn; what is drawn is mirrored both ways about the middle. */
export async function bothOf(design: Design, scene: Scene): Promise<Both> {
  openDesign(design, null);
  changeViews({ cells: scene.cells });
  changeDrawing({
    symmetry: {
      ...studio.getState().drawing.symmetry,
      point: 'mirror-both',
      centre: centreOf(design),
    },
  });
  const surface = surfaceIn(room);
  surface.drawNow();
  const view = viewOf(scene, surface.view, design);
  surface.view = view;
  while (!surface.drawNow()) await nextFrame();
  // Whatever a first stroke warms up is warm.
  beginStroke('Warm');
  endStroke();
  bareCanvas.width = width;
  bareCanvas.height = height;
  const bare = new BareChart(bareCanvas, design, inksOf(room, 'normal'), studio.getState().views);
  bare.drawAll(view);
  const sheets = [...room.querySelectorAll('canvas')].map((each) => each.getContext('2d')!);
  return {
    design,
    surface,
    bare,
    view,
    paintSurface: () => {
      for (const sheet of sheets) if (sheet.canvas.style.display !== 'none') sheet.getImageData(3, 3, 1, 1);
    },
    paintBare: () => bare.pen.getImageData(3, 3, 1, 1),
  };
}

/** The studio's surface on a stage of its own; React, which mounts the stage in the studio, has no part in drawing. */
function surfaceIn(element: HTMLDivElement): Surface {
  element.replaceChildren();
  const stage = new Konva.Stage({ container: element, width: 1, height: 1, listening: false });
  return new Surface(element, stage, () => {});
}

function viewOf({ cellPx }: Scene, whole: View, { columns, rows }: Design): View {
  if (cellPx === 0) return whole;
  const scale = cellPx / 5;
  return { scale, x: width / 2 - (columns / 2) * 5 * scale, y: height / 2 - (rows / 2) * 4.8 * scale };
}

export function nextFrame(): Promise<number> {
  return new Promise(requestAnimationFrame);
}
