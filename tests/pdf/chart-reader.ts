/**
 * Reads a chart back from a page of a PDF, knowing only what is on the paper: the range in words at its head, rectangles
 * filled with colours, and symbols, each at its place. How the file writes them is not relied on.
 */
import { OPS, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { liftShapes } from '../../shared/yarn/lift-shapes.ts';

export interface ReadChart {
  /** First row and cord that the page shows, from 1. */
  readonly row: number;
  readonly cord: number;
  readonly rows: number;
  readonly columns: number;
  /** Row by row: each cell's fill as #rrggbb, and its symbol's letter, empty where there is none. */
  readonly fills: readonly string[];
  readonly symbols: readonly string[];
  /** Places of the lift marks, from 1, row by row; `corner` is the cell's upper corner that they stand in. */
  readonly lifts: readonly {
    readonly row: number;
    readonly cord: number;
    readonly corner: 'left' | 'right';
  }[];
}

/** The chart on page `number`, from 1; null where the page has none. */
export async function readChartPage(pdf: PDFDocumentProxy, number: number): Promise<ReadChart | null> {
  const page = await pdf.getPage(number);
  const { fnArray, argsArray } = await page.getOperatorList();
  const { texts, figure, marks } = whatIsDrawn(fnArray, argsArray);
  page.cleanup();
  const range = texts.map(rangeIn).find((each) => each !== null);
  if (!range || figure.boxes.length === 0) return null;
  return { ...range, ...inCells(range, figure, marks) };
}

type Range = Pick<ReadChart, 'row' | 'cord' | 'rows' | 'columns'>;

/** 'rows 27–52, cords 1–40', in either language. */
function rangeIn(text: string): Range | null {
  const found = /^(?:rows?|Reihen?) (\d+)(?:–(\d+))?, (?:cords?|Schnur|Schnüre) (\d+)(?:–(\d+))?$/.exec(text);
  if (!found) return null;
  const [row, lastRow, cord, lastCord] = found
    .slice(1)
    .map((each) => (each === undefined ? null : Number(each)));
  return {
    row: row!,
    cord: cord!,
    rows: (lastRow ?? row!) - row! + 1,
    columns: (lastCord ?? cord!) - cord! + 1,
  };
}

/** In points, y counting downwards from the sheet's bottom; only differences matter. */
interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly fill: string;
}

interface Sign {
  readonly text: string;
  /** The middle of its em. */
  readonly x: number;
  readonly y: number;
}

interface Drawn {
  readonly texts: string[];
  /** What the first picture of the page is made of. */
  readonly figure: { readonly boxes: Box[]; readonly signs: Sign[] };
  readonly marks: Sign[];
}

type Matrix = readonly [number, number, number, number, number, number];

const markTexts = Object.values(liftShapes).map(({ text }) => text);

function whatIsDrawn(operators: readonly number[], args: readonly unknown[]): Drawn {
  const drawn: Drawn = { texts: [], figure: { boxes: [], signs: [] }, marks: [] };
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let fill = '#000000';
  const saved: { matrix: Matrix; fill: string }[] = [];
  let size = 0;
  let spacing = 0;
  let line: Matrix = matrix;
  let pen: Matrix = matrix;
  let figures = 0;
  const marked: boolean[] = [];
  const inFigure = () => figures === 1 && marked.includes(true);
  operators.forEach((operator, i) => {
    const given = args[i] as never[];
    switch (operator) {
      case OPS.save:
        saved.push({ matrix, fill });
        break;
      case OPS.restore:
        ({ matrix, fill } = saved.pop()!);
        break;
      case OPS.transform:
        matrix = times(matrix, given as unknown as Matrix);
        break;
      case OPS.setFillRGBColor:
        fill = given[0]!;
        break;
      case OPS.beginMarkedContentProps:
        if (given[0] === 'Figure') figures++;
        marked.push(given[0] === 'Figure');
        break;
      case OPS.beginMarkedContent:
        marked.push(false);
        break;
      case OPS.endMarkedContent:
        marked.pop();
        break;
      case OPS.constructPath:
        if (inFigure()) drawn.figure.boxes.push(...boxesIn(given, matrix, fill));
        break;
      case OPS.beginText:
        line = pen = [1, 0, 0, 1, 0, 0];
        break;
      case OPS.setFont:
        size = given[1]!;
        break;
      case OPS.setCharSpacing:
        spacing = given[0]!;
        break;
      case OPS.setTextMatrix:
        line = pen = Array.from(given[0]! as ArrayLike<number>) as unknown as Matrix;
        break;
      case OPS.moveText:
        line = pen = times(line, [1, 0, 0, 1, given[0]!, given[1]!]);
        break;
      case OPS.showText: {
        let text = '';
        for (const glyph of given[0]! as readonly (number | { unicode: string; width: number })[]) {
          if (typeof glyph === 'number') {
            pen = times(pen, [1, 0, 0, 1, (-glyph * size) / 1000, 0]);
            continue;
          }
          const [x, y] = at(times(matrix, pen), size / 2, size / 2);
          const sign = { text: glyph.unicode, x, y };
          if (inFigure()) drawn.figure.signs.push(sign);
          if (markTexts.includes(glyph.unicode)) drawn.marks.push(sign);
          text += glyph.unicode;
          pen = times(pen, [1, 0, 0, 1, (glyph.width * size) / 1000 + spacing, 0]);
        }
        drawn.texts.push(text);
        break;
      }
    }
  });
  return drawn;
}

