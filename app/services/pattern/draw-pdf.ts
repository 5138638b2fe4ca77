/**
 * A pattern's pages as a PDF: vectors, embedded faces, an outline entry for each page, and a structure that is read
 * aloud in order. The same document and date give the same bytes.
 */
import { readFileSync } from 'node:fs';
import { setImmediate } from 'node:timers/promises';
import PDFDocument from 'pdfkit';
import type { CancelSignal, Progress } from '../../../shared/bridge.ts';
import type { Face, Item, Page, PatternDocument } from '../../../shared/pattern/page.ts';
import { facePath } from './face-path.ts';
import { type PdfFace, type PdfPen, type PdfPenOptions, pdfPen } from './pdf-pen.ts';

export interface WritePdfOptions {
  /** Stands in the file as the day it was made. */
  readonly date: Date;
  readonly signal?: CancelSignal;
  readonly onProgress?: (progress: Progress) => void;
}

const POINTS_PER_MM = 72 / 25.4;

/** Null where it was cancelled. */
export async function writePatternPdf(
  document: PatternDocument,
  { date, signal, onProgress }: WritePdfOptions,
): Promise<Uint8Array | null> {
  const pdf = newPdf(document, date);
  const chunks: Uint8Array[] = [];
  pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => pdf.on('end', resolve).on('error', reject));
  const story = pdf.struct('Document');
  pdf.addStructure(story);
  const books = { face: faceBook(pdf), opacityName: opacityBook(pdf) };
  for (const [index, page] of document.pages.entries()) {
    // Lets a cancelling call arrive.
    await setImmediate();
    if (signal?.aborted) return null;
    onProgress?.({
      done: index / document.pages.length,
      what: `Page ${index + 1} of ${document.pages.length}`,
    });
    drawPage(pdf, page, books, story);
  }
  story.end();
  pdf.end();
  await ended;
  if (signal?.aborted) return null;
  onProgress?.({ done: 1, what: 'The pattern is ready' });
  return Uint8Array.from(Buffer.concat(chunks));
}

function newPdf({ title, author, language }: PatternDocument, date: Date): PDFKit.PDFDocument {
  return new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: language,
    displayTitle: true,
    tagged: true,
    info: {
      Title: title,
      ...(author && { Author: author }),
      Creator: 'Larkrow',
      Producer: 'Larkrow',
      CreationDate: date,
      ModDate: date,
    },
  });
}

function drawPage(
  pdf: PDFKit.PDFDocument,
  page: Page,
  books: PdfPenOptions,
  story: PDFKit.PDFStructureElement,
): void {
  pdf.addPage({
    size: [page.widthMm * POINTS_PER_MM, page.heightMm * POINTS_PER_MM],
    margin: 0,
  });
  pdf.outline.addItem(page.title);
  pdf.addContent(`${POINTS_PER_MM} 0 0 ${POINTS_PER_MM} 0 0 cm`);
  const section = pdf.struct('Sect');
  story.add(section);
  drawTagged(pdf, page.items, pdfPen(books), section);
  section.end();
}

/** Each item within the structure that it belongs to: a text that is read aloud, a figure, or decoration. */
function drawTagged(
  pdf: PDFKit.PDFDocument,
  items: readonly Item[],
  pen: PdfPen,
  section: PDFKit.PDFStructureElement,
): void {
  let open: Tag | null = null;
  const flush = () => pdf.addContent(pen.take());
  for (const item of items) {
    const tag = tagOf(item, open);
    if (tag !== open || begins(item)) {
      flush();
      if (open) pdf.endMarkedContent();
      if (tag === 'Artifact') pdf.markContent('Artifact');
      else {
        const alt = altOf(item);
        const part = pdf.struct(tag, alt ? { alt } : {}, [pdf.markStructureContent(tag)]);
        section.add(part);
      }
      open = tag;
    }
    pen.draw(item);
  }
  flush();
  if (open) pdf.endMarkedContent();
}

type Tag = 'H1' | 'H2' | 'P' | 'Figure' | 'Artifact';

const tagOfRole = { title: 'H1', heading: 'H2', paragraph: 'P', aside: 'Artifact' } as const;

function tagOf(item: Item, open: Tag | null): Tag {
  if (altOf(item)) return 'Figure';
  if (item.kind !== 'text') return 'Artifact';
  if (item.role) return tagOfRole[item.role];
  return open === null || open === 'Artifact' || open === 'Figure' ? 'P' : open;
}

function begins(item: Item): boolean {
  return Boolean(altOf(item)) || (item.kind === 'text' && Boolean(item.role) && item.role !== 'aside');
}

function altOf(item: Item): string | undefined {
  return item.kind === 'cells' || item.kind === 'figure' ? item.alt : undefined;
}

/** pdfkit's own embedded font, as far as it is used: the types do not describe it. */
interface EmbeddedFace extends PdfFace {
  ref(): object;
}

interface PdfInside {
  _font: EmbeddedFace;
  page: { fonts: Record<string, object> };
}

/** Each face is read and embedded once, when a page first uses it, and put among the resources of the page. */
function faceBook(pdf: PDFKit.PDFDocument): PdfPenOptions['face'] {
  const embedded = new Map<Face, EmbeddedFace>();
  const inside = pdf as unknown as PdfInside;
  return (face) => {
    let font = embedded.get(face);
    if (!font) {
      pdf.registerFont(face, readFileSync(facePath(face))).font(face);
      font = inside._font;
      embedded.set(face, font);
    }
    inside.page.fonts[font.id] ??= font.ref();
    return font;
  };
}

/** Graphics states by opacity, each written once and put among the resources of the pages that use it. */
function opacityBook(pdf: PDFKit.PDFDocument): (opacity: number) => string {
  const inside = pdf as unknown as {
    ref(data: object): { end(): void };
    page: { ext_gstates: Record<string, object> };
  };
  const states = new Map<number, { end(): void }>();
  return (opacity) => {
    let state = states.get(opacity);
    if (!state) {
      state = inside.ref({ Type: 'ExtGState', ca: opacity, CA: opacity });
      state.end();
      states.set(opacity, state);
    }
    const name = `Opacity${Math.round(opacity * 100)}`;
    inside.page.ext_gstates[name] = state;
    return name;
  };
}
