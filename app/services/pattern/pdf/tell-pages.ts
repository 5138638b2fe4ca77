/**
 * What a page is to those who are read to (ISO 32000-1, 14.8; ISO 14289-1): each item is written within the structure
 * element it belongs to, or as an artifact, which is passed over. The order of the items is the order in which they are read.
 *
 * Every part of a pattern is a section that begins with a heading of level 1; PDF/UA allows several of them, and whatever
 * parts a designer chooses, the first heading is then of the first level and none is skipped.
 */
import { itemBounds } from '../../../../shared/pattern/page/item-bounds.ts';
import type { GroupItem, Item, Page, PlainItem, TextItem } from '../../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import type { PdfPen } from '../pdf-pen.ts';
import { setAttributes } from './pdf-inside.ts';
import { newRules } from './structure-rules.ts';

export const POINTS_PER_MM = 72 / 25.4;

export interface Telling {
  /** Draws the items of the page that was begun last. */
  draw(page: Page, pen: PdfPen): void;
  /** When all pages are drawn. Whether all of it follows the rules of PDF/UA. */
  end(): { readonly keepsRules: boolean };
}

type Element = PDFKit.PDFStructureElement;

export function tellPages(pdf: PDFKit.PDFDocument): Telling {
  const story = pdf.struct('Document');
  pdf.addStructure(story);
  const rules = newRules();
  let section: {
    readonly part: Page['part'];
    readonly element: Element;
    readonly groups: Map<string, Element>;
  } | null = null;
  /** The element that a text without a role goes on in; it may have begun on the page before. */
  let current: Spot | null = null;
  const begun = new WeakSet<Element>();
  return {
    draw(page, pen) {
      if (!section || section.part !== page.part) {
        section = { part: page.part, element: pdf.struct('Sect'), groups: new Map() };
        story.add(section.element);
        current = null;
      }
      const teller = newTeller({ pdf, pen, rules, groups: section.groups, begun, current });
      teller.tell(page.items, section.element);
      current = teller.end();
    },
    end() {
      story.end();
      return { keepsRules: rules.kept() };
    },
  };
}

/** An element that holds text, and what it is tagged. */
interface Spot {
  readonly element: Element;
  readonly tag: string;
}

interface TellerOptions {
  readonly pdf: PDFKit.PDFDocument;
  readonly pen: PdfPen;
  readonly rules: ReturnType<typeof newRules>;
  readonly groups: Map<string, Element>;
  /** The elements that hold text already. */
  readonly begun: WeakSet<Element>;
  /** What was open at the end of the page before. */
  readonly current: Spot | null;
}

