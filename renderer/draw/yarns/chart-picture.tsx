/** The chart as a small picture in any colours, a pixel a cell, in the hanging's proportions. */
import { useEffect, useRef } from 'react';
import type { Chart } from '../../../shared/chart/chart.ts';
import { BARE } from '../../../shared/design/codes.ts';

interface ChartPictureProps {
  readonly chart: Chart;
  /** By code, as #rrggbb. */
  readonly colors: ReadonlyMap<number, string>;
  /** Width over height of the knotted picture. */
  readonly aspect: number;
  /** What is seen, for whoever does not see it. */
  readonly label: string;
}

/** Two of them stand above one another in a window 800 pixels high. */
const mostPx = { width: 300, height: 260 };

export function ChartPicture({ chart, colors, aspect, label }: ChartPictureProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (canvas.current) draw(canvas.current, chart, colors);
  }, [chart, colors]);
  const width = Math.min(mostPx.width, mostPx.height * aspect);
  return (
    <canvas
      ref={canvas}
      className="chart-picture"
      role="img"
      aria-label={label}
      style={{ width, height: width / aspect }}
    />
  );
}

function draw(
  canvas: HTMLCanvasElement,
  { columns, rows, cells }: Chart,
  colors: ReadonlyMap<number, string>,
) {
  canvas.width = columns;
  canvas.height = rows;
  const pen = canvas.getContext('2d')!;
  const pixels = pen.createImageData(columns, rows);
  const words = new Uint32Array(pixels.data.buffer);
  const inks = new Uint32Array(256);
  // Alpha, blue, green, red: as bytes lie in memory on every machine that has a screen.
  for (const [code, color] of colors) {
    const rgb = Number.parseInt(color.slice(1), 16);
    inks[code] = ((255 << 24) | ((rgb & 255) << 16) | (rgb & 0xff00) | (rgb >> 16)) >>> 0;
  }
  inks[BARE] = 0;
  for (let cell = 0; cell < cells.length; cell++) words[cell] = inks[cells[cell]!]!;
  pen.putImageData(pixels, 0, 0);
}
