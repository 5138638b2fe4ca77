import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** The text of each page, in the order in which it is written, lines joined by spaces. */
export async function readPdf(bytes: Uint8Array): Promise<{ pages: string[] }> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const { items } = await (await document.getPage(number)).getTextContent();
    pages.push(
      items
        .map((item) => ('str' in item ? item.str : ''))
        .join(' ')
        .replace(/\s+/g, ' '),
    );
  }
  await document.destroy();
  return { pages };
}
