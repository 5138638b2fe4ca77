/**
 * What of PDF/UA-1 (ISO 14289-1) a file breaks, clause by clause, as far as a program can tell and a pattern could break it.
 * That alternative texts, headings and the order make sense, a program can't tell: see the tests that read patterns aloud.
 */
import type { PdfDictionary, PdfValue } from '../../app/services/pdf-in/pdf-values.ts';
import { shownGlyphs } from './glyphs-read.ts';
import { metadataOf, propertyOf } from './pdf-a-faults.ts';
import {
  listOf,
  nameOf,
  numberOf,
  openObjects,
  type PdfObjects,
  type PdfPageObject,
  textOfString,
} from './pdf-objects.ts';

export function pdfUaFaults(bytes: Uint8Array): string[] {
  const pdf = openObjects(bytes);
  const elements = elementsIn(pdf);
  return [
    ...documentFaults(pdf),
    ...pdf.pages.flatMap((page, i) =>
      contentFaults(pdf, page, elements).map((fault) => `page ${i + 1}: ${fault}`),
    ),
    ...elements.flatMap((element) => elementFaults(pdf, element)),
    ...headingFaults(elements),
    ...glyphFaults(pdf),
  ];
}

/** Whether the file says that it follows the standard. */
export function saysUa(bytes: Uint8Array): boolean {
  return propertyOf(metadataOf(openObjects(bytes)), 'pdfuaid:part') === '1';
}

const unless = (holds: boolean, fault: string): string[] => (holds ? [] : [fault]);

interface Element {
  readonly object: number;
  readonly dictionary: PdfDictionary;
  readonly tag: string;
  readonly parent: Element | null;
  readonly kids: readonly Element[];
  /** The marks of its own content: the page's object and the mark's number. */
  readonly marks: readonly string[];
}

/** All structure elements, in reading order. */
function elementsIn(pdf: PdfObjects): Element[] {
  const all: Element[] = [];
  const read = (value: PdfValue, parent: Element | null): Element => {
    const dictionary = pdf.dictionaryOf(value)!;
    const kids: Element[] = [];
    const marks: string[] = [];
    const element = {
      object: numberOf(value),
      dictionary,
      tag: nameOf(dictionary.get('S')),
      parent,
      kids,
      marks,
    };
    all.push(element);
    for (const kid of listOf(pdf, dictionary.get('K'))) {
      const inner = pdf.dictionaryOf(kid);
      if (typeof kid === 'number') marks.push(`${numberOf(dictionary.get('Pg'))} ${kid}`);
      else if (inner?.has('MCID')) marks.push(`${numberOf(inner.get('Pg'))} ${String(inner.get('MCID'))}`);
      else if (!inner?.has('Obj')) kids.push(read(kid, element));
    }
    return element;
  };
  const root = pdf.dictionaryOf(pdf.root!.get('StructTreeRoot'));
  for (const kid of listOf(pdf, root?.get('K'))) read(kid, null);
  return all;
}

function documentFaults(pdf: PdfObjects): string[] {
  const root = pdf.root!;
  const mark = pdf.dictionaryOf(root.get('MarkInfo'));
  const outline = pdf.dictionaryOf(root.get('Outlines'));
  return [
    ...unless(mark?.get('Marked') === true && mark.get('Suspects') !== true, '7.1: it is not marked'),
    ...unless(!pdf.dictionaryOf(root.get('StructTreeRoot'))?.has('RoleMap'), '7.1: roles of its own'),
    ...unless(
      pdf.dictionaryOf(root.get('ViewerPreferences'))?.get('DisplayDocTitle') === true,
      '7.1: its title is not shown',
    ),
    ...unless(propertyOf(metadataOf(pdf), 'dc:title') !== '', '7.1: it has no title'),
    ...unless(/^[a-z]{2}(-|$)/.test(textOfString(root.get('Lang'))), '7.2: it has no language'),
    ...unless(pdf.pages.length < 2 || outline !== null, '7.17: it has no outline'),
    ...unless(!pdf.isLocked, '7.16: it is locked'),
    ...pdf.pages.flatMap(({ dictionary }) =>
      unless(nameOf(dictionary.get('Tabs')) === 'S', '7.18.3: tabs do not follow its structure'),
    ),
  ];
}

