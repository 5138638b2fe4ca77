/** How to read the chart, a line for each sentence, and how to tie from it, a line for each step: as first written. */
import { goesRight } from '../../chart/chart.ts';
import { chosenParts } from '../chosen-parts.ts';
import type { Copy } from '../copy.ts';
import { figuresIn } from '../flow/figures.ts';
import type { PatternInput } from '../pattern-input.ts';
import { readingWords } from '../words/reading-words.ts';

interface ReadingInput extends Pick<PatternInput, 'design' | 'materials' | 'units'> {
  readonly copy: Pick<Copy, 'language'> & Partial<Pick<Copy, 'rowsForm'>>;
}

interface ReadingTexts {
  /** How many pages the chart has is no part of it: the page says so itself. */
  readonly reading: string;
  readonly order: string;
}

export function readingTexts({ design, materials, units, copy }: ReadingInput): ReadingTexts {
  const words = readingWords[copy.language];
  const figures = figuresIn(units, copy.language);
  const { cords, tying, totals } = materials;
  const { startCorner } = design;
  const { rowsForm = 'long' } = copy;
  const printed = chosenParts(design);
  const reading = [
    words.cell,
    words.ways(goesRight(startCorner, 0)),
    words.rules,
    words.lifts,
    ...(totals.bareCells > 0 ? [words.bare] : []),
    ...(printed.includes('rows') ? [words.rows[rowsForm]] : []),
  ];
  const order = words.steps({
    cutCords: cords.cutCords,
    fitted: tying.fitted,
    length: figures.cutLength(tying.workingLengthMm),
    tail: figures.cutLength(tying.tailMm),
    startsLeft: startCorner === 'top-left',
    looseEnds: totals.looseEnds > 0 ? figures.count(totals.looseEnds) : null,
    hasFinishing: printed.includes('finishing'),
    liftsIn: printed.includes('rows') ? rowsForm : 'chart',
    carryCords: design.tying.carryMaxCords,
    carryRows: design.tying.carryMaxRows,
    hasStrands: printed.includes('strands'),
    cordsIn: (['materials', 'cut-list'] as const).find((part) => printed.includes(part)) ?? null,
  });
  return { reading: reading.join('\n'), order: order.join('\n') };
}
