/**
 * What is printed is what is drawn: charts made at random, printed as PDF, and read back from the pages cell by cell, in
 * every ink and size of print, with lift marks and with what pages repeat. `LARKROW_CHARTS=1000` tries a thousand.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writePatternPdf } from '../../app/services/pattern/draw-pdf.ts';
import { type Chart, flatten } from '../../shared/chart/chart.ts';
import { BARE, codeOf, yarnIdOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import type { Yarn } from '../../shared/design/schema.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { type Copy, copyOf, designForCopy } from '../../shared/pattern/copy.ts';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import type { Paper } from '../../shared/pattern/page/papers.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { writtenRows } from '../../shared/tying/rows/written-rows.ts';
import { alphabet } from '../../shared/yarn/symbols.ts';
import { readChartPage } from '../pdf/chart-reader.ts';
import { openPdf } from '../pdf/pdf-reader.ts';

const charts = Number(process.env.LARKROW_CHARTS ?? 100);

interface PrintedCase {
  readonly design: Design;
  readonly copy: Copy;
  readonly paper: Paper;
}

const arbitraryCase: fc.Arbitrary<PrintedCase> = fc
  .record({
    columns: mostlySmall(30, 90),
    rows: mostlySmall(30, 100),
    yarns: mostlySmall(8, 64),
    cells: fc.integer({ min: 1, max: 0x7fffffff }),
    /** Of ten cells, how many go on with the yarn of the one before, and how many are bare. */
    goOn: fc.integer({ min: 0, max: 9 }),
    bare: fc.integer({ min: 0, max: 4 }),
    pitch: fc.integer({ min: 20, max: 60 }),
    rowHeight: fc.integer({ min: 20, max: 60 }),
    paper: fc.constantFrom('a4' as const, 'letter' as const),
    copy: fc.record({
      language: fc.constantFrom('en' as const, 'de' as const),
      ink: fc.constantFrom('colour' as const, 'symbols' as const, 'grey' as const),
      cells: fc.constantFrom('standard' as const, 'large' as const),
      rowsBeside: fc.boolean(),
      leftHanded: fc.boolean(),
    }),
  })
  .map(({ columns, rows, cells, goOn, bare, pitch, rowHeight, paper, copy, yarns: count }) => {
    const yarns = Array.from({ length: count }, (_, i) => yarnAt(i));
    const base = newDesign({ title: 'Random', columns, rows, yarns });
    const design: Design = {
      ...base,
      pattern: { parts: ['chart'] },
      swatches: [{ widthMm: pitch, cords: 10, heightMm: rowHeight, rows: 10 }],
      tying: { ...base.tying, workingLengthMm: 9000 },
      layers: [{ ...base.layers[0]!, rows: noise({ columns, rows, count, seed: cells, goOn, bare }) }],
    };
    return { design, paper, copy: { ...copyOf(design), ...copy } };
  });

function mostlySmall(small: number, max: number): fc.Arbitrary<number> {
  return fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min: 1, max: small }) },
    { weight: 1, arbitrary: fc.integer({ min: 1, max }) },
  );
}

function yarnAt(i: number): Yarn {
  const color = `#${((i * 2_654_435 + 4_660_000) % 0x1000000).toString(16).padStart(6, '0')}`;
  const [id, symbol] = [yarnIdOf(i + 1), alphabet[i]!.text];
  return { id, name: `Yarn ${i + 1}`, color, symbol, diameterMm: 2, metresPer100G: 200, skeinG: 50 };
}

interface Noise {
  readonly columns: number;
  readonly rows: number;
  readonly count: number;
  readonly seed: number;
  readonly goOn: number;
  readonly bare: number;
}

