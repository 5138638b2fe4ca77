/**
 * Measures one edit, one pan frame and one zoom frame of the real store and surface, in blocks that alternate with
 * the same by bare canvas calls. Each sample ends by reading one pixel back, so that the picture is really painted.
 */
import '../../../renderer/shell/theme.css';
import Konva from 'konva';
import { hand } from '../../../renderer/draw/hand/hand.ts';
import { beginStroke, endStroke, stroke } from '../../../renderer/store/changing.ts';
import { changeViews, openDesign, studio } from '../../../renderer/store/studio.ts';
import { listenToGestures } from '../../../renderer/surface/gestures.ts';
import { inksOf } from '../../../renderer/surface/look.ts';
import { Surface } from '../../../renderer/surface/surface.ts';
import { cellAt, type View, zoomed } from '../../../renderer/surface/view.ts';
import { mottledDesign } from '../parts/mottled-design.ts';
import { BareChart } from './bare-chart.ts';

export interface Scene {
  readonly name: string;
  /** Width of a cell in pixels; 0: the whole hanging. */
  readonly cellPx: number;
  readonly symbols: boolean;
}

export interface Measured {
  readonly scene: string;
  /** 'edit, whole': bare calls paint the whole picture again; 'edit, cell': nothing but the cell's own pixels. */
  readonly deed: 'edit, whole' | 'edit, cell' | 'pan' | 'zoom';
  readonly larkrow: number[];
  readonly bare: number[];
}

const columns = 400;
const rows = 600;
const width = 1100;
const height = 720;
const blocks = 24;
const samplesPerBlock = 25;

const room = document.getElementById('larkrow') as HTMLDivElement;
const bareCanvas = document.getElementById('bare') as HTMLCanvasElement;
for (const each of [room, bareCanvas]) {
  each.style.cssText = `display: block; width: ${width}px; height: ${height}px; overflow: hidden`;
}

export async function measure(scene: Scene): Promise<Measured[]> {
  openDesign(mottledDesign(columns, rows), null);
  changeViews({ cells: scene.symbols ? 'symbols' : 'knots' });
  const { design, chart } = studio.getState().open!;
  const surface = surfaceIn(room);
  surface.drawNow();
  const ratio = window.devicePixelRatio;
  bareCanvas.width = width * ratio;
  bareCanvas.height = height * ratio;
  const bare = new BareChart(
    bareCanvas,
    design,
    chart.cells.slice(),
    inksOf(room, 'normal'),
    studio.getState().views,
  );
  const view = viewOf(scene, surface.view, design);
  await settled(surface, bare, view);
  const sheets = [...room.querySelectorAll('canvas')].map((each) => each.getContext('2d')!);
  const results = [
    await editing(scene, 'edit, whole', surface, bare, sheets[1]!, view),
    await editing(scene, 'edit, cell', surface, bare, sheets[1]!, view),
    await panning(scene, surface, bare, sheets, view),
    await zooming(scene, surface, bare, sheets, view),
  ];
  surface.destroy();
  return results;
}

/** The studio's surface on a stage of its own; React, which mounts the stage in the studio, has no part in drawing. */
function surfaceIn(element: HTMLDivElement): Surface {
  element.replaceChildren();
  return new Surface(
    element,
    new Konva.Stage({ container: element, width: 1, height: 1, listening: false }),
    () => {},
  );
}

function viewOf(
  { cellPx }: Scene,
  whole: View,
  { columns: c, rows: r }: { columns: number; rows: number },
): View {
  if (cellPx === 0) return whole;
  const scale = cellPx / 5;
  return { scale, x: width / 2 - (c / 2) * 5 * scale, y: height / 2 - (r / 2) * 4.8 * scale };
}

/** Draws until every tile is there, on both sides. */
async function settled(surface: Surface, bare: BareChart, view: View): Promise<void> {
  surface.view = view;
  for (let i = 0; i < 80; i++) {
    surface.drawNow();
    await new Promise(requestAnimationFrame);
  }
  bare.drawAll(view);
}

