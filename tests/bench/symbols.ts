/**
 * How clearly the 64 symbols differ when they are printed: pages of a real PDF, rendered by poppler (pdftoppm) at 300 dpi to
 * one bit and to grey, each pair laid over one another as well as a small shift allows. In cells of 4 mm and 2.5 mm, with and
 * without lift marks; and in each ink on the colours of the demo designs.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writePatternPdf } from '../../app/services/pattern/draw-pdf.ts';
import { differencePx, type Print, print } from '../../build/symbols/difference.ts';
import { flatten } from '../../shared/chart/chart.ts';
import { demoDesigns } from '../../shared/demos/demo-designs.ts';
import { codeOf } from '../../shared/design/codes.ts';
import { cellInks } from '../../shared/pattern/chart-pages/cell-inks.ts';
import { liftInk } from '../../shared/pattern/chart-pages/lift-marks.ts';
import type { CellInk, CellsItem, Item } from '../../shared/pattern/page/page.ts';
import { alphabet } from '../../shared/yarn/symbols.ts';
import { touchingPairs } from '../../shared/yarn/touching.ts';

const DPI = 300;
const PX_PER_MM = DPI / 25.4;
/** No printer places a cell exactly: two symbols count as alike where a shift of this many pixels makes them so. */
const SHIFT_PX = 2;
/** Cells stand apart, each at another place between two pixels. */
const STEP_MM = 6.37;
const IN_A_ROW = 16;

for (const cellMm of [4, 2.5]) {
  for (const mark of [null, 'left', 'right'] as const) {
    const inks = alphabet.map(({ text }): CellInk => ({ fill: '#ffffff', symbol: text, ink: '#000000' }));
    for (const bits of ['one-bit', 'grey'] as const) {
      const marked = mark ? `, lift mark at the ${mark}` : '';
      report(`${cellMm} mm, ${bits}${marked}`, await printsOf(inks, cellMm, bits, mark));
    }
  }
}
for (const { make } of demoDesigns) {
  const design = make();
  const used = new Set(flatten(design).cells);
  for (const ink of ['colour', 'symbols', 'grey'] as const) {
    const byCode = cellInks(design.yarns, ink, touchingPairs(flatten(design)));
    const inks = design.yarns.map(({ id }) => codeOf(id)).filter((code) => used.has(code));
    report(
      `${design.title}, ${inks.length} yarns, ${ink}, 4 mm, grey`,
      await printsOf(
        inks.map((code) => byCode[code]!),
        4,
        'grey',
        null,
      ),
    );
  }
}

interface Printed {
  readonly text: string;
  readonly print: Print;
}

/** Each symbol as it comes out of the printer: 1 where there is ink of the symbol, 0 where there is its cell. */
async function printsOf(
  inks: readonly CellInk[],
  cellMm: number,
  bits: 'one-bit' | 'grey',
  mark: 'left' | 'right' | null,
): Promise<Printed[]> {
  const picture = await rendered(inks, cellMm, bits, mark);
  const side = Math.ceil(cellMm * PX_PER_MM) + 1;
  return inks.map((ink, i) => {
    const { x, y } = placeOf(i);
    const [left, top] = [Math.floor(x * PX_PER_MM), Math.floor(y * PX_PER_MM)];
    const isDark = ink.ink === '#000000';
    // Ink is what is nearer to the symbol's than to the cell's own grey, which a corner without symbol shows.
    const fill = picture.at(left + 1, top + side - 3);
    const [from, to] = isDark ? [0, fill] : [255, fill];
    const shares = Array.from({ length: side * side }, (_, k) => {
      const grey = picture.at(left + (k % side), top + Math.floor(k / side));
      const share = (grey - to) / (from - to || 1);
      return bits === 'one-bit' ? Number(share > 0.5) : Math.max(0, Math.min(1, share));
    });
    return { text: ink.symbol!, print: print({ size: side, ink: shares }) };
  });
}

function placeOf(i: number): { x: number; y: number } {
  return { x: 10 + (i % IN_A_ROW) * STEP_MM, y: 10 + Math.floor(i / IN_A_ROW) * STEP_MM };
}

interface Picture {
  /** Grey of a pixel, 0 black to 255 white. */
  at(x: number, y: number): number;
}

async function rendered(
  inks: readonly CellInk[],
  cellMm: number,
  bits: 'one-bit' | 'grey',
  mark: 'left' | 'right' | null,
): Promise<Picture> {
  const items = inks.flatMap((ink, i): Item[] => {
    const cell = cellOf(i, cellMm, ink);
    return mark ? [cell, cellOf(i, cellMm, liftInk(mark, ink.ink, cellMm))] : [cell];
  });
  const page = { widthMm: 120, heightMm: 60, title: 'Symbols', items };
  const document = { title: 'Symbols', author: '', language: 'en' as const, pages: [page], notices: [] };
  const folder = mkdtempSync(join(tmpdir(), 'larkrow-symbols-'));
  try {
    const path = join(folder, 'symbols.pdf');
    writeFileSync(path, (await writePatternPdf(document, { date: new Date(0) }))!);
    const way = bits === 'one-bit' ? '-mono' : '-gray';
    const out = execFileSync('pdftoppm', [way, '-r', String(DPI), path], { maxBuffer: 2 ** 26 });
    return netpbm(out);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function cellOf(i: number, cellMm: number, ink: CellInk): CellsItem {
  const { x, y } = placeOf(i);
  const cell = { kind: 'cells', x, y, cellWidth: cellMm, cellHeight: cellMm, columns: 1, rows: 1 } as const;
  return { ...cell, codes: Uint8Array.of(1), inks: { 1: ink }, symbolMm: cellMm };
}

/** PBM (P4, a set bit is black) or PGM (P5). */
function netpbm(bytes: Buffer): Picture {
  const head = /^(P[45])\s+(\d+)\s+(\d+)\s(?:(\d+)\s)?/.exec(bytes.subarray(0, 64).toString('latin1'))!;
  const [, kind, width] = head;
  // P4 has no largest value: its pixels may look like one.
  const start =
    kind === 'P4'
      ? /^P4\s+\d+\s+\d+\s/.exec(bytes.subarray(0, 64).toString('latin1'))![0].length
      : head[0].length;
  const line = kind === 'P4' ? Math.ceil(Number(width) / 8) : Number(width);
  return {
    at: (x, y) =>
      kind === 'P4'
        ? (bytes[start + y * line + (x >> 3)]! >> (7 - (x & 7))) & 1
          ? 0
          : 255
        : bytes[start + y * line + x]!,
  };
}

function report(name: string, prints: readonly Printed[]): void {
  const shifts = { freePx: SHIFT_PX, maxPx: SHIFT_PX, pricePerPx: 0 };
  let least = { pair: '', px: Number.POSITIVE_INFINITY };
  let leastShare = { pair: '', share: Number.POSITIVE_INFINITY };
  let pairs = 0;
  for (const [i, one] of prints.entries()) {
    for (const other of prints.slice(0, i)) {
      const px = differencePx(one.print, other.print, shifts);
      const share = px / (one.print.inkPx + other.print.inkPx);
      const pair = `${other.text} ${one.text}`;
      if (px < least.px) least = { pair, px };
      if (share < leastShare.share) leastShare = { pair, share };
      pairs++;
    }
  }
  const inWords = `least ${least.px.toFixed(0)} px (${least.pair}), ${(leastShare.share * 100).toFixed(0)} % of their ink (${leastShare.pair})`;
  console.log(`${name}: ${pairs} pairs, ${inWords}`);
}
