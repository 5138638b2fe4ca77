/** Rows that are wished beside the chart, and have no room there. */
import type { PatternDocument } from '../page/page.ts';
import { plainItems } from '../page/plain-items.ts';
import type { PatternInput } from '../pattern-input.ts';
import { chartWords } from '../words/chart-words.ts';
import type { Finding } from './finding.ts';

/** Found as the page itself says it. */
export function aboutRowsBeside(
  { copy }: Pick<Required<PatternInput>, 'copy'>,
  { pages }: Pick<PatternDocument, 'pages'>,
): Finding[] {
  if (!copy.rowsBeside) return [];
  const rowsAt = pages.findIndex(({ part }) => part === 'rows');
  const said = chartWords[copy.language].notBeside(rowsAt < 0 ? null : rowsAt + 1);
  const at = pages.findIndex(({ part, items }) => {
    if (part !== 'chart' && part !== 'chart-symbols') return false;
    const texts = plainItems(items).flatMap((item) => (item.kind === 'text' ? [item.text] : []));
    return texts.join(' ').includes(said);
  });
  if (at < 0) return [];
  return [
    {
      kind: 'rows-not-beside',
      weight: 'doubt',
      sentence: `The rows are wished beside the chart and have no room there: they are left out${rowsAt < 0 ? '' : `, and stand on page ${rowsAt + 1} and after`}.`,
      mend: `${rowsAt < 0 ? 'Add the written rows to the parts' : 'Wish no rows beside the chart'}${copy.cells === 'large' ? ', or print cells of the standard size' : ''}.`,
      place: { on: 'page', page: at + 1 },
    },
  ];
}