async function editing(
  scene: Scene,
  deed: 'edit, whole' | 'edit, cell',
  surface: Surface,
  bare: BareChart,
  sheet: CanvasRenderingContext2D,
  view: View,
) {
  const cellOf = (i: number) => ({ row: 290 + (i % 17), column: 190 + (i % 13) });
  return alternately(
    scene,
    deed,
    (i) => {
      const { row, column } = cellOf(i);
      beginStroke('Knot');
      stroke({ kind: 'paint', layer: 'ground', runs: Uint16Array.of(row, column, 1, 1 + (i % 6)) });
      endStroke();
      surface.drawNow();
      sheet.getImageData(3, 3, 1, 1);
    },
    (i) => {
      const { row, column } = cellOf(i);
      bare.edit(view, row, column, 1 + (i % 6));
      if (deed === 'edit, whole') bare.drawAll(view);
      bare.pen.getImageData(3, 3, 1, 1);
    },
  );
}

function panning(
  scene: Scene,
  surface: Surface,
  bare: BareChart,
  sheets: readonly CanvasRenderingContext2D[],
  view: View,
) {
  const viewAt = (i: number) => ({ ...view, x: view.x + (i % 40), y: view.y + (i % 23) });
  return alternately(
    scene,
    'pan',
    (i) => {
      surface.view = viewAt(i);
      surface.drawNow();
      for (const sheet of sheets) sheet.getImageData(3, 3, 1, 1);
    },
    (i) => {
      bare.drawAll(viewAt(i));
      bare.pen.getImageData(3, 3, 1, 1);
    },
  );
}

/** A zoom frame: another scale each time, as while fingers pinch. On both sides the tiles of before are stretched. */
function zooming(
  scene: Scene,
  surface: Surface,
  bare: BareChart,
  sheets: readonly CanvasRenderingContext2D[],
  view: View,
) {
  const middle = { x: width / 2, y: height / 2 };
  const factorAt = (i: number) => 1 + (1 + (i % 12)) * 0.004;
  return alternately(
    scene,
    'zoom',
    (i) => {
      // Back to the size that the tiles were made for, then to the next one: two steps of the view, one frame.
      surface.view = view;
      surface.zoom(factorAt(i), middle);
      surface.drawNow();
      for (const sheet of sheets) sheet.getImageData(3, 3, 1, 1);
    },
    (i) => {
      bare.drawAll(zoomed(view, { pitchMm: 5, rowHeightMm: 4.8 }, factorAt(i), middle.x, middle.y), true);
      bare.pen.getImageData(3, 3, 1, 1);
    },
  );
}

async function alternately(
  scene: Scene,
  deed: Measured['deed'],
  larkrow: (i: number) => void,
  bare: (i: number) => void,
): Promise<Measured> {
  const measured: Measured = { scene: scene.name, deed, larkrow: [], bare: [] };
  for (let block = 0; block <= blocks; block++) {
    for (const [run, samples] of [
      [larkrow, measured.larkrow],
      [bare, measured.bare],
    ] as const) {
      for (let s = 0; s < samplesPerBlock; s++) {
        const i = block * samplesPerBlock + s;
        const began = performance.now();
        run(i);
        // The first block warms up.
        if (block > 0) samples.push(performance.now() - began);
      }
      await new Promise(requestAnimationFrame);
    }
  }
  return measured;
}

/** Frames and ms from a pointer event to the end of the frame that shows it, drawn by the studio and by bare calls. */
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
  openDesign(mottledDesign(columns, rows), null);
  changeViews({ cells: scene.symbols ? 'symbols' : 'knots' });
  studio.setState({ tool: 'knot' });
  const { design, chart } = studio.getState().open!;
  const surface = surfaceIn(room);
  surface.drawNow();
  bareCanvas.width = width;
  bareCanvas.height = height;
  const bare = new BareChart(
    bareCanvas,
    design,
    chart.cells.slice(),
    inksOf(room, 'normal'),
    studio.getState().views,
  );
  const view = viewOf(scene, surface.view, design);
  await settled(surface, bare, view);
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
      const { row, column } = cellAt(
        view,
        { pitchMm: 5, rowHeightMm: 4.8 },
        event.clientX - left,
        event.clientY - top,
      );
      if (row >= 0 && row < rows && column >= 0 && column < columns) bare.edit(view, row, column, 2);
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

Object.assign(window, { measure, watch, shownSoFar });
