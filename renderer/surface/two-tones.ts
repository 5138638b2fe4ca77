/** Lines that show on every yarn: dark over light. */
const dark = '#262522';
const light = '#fffaf0';

interface Line {
  /** Device pixels in a CSS pixel. */
  readonly ratio: number;
  /** Of the dark line, in CSS pixels. */
  readonly width?: number;
  /** How much wider the light line is, in CSS pixels: with none, it shows in the gaps of the dark one only. */
  readonly halo?: number;
  /** Lengths of strokes and gaps of the dark line, in CSS pixels. */
  readonly dash?: readonly number[];
}

/** Strokes the pen's path in both tones. */
export function strokeTwoTones(
  pen: CanvasRenderingContext2D,
  { ratio, width = 1.5, halo = 2, dash = [] }: Line,
): void {
  pen.lineJoin = 'round';
  pen.lineCap = 'butt';
  pen.setLineDash([]);
  pen.strokeStyle = light;
  pen.lineWidth = (width + halo) * ratio;
  pen.stroke();
  pen.setLineDash(dash.map((length) => length * ratio));
  pen.strokeStyle = dark;
  pen.lineWidth = width * ratio;
  pen.stroke();
  pen.setLineDash([]);
}
