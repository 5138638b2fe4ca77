/**
 * A pattern's pages as a PDF: vectors, embedded faces, an outline, and a structure that is read aloud in order. The same
 * document and date give the same bytes.
 *
 * The file follows PDF/A-2b (ISO 19005-2), or PDF/A-3b where a design is attached, and PDF/UA-1 (ISO 14289-1); it says so
 * only where its structure does. `tests/unit/services/pattern-standards.test.ts` reads files back clause by clause.
 */
import { setImmediate } from 'node:timers/promises';
import PDFDocument from 'pdfkit';
import type { CancelSignal, Progress } from '../../../shared/bridge.ts';
import { imagesOn } from '../../../shared/pattern/page/draw-on-canvas.ts';
import type { PatternDocument } from '../../../shared/pattern/page/page.ts';
import { itemsWithin } from '../../../shared/pattern/page/plain-items.ts';
import { embedFaces } from './pdf/faces.ts';
import { newOutline } from './pdf/outline.ts';
import { packObjects } from './pdf/pack-objects.ts';
import { embedImages } from './pdf/pdf-images.ts';
import { insideOf, type PdfInside, type PdfRef } from './pdf/pdf-inside.ts';
import { POINTS_PER_MM, pageDestination, tellPages } from './pdf/tell-pages.ts';
import { xmpOf } from './pdf/xmp.ts';
import { type PdfPenOptions, type PdfStamp, pdfPen } from './pdf-pen.ts';

export interface WritePdfOptions {
  /** Stands in the file as the day it was made. */
  readonly date: Date;
  /** A design to put into the file, as it is saved. */
  readonly attached?: AttachedDesign;
  readonly signal?: CancelSignal;
  readonly onProgress?: (progress: Progress) => void;
  /** A sentence on what could not be drawn. */
  readonly onNotice?: (sentence: string) => void;
}

export interface AttachedDesign {
  /** With its ending. */
  readonly fileName: string;
  readonly bytes: Uint8Array;
}

const PROGRAM = 'Larkrow';

/** Null where it was cancelled. */
export async function writePatternPdf(
  document: PatternDocument,
  { date, attached, signal, onProgress, onNotice = () => {} }: WritePdfOptions,
): Promise<Uint8Array | null> {
  const pdf = newPdf(document, date, attached !== undefined);
  const inside = insideOf(pdf);
  const chunks: Uint8Array[] = [];
  pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => pdf.on('end', resolve).on('error', reject));
  // A tree of names that is all root has no limits: ISO 32000-1, table 36.
  inside._root.data.Names.data.Dests.limits = false;
  const images = await embedImages(pdf, document.pages.flatMap(imagesOn), onNotice);
  const faces = embedFaces(pdf);
  const books = {
    face: faces.use,
    opacityName: opacityBook(inside),
    imageName: images.nameOn,
    stampName: stampBook(inside),
  };
  const telling = tellPages(pdf);
  const outline = newOutline(inside, document.pages);
  const linked = linkedPages(document);
  for (const [index, page] of document.pages.entries()) {
    // Lets a cancelling call arrive.
    await setImmediate();
    if (signal?.aborted) return null;
    onProgress?.({
      done: index / document.pages.length,
      what: `Page ${index + 1} of ${document.pages.length}`,
    });
    pdf.addPage({ size: [page.widthMm * POINTS_PER_MM, page.heightMm * POINTS_PER_MM], margin: 0 });
    if (linked.has(index + 1)) pdf.addNamedDestination(pageDestination(index + 1), 'Fit');
    outline.enter(page);
    pdf.addContent(`${POINTS_PER_MM} 0 0 ${POINTS_PER_MM} 0 0 cm`);
    telling.draw(page, pdfPen(books));
  }
  const { keepsRules } = telling.end();
  outline.end();
  faces.end();
  if (attached) attach(pdf, attached, date);
  endWithMetadata(inside, document, {
    date,
    pdfAPart: attached ? 3 : 2,
    isUa: keepsRules && document.title !== '',
  });
  pdf.end();
  await ended;
  if (signal?.aborted) return null;
  onProgress?.({ done: 1, what: 'The pattern is ready' });
  const bytes = Buffer.concat(chunks);
  // A file that carries its design stays as it is: what lies in it plainly is still found where the file is damaged.
  return new Uint8Array(attached ? bytes : packObjects(bytes));
}