/** Writes one page. What is marked stays open until something else is to be marked. */
function newTeller({ pdf, pen, rules, groups, begun, ...before }: TellerOptions) {
  let current = before.current;
  let open: Element | string | null = null;

  const close = () => {
    const written = pen.take();
    if (written) pdf.addContent(written);
    if (open) pdf.endMarkedContent();
    open = null;
  };
  const markArtifact = (properties: string) => {
    if (open === properties) return;
    close();
    pdf.addContent(`/Artifact ${properties} BDC`);
    open = properties;
  };
  const markElement = (element: Element, tag: string) => {
    if (open === element) return;
    close();
    element.add(pdf.markStructureContent(tag));
    open = element;
  };
  const begin = (parent: Element, tag: string, options: object = {}): Element => {
    const element = pdf.struct(tag, options);
    parent.add(element);
    rules.enter(element, tag, parent);
    return element;
  };

  function tell(items: readonly Item[], parent: Element): void {
    for (const item of items) {
      switch (item.kind) {
        case 'group':
          group(item, parent);
          break;
        case 'figure':
          picture(item.alt, item, item.items.length === 0 ? [] : plainItems(item.items), parent);
          break;
        case 'image':
          picture(item.alt, item, [item], parent);
          break;
        case 'cells':
          picture(item.alt ?? '', item, [item], parent);
          break;
        case 'stamp':
          markArtifact(LAYOUT);
          pen.stamp(item);
          break;
        case 'text':
          text(item, parent);
          break;
        case 'rule':
        case 'box':
        case 'path':
          markArtifact(LAYOUT);
          pen.draw(item);
          break;
      }
    }
  }

  function group({ structure, id, items }: GroupItem, parent: Element): void {
    const { tag, holdsText, options, attributes } = structures[structure];
    let element = id === undefined ? undefined : groups.get(id);
    if (!element) {
      element = begin(parent, tag, options);
      const given = attributes?.(items);
      if (given) setAttributes(element, given);
      if (id !== undefined) groups.set(id, element);
    }
    current = holdsText ? { element, tag } : null;
    tell(items, element);
    current = null;
  }

  function picture(alt: string, whole: Item, items: readonly PlainItem[], parent: Element): void {
    if (!alt) markArtifact(LAYOUT);
    else {
      const { left, top, right, bottom } = itemBounds(whole);
      const bbox = [left, top, right, bottom].map((mm) => mm * POINTS_PER_MM);
      markElement(begin(parent, 'Figure', { alt, bbox }), 'Figure');
      current = null;
    }
    for (const item of items) pen.draw(item, Boolean(alt));
  }

  function text(item: TextItem, parent: Element): void {
    const role = item.role;
    if (role === 'aside' || role === 'foot' || role === 'again') {
      markArtifact(artifacts[role]);
      pen.draw(item);
      return;
    }
    const wanted = role ? tagOfRole[role] : 'P';
    if (role || !current) current = { element: begin(parent, wanted), tag: wanted };
    const { element, tag } = current;
    markElement(element, tag);
    if (begun.has(element) && !item.joined) pen.space(item);
    begun.add(element);
    if (item.link === undefined) pen.draw(item);
    else link(item, item.link, element);
  }

  function link(item: TextItem, page: number, within: Element): void {
    close();
    const element = pdf.struct('Link');
    within.add(element);
    element.add(pdf.markStructureContent('Link'));
    pen.draw(item);
    pdf.addContent(pen.take());
    pdf.endMarkedContent();
    const { left, top, right, bottom } = itemBounds(item);
    const [x, y, width, height] = [left, top, right - left, bottom - top].map((mm) => mm * POINTS_PER_MM);
    pdf.annotate(x!, y!, width!, height!, {
      Subtype: 'Link',
      Dest: pageDestination(page),
      Contents: new String(item.text),
      structParent: element,
    } as object);
    element.end();
  }

  return {
    tell,
    end(): Spot | null {
      close();
      return current;
    },
  };
}

/** The name of a page, from 1, as the goal of a link. */
export function pageDestination(page: number): string {
  return `page-${page}`;
}

const tagOfRole = { title: 'H1', heading: 'H2', paragraph: 'P' } as const;

const LAYOUT = '<</Type /Layout>>';

const artifacts = {
  aside: LAYOUT,
  foot: '<</Type /Pagination /Subtype /Footer /Attached [/Bottom]>>',
  again: '<</Type /Pagination /Subtype /Header /Attached [/Top]>>',
} as const;

interface StructureTag {
  readonly tag: string;
  /** Whether text without a role stands in it directly. */
  readonly holdsText: boolean;
  readonly options?: object;
  readonly attributes?: (items: readonly Item[]) => object | null;
}

const structures: Readonly<Record<GroupItem['structure'], StructureTag>> = {
  table: { tag: 'Table', holdsText: false },
  row: { tag: 'TR', holdsText: false },
  'column-head': { tag: 'TH', holdsText: true, options: { scope: 'Column' } },
  'row-head': { tag: 'TH', holdsText: true, options: { scope: 'Row' } },
  cell: { tag: 'TD', holdsText: true },
  list: { tag: 'L', holdsText: false, attributes: numbering },
  entry: { tag: 'LI', holdsText: false },
  mark: { tag: 'Lbl', holdsText: true },
  body: { tag: 'LBody', holdsText: true },
};

/** ISO 14289-1, 7.6: a list whose entries have marks says of which kind they are. */
function numbering(items: readonly Item[]): object | null {
  const mark = plainItems(items).find((item) => item.kind === 'text' || item.kind === 'box');
  if (!mark) return null;
  const kind = mark.kind === 'box' ? 'Square' : /^\d/.test(mark.text) ? 'Decimal' : 'Disc';
  return { O: 'List', ListNumbering: kind };
}
