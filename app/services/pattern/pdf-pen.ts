/**
 * Writes page items as PDF operators, by hand where pdfkit's own calls would cost one operator stream for each cell:
 * the cells of a chart come out as few rectangles, its symbols as one text object in reading order.
 * The user space is millimetres from the sheet's top left corner, y downwards.
 */

import { itemBounds } from '../../../shared/pattern/page/item-bounds.ts';
import type {
  BoxItem,
  CellInk,
  CellsItem,
  Face,
  ImageItem,
  PlainItem,
  StampItem,
  TextItem,
} from '../../../shared/pattern/page/page.ts';
import { paintCells } from '../../../shared/pattern/page/paint-cells.ts';
import { at, colored, fine, type GlyphPlace, n, pathStep, roundedBox, shown } from './pdf-operators.ts';

/** An embedded face: its name among the page's resources, and text as hex glyph numbers of the subset. */
export interface PdfFace {
  readonly id: string;
  encode(text: string): [hex: string[], places: GlyphPlace[]];
}

export interface PdfPen {
  /** `isRead`: whether it belongs to what is read aloud; it does where absent. */
  draw(item: PlainItem, isRead?: boolean): void;
  /** Its own operators are written once for all pages. */
  stamp(item: StampItem): void;
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
  /** The name of a stamp among the page's resources. */
  stampName(stamp: StampItem['items'], drawn: () => PdfStamp): string;
}

/** Operators that stand for themselves, and what of the page's resources they name. */
export interface PdfStamp {
  readonly operators: string;
  /** As `x, y, x, y` of two corners; asked for where the stamp is new. */
  readonly boxOf: () => readonly [number, number, number, number];
}

/** Where a text ends, and what it was set in. */
type Place = Pick<TextItem, 'face' | 'sizeMm' | 'x' | 'y'>;

