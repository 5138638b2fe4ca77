/**
 * Writes page items as PDF operators, by hand where pdfkit's own calls would cost one operator stream for each cell:
 * the cells of a chart come out as merged rectangles, its symbols as one text object in reading order.
 * The user space is millimetres from the sheet's top left corner, y downwards.
 */

import { mergeCells } from '../../../shared/pattern/merge-cells.ts';
import type {
  BoxItem,
  CellsItem,
  Face,
  ImageItem,
  PathStep,
  PlainItem,
  TextItem,
} from '../../../shared/pattern/page.ts';

/** What one glyph takes, in 1/1000 em. `xAdvance` is with kerning, `advanceWidth` without. */
interface GlyphPlace {
  xAdvance: number;
  advanceWidth: number;
  xOffset: number;
  yOffset: number;
}

/** An embedded face: its name among the page's resources, and text as hex glyph numbers of the subset. */
export interface PdfFace {
  readonly id: string;
  encode(text: string): [hex: string[], places: GlyphPlace[]];
}

export interface PdfPen {
  draw(item: PlainItem): void;
  /**
   * A space that is read and not seen, behind the text drawn last, or before `next`, which is drawn next. Lines of one text
   * would run together without it where the text is taken out of the file.
   */
  space(next: TextItem): void;
  /** The operators written since the last call. */
  take(): string;
}

export interface PdfPenOptions {
  face(face: Face): PdfFace;
  /** The name of a graphics state of this opacity among the page's resources. */
  opacityName(opacity: number): string;
  /** The name of a picture among the page's resources; null where it can't be read, and is left out. */
  imageName(image: ImageItem): string | null;
}

/** Where a text ends, and what it was set in. */
type Place = Pick<TextItem, 'face' | 'sizeMm' | 'x' | 'y'>;

export function pdfPen({ face, opacityName, imageName }: PdfPenOptions): PdfPen {
  let out: string[] = [];
  const state = new Map<string, string>();
  /** Writes an operator that sets something, unless it is set so already. */
  const set = (name: string, operator: string) => {
    if (state.get(name) === operator) return;
    state.set(name, operator);
    out.push(operator);
  };
  const fillWith = (color: string) => set('fill', `${rgb(color)} rg`);
  const strokeWith = (color: string, widthMm: number, cap: 0 | 1, dashMm: readonly number[] = []) => {
    set('stroke', `${rgb(color)} RG`);
    set('width', `${n(widthMm)} w`);
    set('cap', `${cap} J ${cap} j`);
    set('dash', `[${dashMm.map(n).join(' ')}] 0 d`);
  };
  const paint = ({ fill, stroke }: { fill?: string; stroke?: string }) => {
    out.push(fill && stroke ? 'B' : fill ? 'f' : 'S');
  };
  const see = (opacity = 1) => set('opacity', `/${opacityName(opacity)} gs`);

  let last: Place | null = null;

  function text(item: TextItem): void {
    const font = face(item.face);
    const [hex, places] = font.encode(item.text);
    const width = places.reduce((sum, place) => sum + place.xAdvance, 0) * (item.sizeMm / 1000);
    const x = item.x - (item.align === 'left' ? 0 : item.align === 'right' ? width : width / 2);
    last = { ...item, x: x + width };
    see();
    fillWith(item.color);
    out.push(
      `BT /${font.id} ${n(item.sizeMm)} Tf 1 0 0 -1 ${n(x)} ${n(item.y)} Tm ${shown(hex, places, item.sizeMm)} ET`,
    );
  }

  function space(next: TextItem): void {
    const { face: name, sizeMm, x, y } = last ?? next;
    const font = face(name);
    out.push(
      `BT /${font.id} ${n(sizeMm)} Tf 1 0 0 -1 ${n(x)} ${n(y)} Tm <${font.encode(' ')[0].join('')}> Tj ET`,
    );
  }

  function box(item: BoxItem): void {
    if (!item.fill && !(item.stroke && item.strokeMm)) return;
    see(item.opacity);
    if (item.fill) fillWith(item.fill);
    if (item.stroke && item.strokeMm) strokeWith(item.stroke, item.strokeMm, 0);
    const { x, y, width, height } = item;
    out.push(item.radius ? roundedBox(item) : `${n(x)} ${n(y)} ${n(width)} ${n(height)} re`);
    paint(item);
  }

  function image(item: ImageItem): void {
    const name = imageName(item);
    if (!name) return;
    see();
    // A picture fills the unit square, its top at y = 1.
    out.push(
      `q ${n(item.width)} 0 0 ${n(-item.height)} ${n(item.x)} ${n(item.y + item.height)} cm /${name} Do Q`,
    );
  }

  function cells(item: CellsItem): void {
    const { x, y, cellWidth, cellHeight, columns, rows, codes, inks } = item;
    see();
    for (const [code, rects] of mergeCells(codes, columns, rows)) {
      const ink = inks[code];
      if (!ink) continue;
      fillWith(ink.fill);
      for (let i = 0; i < rects.length; i += 4) {
        out.push(
          `${n(x + rects[i]! * cellWidth)} ${n(y + rects[i + 1]! * cellHeight)} ` +
            `${n(rects[i + 2]! * cellWidth)} ${n(rects[i + 3]! * cellHeight)} re`,
        );
      }
      out.push('f');
    }
    if (item.symbolMm) symbols(item, item.symbolMm);
  }

  /** Row by row, left to right, so that text is found and read in the order of the chart. */
  function symbols(
    { x, y, cellWidth, cellHeight, columns, rows, codes, inks }: CellsItem,
    sizeMm: number,
  ): void {
    const font = face('symbols');
    const hexOf = new Map<string, string>();
    const hex = (symbol: string) => {
      const known = hexOf.get(symbol) ?? font.encode(symbol)[0].join('');
      hexOf.set(symbol, known);
      return known;
    };
    // Symbols advance by one em: the rest of the cell is set as space between characters.
    out.push(`BT /${font.id} ${n(sizeMm)} Tf ${n(cellWidth - sizeMm)} Tc`);
    for (let r = 0; r < rows; r++) {
      const baseline = y + (r + 0.5) * cellHeight + sizeMm / 2;
      for (let c = 0; c < columns; ) {
        const ink = inks[codes[r * columns + c]!];
        if (!ink?.symbol) {
          c++;
          continue;
        }
        const from = c;
        let line = '';
        for (; c < columns; c++) {
          const next = inks[codes[r * columns + c]!];
          if (!next?.symbol || next.ink !== ink.ink) break;
          line += hex(next.symbol);
        }
        fillWith(ink.ink);
        const left = x + (from + 0.5) * cellWidth - sizeMm / 2;
        out.push(`1 0 0 -1 ${n(left)} ${n(baseline)} Tm <${line}> Tj`);
      }
    }
    out.push('0 Tc ET');
  }

  const draw: PdfPen['draw'] = (item) => {
    switch (item.kind) {
      case 'text':
        text(item);
        break;
      case 'rule':
        see();
        strokeWith(item.color, item.widthMm, 0, item.dashMm);
        out.push(`${n(item.x1)} ${n(item.y1)} m ${n(item.x2)} ${n(item.y2)} l S`);
        break;
      case 'box':
        box(item);
        break;
      case 'path':
        if (item.steps.length === 0 || !(item.fill || (item.stroke && item.strokeMm))) break;
        see(item.opacity);
        if (item.fill) fillWith(item.fill);
        if (item.stroke && item.strokeMm) {
          strokeWith(item.stroke, item.strokeMm, item.cap ? 1 : 0, item.dashMm);
        }
        for (const step of item.steps) out.push(pathStep(step));
        paint(item);
        break;
      case 'cells':
        cells(item);
        break;
      case 'image':
        image(item);
        break;
    }
  };
  return {
    draw,
    space,
    take() {
      const written = out.join('\n');
      out = [];
      return written;
    },
  };
}

