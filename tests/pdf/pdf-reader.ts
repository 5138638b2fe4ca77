/** Reads a PDF back, as a viewer does: its words, its outline, and what is read aloud. */
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { spokenMarks } from './glyphs-read.ts';
import { openObjects } from './pdf-objects.ts';

export async function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise;
}

export interface Words {
  readonly str: string;
  /** In points from the sheet's bottom left corner. */
  readonly x: number;
  readonly y: number;
}

/** The texts of a page, from 1, in the order in which they are written. */
export async function wordsOn(pdf: PDFDocumentProxy, page: number): Promise<Words[]> {
  const { items } = await (await pdf.getPage(page)).getTextContent();
  return items.flatMap((item) =>
    'str' in item && item.str.trim() !== ''
      ? [{ str: item.str.trim(), x: item.transform[4] as number, y: item.transform[5] as number }]
      : [],
  );
}

export async function textOf(pdf: PDFDocumentProxy, page: number): Promise<string> {
  return (await wordsOn(pdf, page)).map(({ str }) => str).join(' ');
}

export interface Entry {
  readonly title: string;
  /** From 1. */
  readonly page: number;
  readonly entries: readonly Entry[];
}

export async function outlineOf(pdf: PDFDocumentProxy): Promise<Entry[]> {
  const entriesOf = (list: OutlineNodes): Promise<Entry[]> =>
    Promise.all(
      list.map(async ({ title, dest, items }) => ({
        title,
        page: (await pdf.getPageIndex((dest as PageRef[])[0]!)) + 1,
        entries: await entriesOf(items),
      })),
    );
  return entriesOf(((await pdf.getOutline()) ?? []) as OutlineNodes);
}

type OutlineNodes = readonly { title: string; dest: unknown; items: OutlineNodes }[];
type PageRef = Parameters<PDFDocumentProxy['getPageIndex']>[0];

/** The first page, from 1, whose entry in the outline begins with `title`. */
export async function pageOf(pdf: PDFDocumentProxy, title: string): Promise<number> {
  const all = (entries: readonly Entry[]): Entry[] => entries.flatMap((each) => [each, ...all(each.entries)]);
  const found = all(await outlineOf(pdf)).find((entry) => entry.title.startsWith(title));
  if (!found) throw new Error(`the outline has no entry that begins with '${title}'`);
  return found.page;
}

/**
 * What a screen reader says of a pattern, for each page a line for each heading, text, figure and cell: 'H1 Materials',
 * 'TD 564', 'Figure (its alternative text)'. Taken from the structure, so artifacts are not in it.
 */
export async function readAloud(bytes: Uint8Array): Promise<string[][]> {
  const pdf = await openPdf(bytes);
  const objects = openObjects(bytes);
  return Promise.all(
    objects.pages.map(async (page, i) => {
      const tree = (await (await pdf.getPage(i + 1)).getStructTree()) as Spoken | null;
      // A viewer's text leaves out spaces at the ends of lines; what is in the file counts.
      return tree ? linesOf(tree, spokenMarks(objects, page)) : [];
    }),
  );
}

interface Spoken {
  readonly role?: string;
  readonly alt?: string;
  readonly id?: string;
  readonly children?: readonly Spoken[];
}

const inline = new Set(['Link', 'Span']);

function linesOf({ role = '', alt, children = [] }: Spoken, spoken: ReadonlyMap<string, string>): string[] {
  if (role === 'Figure') return [`Figure (${alt ?? ''})`];
  const lines: string[] = [];
  let own = '';
  for (const child of children) {
    if (child.id !== undefined) own += spoken.get(child.id) ?? '';
    else if (inline.has(child.role ?? '')) own += linesOf(child, spoken).join('').replace(/^\S+ /, '');
    else lines.push(...linesOf(child, spoken));
  }
  const isText = children.some((child) => child.id !== undefined || inline.has(child.role ?? ''));
  return isText || lines.length === 0 ? [`${role} ${own.trim()}`.trim(), ...lines] : lines;
}