export function pdfPen(options: PdfPenOptions): PdfPen {
  const { face, opacityName, imageName, stampName } = options;
  let out: string[] = [];
  const state = new Map<string, string>();
  /** Writes an operator that sets something, unless it is set so already. */
  const set = (name: string, operator: string) => {
    if (state.get(name) === operator) return;
    state.set(name, operator);
    out.push(operator);
  };
  const fillWith = (color: string) => set('fill', colored(color, 'rg'));
  const strokeWith = (color: string, widthMm: number, cap: 0 | 1, dashMm: readonly number[] = []) => {
    set('stroke', colored(color, 'RG'));
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
    out.push(item.radius ? roundedBox(item) : `${at(x)} ${at(y)} ${at(width)} ${at(height)} re`);
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

  /** In units of a cell: small whole numbers are what is packed best. */
  function cells(item: CellsItem, isRead: boolean): void {
    const { x, y, cellWidth, cellHeight, columns, rows, codes, inks } = item;
    see();
    const hasFill = Object.values(inks).some(({ fill }) => fill);
    const painted = paintCells(codes, columns, rows, (code) => Boolean(inks[code]?.fill));
    if (painted.length > 0) {
      const before = state.get('fill');
      out.push(`q ${fine(cellWidth)} 0 0 ${fine(cellHeight)} ${n(x)} ${n(y)} cm`);
      for (const { code, rects } of painted) {
        fillWith(inks[code]!.fill!);
        for (let i = 0; i < rects.length; i += 4) {
          out.push(`${rects[i]} ${rects[i + 1]} ${rects[i + 2]} ${rects[i + 3]} re`);
        }
        out.push('f');
      }
      out.push('Q');
      if (before === undefined) state.delete('fill');
      else state.set('fill', before);
    }
    if (item.symbolMm) (hasFill ? symbols : isRead ? signs : unreadSigns)(item, item.symbolMm);
  }

  /**
   * Symbols that lie over other cells and are not read, ink by ink, with a blank one for each cell between them: what comes again
   * and again is packed best.
   */
  function signs(
    { x, y, cellWidth, cellHeight, columns, rows, codes, inks }: CellsItem,
    sizeMm: number,
  ): void {
    const font = face('symbols');
    const [[blank]] = font.encode(' ');
    for (const [code, { symbol, ink, edge }] of Object.entries(inks)) {
      if (!symbol || !codes.includes(Number(code))) continue;
      const [[sign]] = font.encode(symbol);
      fillWith(ink);
      if (edge) strokeWith(edge.color, edge.widthMm, 0);
      const spacing = `${fine(cellWidth - sizeMm)} Tc${edge ? ' 2 Tr' : ''}`;
      const start = `1 0 0 -1 ${n(x + (cellWidth - sizeMm) / 2)} ${n(y + (cellHeight + sizeMm) / 2)} Tm`;
      out.push(`BT /${font.id} ${n(sizeMm)} Tf ${spacing} ${start}`);
      for (let r = 0; r < rows; r++) {
        const row = codes.subarray(r * columns, (r + 1) * columns);
        const shown = row.subarray(0, row.lastIndexOf(Number(code)) + 1);
        const line = Array.from(shown, (each) => (each === Number(code) ? sign : blank)).join('');
        out.push(`${line === '' ? '' : `<${line}>Tj `}0 ${fine(-cellHeight)} Td`);
      }
      out.push(`0 Tc ${edge ? '0 Tr ' : ''}ET`);
    }
  }

  /** They are no letters of the chart: whoever takes its text gets nothing for them (ISO 32000-1, 14.9.4). */
  function unreadSigns(item: CellsItem, sizeMm: number): void {
    out.push('/Span <</ActualText ()>> BDC');
    signs(item, sizeMm);
    out.push('EMC');
  }

  /**
   * Row by row, left to right, so that text is found and read in the order of the chart. Symbols advance by one em, and the
   * rest of the cell is set as space between characters; a cell without one is a move (ISO 32000-1, 9.4.3).
   */
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
    const cellInEm = (cellWidth / sizeMm) * 1000;
    const left = x + (cellWidth - sizeMm) / 2;
    const baseline = y + (cellHeight + sizeMm) / 2;
    out.push(
      `BT /${font.id} ${n(sizeMm)} Tf ${fine(cellWidth - sizeMm)} Tc 1 0 0 -1 ${n(left)} ${n(baseline)} Tm`,
    );
    let rowsDown = 0;
    let hasEdge = false;
    for (let r = 0; r < rows; r++) {
      let line = '';
      let gap = 0;
      let inHand: CellInk | null = null;
      const show = () => {
        if (line === '') return;
        out.push(line.startsWith('<') && !/[^<>0-9a-f]/.test(line) ? `${line}>Tj` : `[${line}>]TJ`);
        line = '';
      };
      for (let c = 0; c < columns; c++) {
        const ink = inks[codes[r * columns + c]!];
        if (!ink?.symbol) {
          gap++;
          continue;
        }
        if (inHand === null && rowsDown > 0) {
          out.push(`0 ${fine(-rowsDown * cellHeight)} Td`);
          rowsDown = 0;
        }
        if (ink.ink !== inHand?.ink || ink.edge !== inHand.edge) {
          show();
          fillWith(ink.ink);
          if (ink.edge) strokeWith(ink.edge.color, ink.edge.widthMm, 0);
          if (hasEdge !== Boolean(ink.edge)) out.push(ink.edge ? '2 Tr' : '0 Tr');
          hasEdge = Boolean(ink.edge);
          inHand = ink;
        }
        if (gap > 0) line += `${line ? '>' : ''}${Math.round(-gap * cellInEm)}<`;
        else if (line === '') line = '<';
        line += hex(ink.symbol);
        gap = 0;
      }
      show();
      rowsDown++;
    }
    out.push(`0 Tc ${hasEdge ? '0 Tr ' : ''}ET`);
  }

  const draw: PdfPen['draw'] = (item, isRead = true) => {
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
        cells(item, isRead);
        break;
      case 'image':
        image(item);
        break;
    }
  };
  return {
    draw,
    stamp({ x, y, items }) {
      const boxOf = () => {
        const { left, top, right, bottom } = itemBounds({ kind: 'stamp', x: 0, y: 0, items });
        return [left - EDGE_MM, top - EDGE_MM, right + EDGE_MM, bottom + EDGE_MM] as const;
      };
      const name = stampName(items, () => {
        const own = pdfPen(options);
        for (const item of items) own.draw(item, false);
        return { operators: own.take(), boxOf };
      });
      out.push(`q 1 0 0 1 ${n(x)} ${n(y)} cm /${name} Do Q`);
    },
    space,
    take() {
      const written = out.join('\n');
      out = [];
      return written;
    },
  };
}

/** What letters may reach beyond their bounds. */
const EDGE_MM = 2;