/** Micrometres are finer than any printer. */
function n(value: number): string {
  return String(Math.round(value * 1000) / 1000 || 0);
}

function rgb(color: string): string {
  const value = Number.parseInt(color.slice(1), 16);
  return [16, 8, 0].map((shift) => n(((value >> shift) & 255) / 255)).join(' ');
}

function pathStep(step: PathStep): string {
  switch (step[0]) {
    case 'M':
      return `${n(step[1])} ${n(step[2])} m`;
    case 'L':
      return `${n(step[1])} ${n(step[2])} l`;
    case 'C':
      return `${n(step[1])} ${n(step[2])} ${n(step[3])} ${n(step[4])} ${n(step[5])} ${n(step[6])} c`;
    case 'Z':
      return 'h';
  }
}

/** How far a curve's handles reach along a quarter circle of radius 1. */
const QUARTER = 0.5523;

function roundedBox({ x, y, width, height, radius = 0 }: BoxItem): string {
  const r = Math.min(radius, width / 2, height / 2);
  const k = r * (1 - QUARTER);
  const right = x + width;
  const bottom = y + height;
  const steps: PathStep[] = [
    ['M', x + r, y],
    ['L', right - r, y],
    ['C', right - k, y, right, y + k, right, y + r],
    ['L', right, bottom - r],
    ['C', right, bottom - k, right - k, bottom, right - r, bottom],
    ['L', x + r, bottom],
    ['C', x + k, bottom, x, bottom - k, x, bottom - r],
    ['L', x, y + r],
    ['C', x, y + k, x + k, y, x + r, y],
    ['Z'],
  ];
  return steps.map(pathStep).join(' ');
}

/**
 * Glyphs with their kerning as one operator. Where a mark is raised above its letter, the line is broken into several
 * with a text rise (Ts) between them; where it is moved sideways, space is put before it and taken back after it.
 */
function shown(hex: string[], places: GlyphPlace[], sizeMm: number): string {
  let line = '[';
  let word = '';
  let rise = 0;
  const close = () => {
    if (word) line += `<${word}>`;
    word = '';
  };
  places.forEach((place, i) => {
    if (place.yOffset !== rise) {
      close();
      rise = place.yOffset;
      line += `] TJ ${n((rise / 1000) * sizeMm)} Ts [`;
    }
    if (place.xOffset) {
      close();
      line += n(-place.xOffset);
    }
    word += hex[i];
    const after = place.xAdvance - place.advanceWidth - place.xOffset;
    if (Math.abs(after) > 0.5) {
      close();
      line += n(-after);
    }
  });
  close();
  return `${line}] TJ${rise === 0 ? '' : ' 0 Ts'}`;
}