/** The rectangles of a path that is filled. pdfjs gives points and operators as numbers in one list. */
function boxesIn(args: readonly never[], matrix: Matrix, fill: string): Box[] {
  const [paint, [points]] = args as unknown as readonly [number, readonly [ArrayLike<number> | null]];
  if (paint !== OPS.fill && paint !== OPS.eoFill) return [];
  if (!points) throw new Error('a path without points');
  const boxes: Box[] = [];
  const [xs, ys]: [number[], number[]] = [[], []];
  const moveTo = 0;
  const lineTo = 1;
  const close = 4;
  for (let i = 0; i < points.length; ) {
    const step = points[i]!;
    if (step === close) {
      const [left, top] = at(matrix, Math.min(...xs), Math.min(...ys));
      const [right, bottom] = at(matrix, Math.max(...xs), Math.max(...ys));
      boxes.push({
        left: Math.min(left, right),
        right: Math.max(left, right),
        top: Math.min(top, bottom),
        bottom: Math.max(top, bottom),
        fill,
      });
      xs.length = ys.length = 0;
      i++;
    } else if (step === moveTo || step === lineTo) {
      xs.push(points[i + 1]!);
      ys.push(points[i + 2]!);
      i += 3;
    } else throw new Error('a cell of the chart has a curve');
  }
  return boxes;
}

/** Later boxes lie over earlier ones, as on paper. */
function inCells(
  { row, cord, rows, columns }: Range,
  { boxes, signs }: Drawn['figure'],
  marks: readonly Sign[],
): Pick<ReadChart, 'fills' | 'symbols' | 'lifts'> {
  const extreme = (pick: (box: Box) => number, most: boolean) =>
    boxes.map(pick).reduce((a, b) => (most ? Math.max(a, b) : Math.min(a, b)));
  const left = extreme((box) => box.left, false);
  const top = extreme((box) => box.top, false);
  const width = (extreme((box) => box.right, true) - left) / columns;
  const height = (extreme((box) => box.bottom, true) - top) / rows;
  const fills = Array.from({ length: rows * columns }, () => '');
  const symbols = fills.slice();
  for (const box of boxes) {
    const from = { column: (box.left - left) / width, row: (box.top - top) / height };
    const to = { column: (box.right - left) / width, row: (box.bottom - top) / height };
    for (let r = Math.round(from.row); r < Math.round(to.row); r++) {
      for (let c = Math.round(from.column); c < Math.round(to.column); c++) fills[r * columns + c] = box.fill;
    }
  }
  for (const { text, x, y } of signs) {
    const cell = Math.floor((y - top) / height) * columns + Math.floor((x - left) / width);
    if (symbols[cell] !== '') throw new Error(`a cell has two symbols, '${symbols[cell]}' and '${text}'`);
    symbols[cell] = text;
  }
  const lifts = marks
    .map(({ text, x, y }) => ({
      row: Math.floor((y - top) / height),
      column: Math.floor((x - left) / width),
      corner: text === liftShapes.left.text ? ('left' as const) : ('right' as const),
    }))
    // Another one stands in the key.
    .filter((each) => each.row >= 0 && each.row < rows && each.column >= 0 && each.column < columns)
    .sort((a, b) => a.row - b.row || a.column - b.column)
    .map(({ row: r, column, corner }) => ({ row: row + r, cord: cord + column, corner }));
  return { fills, symbols, lifts };
}

function times(m: Matrix, [a, b, c, d, e, f]: Matrix): Matrix {
  return [
    m[0] * a + m[2] * b,
    m[1] * a + m[3] * b,
    m[0] * c + m[2] * d,
    m[1] * c + m[3] * d,
    m[0] * e + m[2] * f + m[4],
    m[1] * e + m[3] * f + m[5],
  ];
}

/** On the sheet, where y counts downwards; PDF counts it upwards. */
function at(m: Matrix, x: number, y: number): [number, number] {
  return [m[0] * x + m[2] * y + m[4], -(m[1] * x + m[3] * y + m[5])];
}
