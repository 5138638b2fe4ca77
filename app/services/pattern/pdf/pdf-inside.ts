/** What the pages use of pdfkit that its types do not describe: objects of the file, and the resources of a page. */
import type { PdfFace } from '../pdf-pen.ts';

/** An object of the file, written once it is ended. */
export interface PdfRef {
  readonly data: Record<string, unknown>;
  end(bytes?: Uint8Array): void;
}

/** pdfkit's own embedded font, as far as it is used. */
export interface EmbeddedFace extends PdfFace {
  /** By glyph of the subset, the characters that it is read as. */
  readonly unicode: number[][];
  /** By glyph of the subset, in 1/1000 em. */
  readonly widths: number[];
  /** From the face's units to 1/1000 em. */
  readonly scale: number;
  readonly subset: {
    /** By glyph of the subset, the face's own number of it. */
    readonly glyphs: readonly number[];
    /** Its number in the subset. */
    includeGlyph(id: number): number;
  };
  readonly font: {
    readonly characterSet: readonly number[];
    glyphForCodePoint(code: number): { readonly id: number; readonly advanceWidth: number };
  };
  ref(): object;
}

export interface OutlineEntry {
  readonly outlineData: Record<string, unknown>;
  readonly children: readonly OutlineEntry[];
  addItem(title: string): OutlineEntry;
}

export interface PdfInside {
  _font: EmbeddedFace;
  readonly _root: {
    readonly data: Record<string, unknown> & { Names: { data: { Dests: { limits: boolean } } } };
  };
  readonly outline: OutlineEntry;
  page: {
    readonly fonts: Record<string, object>;
    readonly xobjects: Record<string, object>;
    readonly ext_gstates: Record<string, object>;
  };
  ref(data: object): PdfRef & { compress: boolean };
  endMetadata(): void;
}

export function insideOf(pdf: PDFKit.PDFDocument): PdfInside {
  return pdf as unknown as PdfInside;
}

/** Gives attributes to a structure element that pdfkit has no option for. */
export function setAttributes(element: PDFKit.PDFStructureElement, attributes: object): void {
  (element as unknown as { dictionary: PdfRef }).dictionary.data.A = attributes;
}
