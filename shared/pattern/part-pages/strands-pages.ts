/** What happens to the strands, row by row: the steps of tying but for the knots themselves, which the chart shows. */
import type { Step } from '../../tying/steps/step.ts';
import { stepWords } from '../../tying/steps/step-words.ts';
import { stepsOf } from '../../tying/steps/steps-of.ts';
import { tyingOrder } from '../../tying/steps/tying-order.ts';
import { rowNames } from '../chart-pages/row-names.ts';
import { entriesInColumns } from '../flow/entries-in-columns.ts';
import { newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { inks } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { strandsWords } from '../words/strands-words.ts';

const COLUMNS = 2;

export function strandsPages(context: PatternContext): Draft[] {
  const { chart, plan, copy, units } = context;
  const words = strandsWords[copy.language];
  const flow = newFlow(context, words.title);
  const names = rowNames(context);
  const introduction = [words.introduction, ...(names.shortened ? [words.shortened] : [])].join(' ');
  paragraph(flow, introduction, { color: inks.soft, sizeMm: flow.sizes.note, after: 3 });
  const wishes = { yarnsById: names.byId, units, form: 'compact', language: copy.language } as const;
  const entries = stepsOf(tyingOrder(chart, plan)).flatMap((steps, row) => {
    const told = steps.filter(isTold).map((step) => stepWords(step, wishes));
    if (told.length === 0) return [];
    const parts = told.map((text, i) => [{ text: i < told.length - 1 ? `${text};` : text }]);
    return [{ head: words.row(row + 1), parts, partByLine: true, endsGroup: (row + 1) % 10 === 0 }];
  });
  if (entries.length === 0) return [];
  const tops = { first: flow.y, later: flow.laterTop };
  const pages = { area: flow.area, tops, mostColumns: COLUMNS, bodyMm: flow.sizes.body };
  entriesInColumns(entries, pages).forEach((items, i) => {
    if (i > 0) flow.nextPage();
    flow.put(...items);
  });
  return flow.drafts();
}

/** That the yarn in hand steps down to the next row goes without saying; of one that is left, the row that takes it up tells. */
function isTold(step: Step): boolean {
  switch (step.kind) {
    case 'attach':
    case 'join':
    case 'end':
    case 'carry':
      return true;
    case 'turn':
      return !step.inHand;
    case 'row':
    case 'knots':
    case 'leave':
      return false;
  }
}
