/**
 * Whether each change of yarn in a row has its lift mark on the chart: without it a maker finds the change only when it is passed.
 * The marks on the pages are counted against the cords to lift of the written rows, which are found in another way.
 */
import { writtenRows } from '../../tying/rows/written-rows.ts';
import { counted } from '../../units/counted.ts';
import { liftShapes } from '../../yarn/lift-shapes.ts';
import type { CellsItem, PatternDocument } from '../page/page.ts';
import { plainItems } from '../page/plain-items.ts';
import type { PatternInput } from '../pattern-input.ts';
import type { Finding } from './finding.ts';

export function aboutLifts(
  { design, chart }: Pick<PatternInput, 'design' | 'chart'>,
  { pages }: Pick<PatternDocument, 'pages'>,
): Finding[] {
  const yarns = new Map(design.yarns.map((yarn) => [yarn.id, yarn]));
  const lifts = writtenRows(chart, yarns).reduce((sum, row) => sum + row.lifts.length, 0);
  return (['chart', 'chart-symbols'] as const).flatMap((part): Finding[] => {
    const first = pages.findIndex((page) => page.part === part);
    if (first < 0) return [];
    // What two pages both show is marked on both.
    const marks = pages
      .filter((page) => page.part === part)
      .flatMap(({ items }) => plainItems(items))
      .reduce((sum, item) => sum + (item.kind === 'cells' ? marksIn(item) : 0), 0);
    if (marks >= lifts) return [];
    return [
      {
        kind: 'lift-marks-missing',
        weight: 'fault',
        sentence: `${counted(lifts - marks, 'change')} of yarn on the chart ${lifts - marks === 1 ? 'has' : 'have'} no lift mark.`,
        mend: 'Print the written rows too, which name every cord to lift.',
        place: { on: 'page', page: first + 1 },
      },
    ];
  });
}

const shapes = new Set(Object.values(liftShapes).map(({ text }) => text));

/** The one in the key is a cell by itself. */
function marksIn({ codes, inks }: CellsItem): number {
  if (codes.length === 1) return 0;
  const isMark = (code: number) => inks[code]?.fill === undefined && shapes.has(inks[code]?.symbol ?? '');
  return codes.reduce((sum, code) => sum + (isMark(code) ? 1 : 0), 0);
}