function newPdf(
  { title, author, subject, keywords, language }: PatternDocument,
  date: Date,
  holdsFile: boolean,
): PDFKit.PDFDocument {
  return new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    // Brings the output intent, sRGB.
    subset: holdsFile ? 'PDF/A-3b' : 'PDF/A-2b',
    lang: language,
    displayTitle: true,
    tagged: true,
    info: {
      ...(title && { Title: title }),
      ...(author && { Author: author }),
      ...(subject && { Subject: subject }),
      ...(keywords && { Keywords: keywords.join(', ') }),
      Creator: PROGRAM,
      Producer: PROGRAM,
      CreationDate: date,
      ModDate: date,
    },
  });
}

/** pdfkit's own packet leaves out the day of change and does not mask '&': ours is written in its place. */
function endWithMetadata(
  inside: PdfInside,
  { title, author, subject = '', keywords = [], language }: PatternDocument,
  rest: { readonly date: Date; readonly pdfAPart: 2 | 3; readonly isUa: boolean },
): void {
  inside.endMetadata = () => {
    const packet = inside.ref({ Type: 'Metadata', Subtype: 'XML' });
    // Whoever looks for metadata without reading PDF must find them.
    packet.compress = false;
    packet.end(
      new TextEncoder().encode(
        xmpOf({ title, author, subject, keywords, language, program: PROGRAM, ...rest }),
      ),
    );
    inside._root.data.Metadata = packet;
  };
}

/** ISO 19005-3, 6.8: an associated file, of which the pages were made. */
function attach(pdf: PDFKit.PDFDocument, { fileName, bytes }: AttachedDesign, date: Date): void {
  // Its types lack the relationship.
  const options: PDFKit.Mixins.PDFAttachmentOptions & { readonly relationship: string } = {
    name: fileName,
    type: 'application/json',
    relationship: 'Source',
    description: 'The design, for Larkrow',
    creationDate: date,
    modifiedDate: date,
  };
  pdf.file(Buffer.from(bytes), options);
}

function linkedPages({ pages }: PatternDocument): Set<number> {
  const links = pages.flatMap(({ items }) =>
    itemsWithin(items).map((item) => (item.kind === 'text' ? item.link : undefined)),
  );
  return new Set(links.filter((page) => page !== undefined));
}

/**
 * Stamps by what they draw, each written once, as a form (ISO 32000-1, 8.10), and put among the resources of the pages that
 * show it. The same items are not drawn again.
 */
function stampBook(inside: PdfInside): PdfPenOptions['stampName'] {
  const forms = new Map<string, { readonly name: string; readonly ref: PdfRef }>();
  const known = new WeakMap<object, { readonly name: string; readonly ref: PdfRef }>();
  const formOf = ({ operators, boxOf }: PdfStamp) => {
    const there = forms.get(operators);
    if (there) return there;
    const { fonts, ext_gstates } = inside.page;
    const ref = inside.ref({
      Type: 'XObject',
      Subtype: 'Form',
      BBox: boxOf(),
      Resources: { Font: namedIn(operators, fonts), ExtGState: namedIn(operators, ext_gstates) },
    });
    ref.end(new TextEncoder().encode(operators));
    const form = { name: `Stamp${forms.size + 1}`, ref };
    forms.set(operators, form);
    return form;
  };
  return (items, drawn) => {
    const form = known.get(items) ?? formOf(drawn());
    known.set(items, form);
    inside.page.xobjects[form.name] = form.ref;
    return form.name;
  };
}

/** Those of a page's resources that operators name. */
function namedIn(operators: string, resources: Readonly<Record<string, object>>): Record<string, object> {
  return Object.fromEntries(Object.entries(resources).filter(([name]) => operators.includes(`/${name} `)));
}

/** Graphics states by opacity, each written once and put among the resources of the pages that use it. */
function opacityBook(inside: PdfInside): (opacity: number) => string {
  const states = new Map<number, { readonly name: string; readonly ref: PdfRef }>();
  return (opacity) => {
    let state = states.get(opacity);
    if (!state) {
      state = {
        name: `Opacity${states.size + 1}`,
        ref: inside.ref({ Type: 'ExtGState', ca: opacity, CA: opacity }),
      };
      state.ref.end();
      states.set(opacity, state);
    }
    inside.page.ext_gstates[state.name] = state.ref;
    return state.name;
  };
}
