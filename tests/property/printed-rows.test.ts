/** Written rows as they stand on their pages, read back: in both forms and languages, whatever the yarns are called. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BARE, codeOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Language } from '../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { rowNames } from '../../shared/pattern/chart-pages/row-names.ts';
import { type Copy, copyOf } from '../../shared/pattern/copy.ts';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import type { PathItem } from '../../shared/pattern/page/page.ts';
import { plainItems } from '../../shared/pattern/page/plain-items.ts';
import { newPrinter } from '../../shared/pattern/page/printable.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { alphabet } from '../../shared/yarn/symbols.ts';
import { arbitraryChart, type ChartCase } from './arbitrary-chart.ts';
import { tiled } from './tiled.ts';

fc.configureGlobal({ seed: 8_500 });

/** With what rows themselves are made of, and some that are too long for them. */
const names = [
  'Moss, dark; from the ditch (old)',
  'Тёмно-синяя шерсть с дальнего берега',
  '5 Bark: washed',
  'Πράσινο της ελιάς, lift 3',
  'Moss',
  'Linen of the long shore, Linen of the long shore',
  'Linen of the long shore, Linen of the long shore, too',
];

const arbitraryCase = fc
  .record({
    drawn: arbitraryChart({ maxColumns: 30, maxRows: 30, maxYarns: 4 }),
    /** Most of these are wider than the chart, which then repeats nothing. */
    cords: fc.integer({ min: 2, max: 60 }),
    first: fc.integer({ min: 0, max: names.length - 1 }),
    symbols: fc.shuffledSubarray([...alphabet], { minLength: 4, maxLength: 4 }),
    language: fc.constantFrom('en' as const, 'de' as const),
    paper: fc.constantFrom('a4' as const, 'letter' as const),
  })
  .map(({ drawn, cords, first, symbols, ...rest }) => {
    const { design, chart } = tiled(drawn, cords);
    const yarns = design.yarns.map((yarn, i) => ({
      ...yarn,
      name: names[(first + i) % names.length]!,
      symbol: symbols[i]!.text,
    }));
    return { design: { ...design, yarns }, chart, ...rest };
  });

/** Of an arrow: its shaft comes first, from its tail. */
function wayOf({ steps: [from, to] }: PathItem): string {
  return to![1]! > from![1]! ? '→' : '←';
}

interface PrintedRow {
  head: string;
  rest: string;
}

/** What stands on the pages for each row as it is read, without what stands above and below the rows. */
function printedRows(
  { design, chart }: ChartCase,
  paper: 'a4' | 'letter',
  copy: Partial<Copy>,
): PrintedRow[] {
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const { pages } = layOutPattern({
    design: { ...design, pattern: { parts: ['rows'] } },
    chart,
    plan: plan.value,
    materials: materialsOf(design, chart, plan.value),
    paper,
    units: 'metric',
    copy: { ...copyOf(design), ...copy },
  });
  const rows: PrintedRow[] = [];
  for (const item of pages.flatMap(({ items }) => plainItems(items))) {
    if (item.kind === 'path' && rows.at(-1)?.rest === '') rows.at(-1)!.head += ` ${wayOf(item)}`;
    if (item.kind !== 'text') continue;
    const { face, role, text, joined } = item;
    if (face === 'sans-bold' && role === 'paragraph') rows.push({ head: text, rest: '' });
    else if (rows.length > 0 && role === undefined) rows.at(-1)!.rest += `${joined ? '' : ' '}${text}`;
  }
  return rows.map(({ head, rest }) => ({ head, rest: rest.trim() }));
}

const words = {
  en: {
    row: 'Row',
    right: 'left to right',
    left: 'right to left',
    bare: 'bare',
    lift: 'lift',
    allBare: 'all bare, nothing to tie',
  },
  de: {
    row: 'Reihe',
    right: 'von links nach rechts',
    left: 'von rechts nach links',
    bare: 'frei',
    lift: 'anheben',
    allBare: 'ganz frei, nichts zu knüpfen',
  },
} as const;

/** Both in tying order. */
interface ReadRow {
  readonly cells: number[];
  readonly lifts: number[];
}

function readLong(rest: string, design: Design, columns: number, language: Language): ReadRow {
  const { allBare, bare, lift } = words[language];
  if (rest === allBare) return { cells: Array(columns).fill(BARE), lifts: [] };
  const codes = new Map<string, number>([[bare, BARE]]);
  for (const [id, { name }] of rowNames({ design, printer: newPrinter() }).byId) codes.set(name, codeOf(id));
  const longestFirst = [...codes.keys()].sort((a, b) => b.length - a.length);
  const cells: number[] = [];
  let left = rest;
  for (;;) {
    const [counted, count] = /^(\d+) /.exec(left)!;
    left = left.slice(counted.length);
    const name = longestFirst.find((each) => left.startsWith(`${each} (`))!;
    cells.push(...Array<number>(Number(count)).fill(codes.get(name)!));
    left = left.slice(name.length).replace(/^ \(\d+(?:–\d+)?\)/, '');
    if (!left.startsWith(', ')) break;
    left = left.slice(2);
  }
  const [, lifted] = left.split(`; ${lift} `);
  return { cells, lifts: lifted ? lifted.split(', ').map(Number) : [] };
}

function readCompact(rest: string, design: Design): ReadRow {
  const codes = new Map<string, number>(design.yarns.map(({ id, symbol }) => [symbol, codeOf(id)]));
  codes.set('–', BARE);
  const [counts, lifted] = rest.split('; ');
  const [, times = '1', once] = /^(?:(\d+)×\((.*)\)|.*)$/.exec(counts!)!;
  const tied = (once ?? counts!).split(' ').flatMap((part) => {
    const [count, symbol] = part.split('×') as [string, string];
    return Array<number>(Number(count)).fill(codes.get(symbol)!);
  });
  const cells = Array<number[]>(Number(times)).fill(tied).flat();
  return { cells, lifts: lifted ? lifted.split(' ').map(Number) : [] };
}

/** The first cord of each new yarn in tying order, but for the one at the row's own edge. */
function liftsOf(cells: readonly number[], goesRight: boolean): number[] {
  return cells.flatMap((code, at) =>
    at > 0 && code !== BARE && code !== cells[at - 1] ? [goesRight ? at + 1 : cells.length - at] : [],
  );
}

function headOf(row: number, goesRight: boolean, form: Copy['rowsForm'], language: Language): string {
  if (form === 'compact') return `${row} ${goesRight ? '→' : '←'}`;
  const { row: name, right, left } = words[language];
  return `${name} ${row}, ${goesRight ? right : left}:`;
}

describe('the rows of a printed pattern', () => {
  it.each(['long', 'compact'] as const)('read back are the chart: %s', (rowsForm) => {
    fc.assert(
      fc.property(arbitraryCase, ({ design, chart, language, paper }) => {
        const rows = printedRows({ design, chart }, paper, { language, rowsForm });
        expect(rows).toHaveLength(chart.rows);
        rows.forEach(({ head, rest }, row) => {
          const goesRight = (chart.startCorner === 'top-left') === (row % 2 === 0);
          expect(head).toBe(headOf(row + 1, goesRight, rowsForm, language));
          const { cells, lifts } =
            rowsForm === 'long' ? readLong(rest, design, chart.columns, language) : readCompact(rest, design);
          const drawn = [...chart.cells.subarray(row * chart.columns, (row + 1) * chart.columns)];
          expect(goesRight ? cells : cells.toReversed()).toEqual(drawn);
          expect(lifts).toEqual(liftsOf(cells, goesRight));
        });
      }),
      { numRuns: 300 },
    );
  });
});
