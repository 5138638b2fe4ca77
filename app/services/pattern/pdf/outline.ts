/**
 * How a reader finds her way through the file: an outline with an entry for each part and below it one for each of its
 * pages, and page labels that are the printed page numbers.
 */
import type { Page } from '../../../../shared/pattern/page/page.ts';
import type { OutlineEntry, PdfInside } from './pdf-inside.ts';

export interface Outline {
  /** The page that is drawn now, which is the next one of the document. */
  enter(page: Page): void;
  /** When all pages are drawn. */
  end(): void;
}

export function newOutline(inside: PdfInside, pages: readonly Page[]): Outline {
  const titles = partTitles(pages);
  let at = 0;
  let part: OutlineEntry | null = null;
  return {
    enter(page) {
      const title = titles[at]!;
      const begins = at === 0 || title !== titles[at - 1] || page.part !== pages[at - 1]!.part;
      if (begins) part = inside.outline.addItem(title);
      if (page.title !== title) part!.addItem(page.title);
      at++;
    },
    end() {
      // A negative count says that the entries below are folded away: ISO 32000-1, table 153.
      inside.outline.outlineData.Count = inside.outline.children.length;
      for (const { outlineData, children } of inside.outline.children) {
        if (children.length > 0) outlineData.Count = -children.length;
      }
      inside._root.data.PageLabels = pageLabels(pages);
    },
  };
}

/** For each page the title of its part: what the titles of all its pages begin with, up to a comma. */
function partTitles(pages: readonly Page[]): string[] {
  const titles: string[] = [];
  for (let from = 0; from < pages.length; ) {
    const head = headOf(pages[from]!.title);
    let to = from + 1;
    while (to < pages.length && pages[to]!.part === pages[from]!.part && headOf(pages[to]!.title) === head)
      to++;
    const title = to - from === 1 ? pages[from]!.title : head;
    for (; from < to; from++) titles.push(title);
  }
  return titles;
}

function headOf(title: string): string {
  return title.split(', ', 1)[0]!;
}

/** ISO 32000-1, 12.4.2: from which page on, counted from 0, labels are of which form. */
function pageLabels(pages: readonly Page[]): object {
  const ranges = pages.flatMap((page, i): (number | object)[] => {
    if (page.unnumbered) return [i, { P: new String(page.title) }];
    return i === 0 || pages[i - 1]!.unnumbered ? [i, { S: 'D', St: i + 1 }] : [];
  });
  return { Nums: ranges };
}
