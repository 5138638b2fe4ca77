/** What comes again on the pages of a chart is written into the file once. */
import { describe, expect, it } from 'vitest';
import { writePatternPdf } from '../../../app/services/pattern/draw-pdf.ts';
import type { Item, PatternDocument, PlainItem } from '../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../shared/pattern/page/plain-items.ts';
import { stamped } from '../../../shared/pattern/page/stamped.ts';
import { openObjects } from '../../pdf/pdf-objects.ts';

const items: PlainItem[] = [
  {
    kind: 'path',
    steps: [
      ['M', 20, 30],
      ['L', 25, 30],
    ],
    stroke: '#26231f',
    strokeMm: 0.2,
  },
  {
    kind: 'text',
    x: 26,
    y: 30,
    text: '7',
    face: 'sans',
    sizeMm: 3,
    color: '#26231f',
    align: 'left',
    role: 'aside',
  },
];

function documentOf(pages: readonly Item[][]): PatternDocument {
  return {
    title: 'Numbers',
    author: '',
    language: 'en',
    pages: pages.map((each, i) => ({
      widthMm: 100,
      heightMm: 100,
      title: `Page ${i + 1}`,
      items: [...each],
    })),
    notices: [],
  };
}

async function formsOf(document: PatternDocument): Promise<{ forms: number; shown: number[] }> {
  const bytes = (await writePatternPdf(document, { date: new Date(0) }))!;
  const { pages, text } = openObjects(bytes);
  return {
    forms: text.split('/Subtype /Form').length - 1,
    shown: pages.map(({ operators }) => operators.filter(({ name }) => name === 'Do').length),
  };
}

describe('a stamp', () => {
  it('is written once, wherever on its pages it is shown', async () => {
    const document = documentOf([
      [{ kind: 'stamp', x: 10, y: 10, items }],
      [{ kind: 'stamp', x: 10, y: 40, items }],
      [
        { kind: 'stamp', x: 10, y: 10, items },
        { kind: 'stamp', x: 10, y: 10, items: items.slice(0, 1) },
      ],
    ]);
    expect(await formsOf(document)).toEqual({ forms: 2, shown: [1, 1, 2] });
  });

  it('is drawn where its items were', () => {
    expect(plainItems(stamped(items, 20, 30))).toEqual(items);
    expect(stamped([], 20, 30)).toEqual([]);
  });
});
