/**
 * A page of a pattern as data: what stands where, in mm from the sheet's top left corner. Nothing here knows PDF or
 * a screen; `draw-on-canvas.ts` and the pdf service draw the same items, so what is previewed is what is printed.
 */

import type { Language, PatternPart } from '../../design/pattern-schema.ts';

/** The faces that patterns are set in. `symbols` is the studio's own alphabet of yarn symbols. */
export type Face = 'sans' | 'sans-bold' | 'serif' | 'serif-bold' | 'symbols';

export interface TextItem {
  kind: 'text';
  /** Where the baseline meets the left, middle or right end, as `align` says. */
  x: number;
  y: number;
  text: string;
  face: Face;
  /** Em size in mm. */
  sizeMm: number;
  color: string;
  align: 'left' | 'center' | 'right';
  /**
   * What a text that is read aloud begins with this item; one without a role goes on in what came before. Passed over
   * are 'aside', the numbers around a chart; 'foot', what stands at the foot of each page; and 'again', what a page
   * before has told already, such as the heads of a table that goes on.
   */
  role?: 'title' | 'heading' | 'paragraph' | 'aside' | 'foot' | 'again';
  /** It goes on in the middle of a word that the item before has begun: read aloud without a gap. */
  joined?: boolean;
  /** The page it leads to, from 1. */
  link?: number;
}

export interface RuleItem {
  kind: 'rule';
  x1: number;
  y1: number;
  x2: number;
  y2: number;
  widthMm: number;
  color: string;
  dashMm?: readonly number[];
}

export interface BoxItem {
  kind: 'box';
  x: number;
  y: number;
  width: number;
  height: number;
  radius?: number;
  fill?: string;
  stroke?: string;
  strokeMm?: number;
  /** 0 to 1; what lies below shows through. Opaque where absent. */
  opacity?: number;
}

/** M x y, L x y, C x1 y1 x2 y2 x y, Z: as in SVG paths, absolute, one array. */
export type PathStep =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

export interface PathItem {
  kind: 'path';
  steps: readonly PathStep[];
  fill?: string;
  stroke?: string;
  strokeMm?: number;
  /** Ends and corners of the stroke: square at the point where absent. */
  cap?: 'round';
  dashMm?: readonly number[];
  /** 0 to 1; what lies below shows through. Opaque where absent. */
  opacity?: number;
}

/** How cells of one code are printed. */
export interface CellInk {
  /** Absent: what lies below is seen. */
  fill?: string;
  /** Its symbol's text; none on a bare cell. */
  symbol?: string;
  /** The symbol's colour. */
  ink: string;
  /** A line along the symbol's outline, which keeps it apart from what it lies on. */
  edge?: { color: string; widthMm: number };
}

/**
 * A block of cells. `codes` holds rows * columns yarn codes or BARE; neighbouring cells of one yarn are drawn as one
 * rectangle, and all symbols of the block as one text object for each ink.
 */
export interface CellsItem {
  kind: 'cells';
  x: number;
  y: number;
  cellWidth: number;
  cellHeight: number;
  columns: number;
  rows: number;
  codes: Uint8Array;
  /** By code; what has no entry is left as it is. */
  inks: Record<number, CellInk>;
  /** Size of the symbols, em in mm; no symbols are drawn where absent. */
  symbolMm?: number;
  /** The block in words, for those who can't see it. */
  alt?: string;
}

/** A picture that was made elsewhere. It fills its box, so the box is to have its proportions. */
export interface ImageItem {
  kind: 'image';
  x: number;
  y: number;
  width: number;
  height: number;
  mediaType: 'image/png' | 'image/jpeg';
  /** The file as it is. The same array stands for the same picture, wherever it is drawn. */
  bytes: Uint8Array;
  /** The picture in words, for those who can't see it; empty where it only decorates. */
  alt: string;
  /** Printed in greys, whatever its own colours are. */
  inGreys?: true;
}

/** What is drawn by itself. */
export type PlainItem = TextItem | RuleItem | BoxItem | PathItem | CellsItem | ImageItem;

/** Several items that are one picture: read aloud as one figure, whatever it is made of. */
export interface FigureItem {
  kind: 'figure';
  /** The picture in words, for those who can't see it. */
  alt: string;
  items: readonly PlainItem[];
}

/**
 * What belongs together when it is read aloud. Tables hold rows, and these heads and cells, as many in each row. Lists hold
 * entries, and these a mark (a number, a tick box) and a body.
 */
export type Structure =
  | 'table'
  | 'row'
  | 'column-head'
  | 'row-head'
  | 'cell'
  | 'list'
  | 'entry'
  | 'mark'
  | 'body';

/** Nothing of it is seen: its items are drawn as if they stood there by themselves. */
export interface GroupItem {
  kind: 'group';
  structure: Structure;
  items: readonly Item[];
  /** Groups of one id within a part are one: a table or an entry that goes on, here or on the next page. */
  id?: string;
}

/**
 * What comes again on other pages, there or in another place, such as the numbers of rows and the key. It is passed over when a
 * page is read aloud, and a file holds it once, however many pages show it.
 */
export interface StampItem {
  kind: 'stamp';
  /** Where on the page: the items are told from there. */
  x: number;
  y: number;
  items: readonly PlainItem[];
}

export type Item = PlainItem | FigureItem | GroupItem | StampItem;

export interface Page {
  widthMm: number;
  heightMm: number;
  /** For outline and preview: 'Cover', 'Materials', 'Chart, rows 1-50, cords 1-40'. */
  title: string;
  items: Item[];
  /** No page number is printed on it, as on a cover. */
  unnumbered?: boolean;
  /** The part of the pattern that it belongs to; absent in documents that are not composed of parts. */
  part?: PatternPart;
}

export interface PatternDocument {
  title: string;
  author: string;
  /** What it is, in a line, and words to find it by: for whoever keeps many files. */
  subject?: string;
  keywords?: readonly string[];
  language: Language;
  pages: Page[];
  /** What would disappoint a reader, such as a name with letters that the faces lack. */
  notices: string[];
}