const painting = new Set(['f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'S', 's', 'Tj', 'TJ', 'Do', 'sh']);

/** 7.1: all content is either an artifact or belongs to exactly one element, by the page's own table too. */
function contentFaults(pdf: PdfObjects, page: PdfPageObject, elements: readonly Element[]): string[] {
  const owners = new Map(elements.flatMap((element) => element.marks.map((mark) => [mark, element.object])));
  const faults: string[] = [];
  const open: string[] = [];
  const marks = new Set<number>();
  for (const { name, operands } of page.operators) {
    if (name === 'BDC' || name === 'BMC') {
      const mark = /\/MCID (\d+)/.exec(operands.join(' '))?.[1];
      // Within an artifact other text may be given for what is drawn: that marks no content.
      const isReplaced = operands[0] === '/Span' && mark === undefined && open.join() === '/Artifact';
      faults.push(...unless(open.length === 0 || isReplaced, '7.1: content marked within marked content'));
      faults.push(
        ...unless(operands[0] === '/Artifact' || isReplaced || mark !== undefined, '7.1: marked as nothing'),
      );
      if (mark !== undefined) marks.add(Number(mark));
      open.push(operands[0]!);
    } else if (name === 'EMC') open.pop();
    else if (painting.has(name)) faults.push(...unless(open.length > 0, `7.1: ${name} outside all marks`));
  }
  const table = parentsOf(pdf, Number(page.dictionary.get('StructParents')));
  for (const mark of marks) {
    const owner = owners.get(`${page.object} ${mark}`);
    faults.push(...unless(owner !== undefined, `7.1: mark ${mark} belongs to nothing`));
    faults.push(
      ...unless(owner === numberOf(table[mark]), `7.1: mark ${mark} is another's in the table of parents`),
    );
  }
  const claimed = [...owners.keys()].filter((mark) => mark.startsWith(`${page.object} `));
  return [
    ...faults,
    ...unless(open.length === 0, '7.1: a mark is never closed'),
    ...unless(claimed.length === marks.size, '7.1: elements claim marks that are not there'),
  ];
}

function parentsOf(pdf: PdfObjects, key: number): readonly PdfValue[] {
  const tree = pdf.dictionaryOf(pdf.dictionaryOf(pdf.root!.get('StructTreeRoot'))?.get('ParentTree'));
  const numbers = listOf(pdf, tree?.get('Nums'));
  const at = numbers.findIndex((value, i) => i % 2 === 0 && value === key);
  return at < 0 ? [] : listOf(pdf, numbers[at + 1]);
}

/** The standard types that patterns use, and what may stand in each: ISO 32000-1, 14.8.4; null: what stands in a text. */
const content: Readonly<Record<string, readonly string[] | null>> = {
  Document: ['Sect'],
  Sect: ['H1', 'H2', 'H3', 'P', 'L', 'Table', 'Figure', 'Sect'],
  H1: null,
  H2: null,
  H3: null,
  P: null,
  Figure: [],
  Link: [],
  L: ['LI'],
  LI: ['Lbl', 'LBody'],
  Lbl: null,
  LBody: null,
  Table: ['TR'],
  TR: ['TH', 'TD'],
  TH: null,
  TD: null,
};
const inText = ['Link', 'P', 'Figure', 'L'];

function elementFaults(pdf: PdfObjects, element: Element): string[] {
  const { tag, dictionary, kids, parent, marks } = element;
  const attributes = pdf.dictionaryOf(dictionary.get('A'));
  const allowed = content[tag] === null ? inText : content[tag];
  const at = `${tag} ${element.object}`;
  const cells = kids.map((row) => row.kids.length);
  return [
    ...unless(allowed !== undefined, `7.1: ${at} is of no standard type`),
    ...kids.flatMap((kid) => unless(allowed?.includes(kid.tag) ?? false, `7.1: ${kid.tag} stands in ${at}`)),
    ...unless(
      parent === null || numberOf(dictionary.get('P')) === parent.object,
      `7.1: ${at} has another parent`,
    ),
    ...unless(
      marks.length === 0 || content[tag] === null || ['Figure', 'Link'].includes(tag),
      `7.1: ${at} holds text itself`,
    ),
    ...unless(tag !== 'Figure' || textOfString(dictionary.get('Alt')).length > 3, `7.3: ${at} has no words`),
    ...unless(
      tag !== 'Figure' || listOf(pdf, attributes?.get('BBox')).length === 4,
      `7.3: ${at} has no place`,
    ),
    ...unless(
      tag !== 'TH' || /^(Column|Row)$/.test(nameOf(attributes?.get('Scope'))),
      `7.5: ${at} heads nothing`,
    ),
    ...unless(tag !== 'Table' || new Set(cells).size === 1, `7.5: rows of ${at} have ${cells} cells`),
    ...unless(
      tag !== 'L' || /^(Decimal|Disc|Square)$/.test(nameOf(attributes?.get('ListNumbering'))),
      `7.6: ${at} is not numbered`,
    ),
    ...(tag === 'Link' ? linkFaults(pdf, element) : []),
  ];
}

/** 7.18.5: a link's annotation stands in its element, says in words what it leads to, and knows the element. */
function linkFaults(pdf: PdfObjects, { dictionary, object }: Element): string[] {
  const kids = listOf(pdf, dictionary.get('K')).map((kid) => pdf.dictionaryOf(kid));
  const reference = kids.find((kid) => kid?.has('Obj'));
  const annotation = pdf.dictionaryOf(reference?.get('Obj'));
  const tree = pdf.dictionaryOf(pdf.dictionaryOf(pdf.root!.get('StructTreeRoot'))?.get('ParentTree'));
  const numbers = listOf(pdf, tree?.get('Nums'));
  const key = numbers.findIndex((value, i) => i % 2 === 0 && value === annotation?.get('StructParent'));
  const page = pdf.pages.find((each) => each.object === numberOf(reference?.get('Pg')));
  const onPage = listOf(pdf, page?.dictionary.get('Annots')).map(numberOf);
  return [
    ...unless(annotation !== null, `7.18.5: link ${object} has no annotation`),
    ...unless(textOfString(annotation?.get('Contents')) !== '', `7.18.5: link ${object} has no words`),
    ...unless(numberOf(numbers[key + 1]) === object, `7.18.5: link ${object} is another's`),
    ...unless(onPage.includes(numberOf(reference?.get('Obj'))), `7.18.5: link ${object} is on another page`),
  ];
}

/** 7.4.2: the first heading is of level 1, and none is skipped going down. */
function headingFaults(elements: readonly Element[]): string[] {
  let level = 0;
  return elements.flatMap(({ tag, object }) => {
    const next = Number(/^H(\d)$/.exec(tag)?.[1] ?? 0);
    if (next === 0) return [];
    const fault = unless(next <= level + 1, `7.4.2: ${tag} ${object} follows level ${level}`);
    level = next;
    return fault;
  });
}

/** 7.21.7 and 7.21.8: every glyph is read as something, and none is the one for what a face lacks. */
function glyphFaults(pdf: PdfObjects): string[] {
  const faults = pdf.pages
    .flatMap((page) => shownGlyphs(pdf, page))
    .flatMap(({ glyph, read = '' }) => [
      ...unless(glyph !== 0, '7.21.8: a letter that the face lacks is drawn'),
      ...unless(/^[^\0\ufeff\ufffe\ufffd]+$/.test(read), `7.21.7: glyph ${glyph} is read as nothing`),
    ]);
  return [...new Set(faults)];
}
