/** Draws what lies over a chart in letters on a canvas, and tells the colours of its points. */
import { createCanvas } from '@napi-rs/canvas';
import { drawOverlay } from '../../../../../renderer/plan/overlay/draw-overlay.ts';
import type { Overlay, Pen } from '../../../../../renderer/plan/overlay/overlay.ts';
import { planned } from '../../../../../renderer/plan/plans/planned.ts';
import { flatten } from '../../../../../shared/chart/chart.ts';
import type { Design } from '../../../../../shared/design/design.ts';
import { planCarefully } from '../../../../../shared/tying/careful-person/plan-carefully.ts';
import { designFromLetters } from '../../../../notation.ts';

/** A careful person's plan, which a reader can follow by hand. */
export function plannedOf(letters: readonly string[], tying: Partial<Design['tying']> = {}) {
  const base = designFromLetters(letters);
  const design = { ...base, tying: { ...base.tying, ...tying } };
  const chart = flatten(design);
  const plan = planCarefully(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return planned(design, chart, { plan: plan.value }).planned;
}

type Asked = Pick<Overlay, 'planned' | 'view'> & Partial<Overlay> & { readonly cellPx: number };

export interface Drawn {
  /** The canvas is white where nothing is drawn. From the chart's upper left corner; r, g, b. */
  at(x: number, y: number): readonly number[];
  /** True where a sign, a bar or a figure is drawn within a box: something in ink or in the accent. */
  hasInk(x: number, y: number, width: number, height: number): boolean;
}

/** Room around the chart for what stands beside it. */
const besidePx = 200;

export function drawn({ cellPx, ...asked }: Asked): Drawn {
  const { columns, rows } = asked.planned.tables;
  const [widthPx, heightPx] = [columns * cellPx + 2 * besidePx, rows * cellPx + 2 * besidePx];
  const pen = createCanvas(widthPx, heightPx).getContext('2d');
  pen.fillStyle = '#ffffff';
  pen.fillRect(0, 0, widthPx, heightPx);
  drawOverlay(pen as unknown as Pen, {
    strand: null,
    tied: null,
    pins: [],
    carryFrom: null,
    pinAhead: null,
    overMm: 25,
    rowsBy: 'live',
    inks: { ink: '#000000', paper: '#cccccc', accent: '#ff0000' },
    colors: { 1: '#0000ff', 2: '#00ff00', 3: '#00ffff' },
    ...asked,
    placed: {
      view: { scale: cellPx, x: besidePx, y: besidePx },
      widthPx,
      heightPx,
      ratio: 1,
      isZooming: false,
    },
    size: { pitchMm: 1, rowHeightMm: 1 },
    inSight: { left: 0, right: columns - 1, top: 0, bottom: rows - 1 },
    rightPx: widthPx,
  });
  const pixels = (x: number, y: number, width: number, height: number) =>
    pen.getImageData(besidePx + x, besidePx + y, width, height).data;
  return {
    at: (x, y) => [...pixels(x, y, 1, 1).slice(0, 3)],
    hasInk(x, y, width, height) {
      const parts = pixels(x, y, width, height);
      for (let i = 0; i < parts.length; i += 4) if (parts[i + 1]! < 100 && parts[i + 2]! < 100) return true;
      return false;
    },
  };
}
