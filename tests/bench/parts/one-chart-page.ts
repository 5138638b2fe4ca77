/** A whole chart on one large page: as patterns draw it, and as pdfkit's own calls do with one of each for every cell. */
import PDFDocument from 'pdfkit';
import { writePatternPdf } from '../../../app/services/pattern/draw-pdf.ts';
import { facePath } from '../../../app/services/pattern/face-path.ts';
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import { cellInks } from '../../../shared/pattern/chart-pages/cell-inks.ts';

const CELL_MM = 4;
const POINTS_PER_MM = 72 / 25.4;

export async function ourChartPage(chart: Chart, yarns: readonly Yarn[]): Promise<Uint8Array> {
  const { columns, rows, cells: codes } = chart;
  const page = {
    widthMm: columns * CELL_MM,
    heightMm: rows * CELL_MM,
    title: 'Chart',
    items: [
      {
        kind: 'cells' as const,
        x: 0,
        y: 0,
        cellWidth: CELL_MM,
        cellHeight: CELL_MM,
        columns,
        rows,
        codes,
        inks: cellInks(yarns),
        symbolMm: CELL_MM,
        alt: 'Chart',
      },
    ],
  };
  const document = { title: 'Chart', author: '', language: 'en' as const, pages: [page], notices: [] };
  return (await writePatternPdf(document, { date: new Date(0) }))!;
}

export function plainChartPage({ columns, rows, cells }: Chart, yarns: readonly Yarn[]): Promise<Uint8Array> {
  const inks = cellInks(yarns);
  const size = CELL_MM * POINTS_PER_MM;
  const pdf = new PDFDocument({
    size: [columns * size, rows * size],
    margin: 0,
    info: { CreationDate: new Date(0) },
  });
  const parts: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    pdf.on('data', (part: Uint8Array) => parts.push(part));
    pdf.on('end', () => resolve(new Uint8Array(Buffer.concat(parts))));
    pdf.on('error', reject);
    pdf.registerFont('symbols', facePath('symbols')).font('symbols').fontSize(size);
    for (let row = 0; row < rows; row++) {
      for (let column = 0; column < columns; column++) {
        const { fill, symbol, ink } = inks[cells[row * columns + column]!]!;
        pdf.rect(column * size, row * size, size, size).fill(fill!);
        if (symbol) pdf.fillColor(ink).text(symbol, column * size, row * size, { lineBreak: false });
      }
    }
    pdf.end();
  });
}