function noise({ columns, rows, count, seed, goOn, bare }: Noise): Uint8Array[] {
  let state = seed;
  const below = (limit: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
  return Array.from({ length: rows }, () => {
    const row = new Uint8Array(columns);
    for (let c = 0; c < columns; c++) {
      if (c > 0 && below(10) < goOn) row[c] = row[c - 1]!;
      else row[c] = below(10) < bare ? BARE : 1 + below(count);
    }
    return row;
  });
}

/** What all pages together show, and what of it is wrong; nothing is right in a chart of which a cell is missing. */
async function faultsOf({ design: drawn, copy, paper }: PrintedCase): Promise<string[]> {
  const design = designForCopy(drawn, copy);
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const document = layOutPattern({
    design,
    chart,
    plan: plan.value,
    materials,
    paper,
    units: 'metric',
    copy,
  });
  const pdf = await openPdf((await writePatternPdf(document, { date: new Date(0) }))!);
  const seen = new Uint8Array(chart.cells.length);
  const lifted = new Map<number, string>();
  const faults: string[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await readChartPage(pdf, number);
    if (!page) continue;
    const codeAt = codesOf(design, chart, copy);
    for (let r = 0; r < page.rows; r++) {
      for (let c = 0; c < page.columns; c++) {
        const cell = (page.row - 1 + r) * chart.columns + page.cord - 1 + c;
        const at = r * page.columns + c;
        const fault = codeAt(cell, page.symbols[at]!, page.fills[at]!);
        if (fault) faults.push(`row ${page.row + r}, cord ${page.cord + c}: ${fault}`);
        seen[cell] = 1;
      }
    }
    for (const { row, cord, corner } of page.lifts) lifted.set((row - 1) * chart.columns + cord - 1, corner);
  }
  await pdf.destroy();
  const missing = seen.filter((each) => each === 0).length;
  if (missing > 0) faults.push(`${missing} cells are missing`);
  return [...faults, ...liftFaults(design, chart, lifted)];
}

/** Says what is wrong with a cell as it was read. */
function codesOf({ yarns }: Design, { cells }: Chart, { ink }: Copy) {
  const byCode = new Map(yarns.map((yarn) => [codeOf(yarn.id), yarn]));
  return (cell: number, symbol: string, fill: string): string | null => {
    const yarn = byCode.get(cells[cell]!);
    if (symbol !== (yarn?.symbol ?? '')) return `symbol '${symbol}' in place of '${yarn?.symbol ?? ''}'`;
    const wanted = { colour: yarn?.color, symbols: '#ffffff', grey: null }[ink];
    if (yarn && wanted && fill !== wanted) return `fill ${fill} in place of ${wanted}`;
    if (!yarn && fill !== '#ffffff') return `a bare cell is ${fill}`;
    return null;
  };
}

/** The marks are the cords that the written rows name after 'lift', in the corner that the row comes to first. */
function liftFaults({ yarns }: Design, chart: Chart, lifted: ReadonlyMap<number, string>): string[] {
  const rows = writtenRows(chart, new Map(yarns.map((yarn) => [yarn.id, yarn])));
  const wanted = new Map(
    rows.flatMap(({ row, goesRight, lifts }) =>
      lifts.map((cord) => [(row - 1) * chart.columns + cord - 1, goesRight ? 'left' : 'right'] as const),
    ),
  );
  const both = new Set([...wanted.keys(), ...lifted.keys()]);
  return [...both]
    .filter((cell) => wanted.get(cell) !== lifted.get(cell))
    .map((cell) => `cell ${cell}: lift mark ${lifted.get(cell)} in place of ${wanted.get(cell)}`);
}

describe('a printed chart', () => {
  it(`read back from its pages is the design, in ${charts} charts`, { timeout: 1_800_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryCase, async (each) => {
        expect(await faultsOf(each)).toEqual([]);
      }),
      { numRuns: charts },
    );
  });

  it('would be caught with a wrong cell: the reader sees one', async () => {
    const [each] = fc.sample(arbitraryCase, { seed: 3, numRuns: 1 });
    const { design } = each!;
    const spoiled = flatten(design).cells.slice();
    spoiled[0] = spoiled[0] === BARE ? 1 : BARE;
    const codeAt = codesOf(design, { ...flatten(design), cells: spoiled }, each!.copy);
    const pages = await firstPageOf(each!);
    expect(codeAt(0, pages.symbols[0]!, pages.fills[0]!)).not.toBeNull();
  });
});

async function firstPageOf({ design: drawn, copy, paper }: PrintedCase) {
  const design = designForCopy(drawn, copy);
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const document = layOutPattern({
    design,
    chart,
    plan: plan.value,
    materials,
    paper,
    units: 'metric',
    copy,
  });
  const pdf = await openPdf((await writePatternPdf(document, { date: new Date(0) }))!);
  const page = await readChartPage(pdf, 1);
  await pdf.destroy();
  return page!;
}
