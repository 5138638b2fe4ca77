/**
 * What of PDF/A-2b (ISO 19005-2) and, where a file is attached, PDF/A-3b (ISO 19005-3) a file breaks, clause by clause, as far
 * as a program can tell and a pattern could break it. Conformance as a whole was not validated by an outside program.
 */
import { createRequire } from 'node:module';
import * as fontkit from 'fontkit';
import type { PdfDictionary } from '../../app/services/pdf-in/pdf-values.ts';
import {
  listOf,
  nameOf,
  numberOf,
  openObjects,
  operatorsIn,
  type PdfObjects,
  textOfString,
} from './pdf-objects.ts';

/** It has no types of its own. */
const { JSDOM } = createRequire(import.meta.url)('jsdom') as {
  JSDOM: new (html: string) => { readonly window: { readonly DOMParser: typeof DOMParser } };
};

type Check = (pdf: PdfObjects) => string[];

export function pdfAFaults(bytes: Uint8Array): string[] {
  const pdf = openObjects(bytes);
  return Object.entries(clauses).flatMap(([clause, check]) =>
    check(pdf).map((fault) => `${clause}: ${fault}`),
  );
}

/** The metadata as XML. */
export function metadataOf(pdf: PdfObjects): Document {
  const bytes = pdf.bytesOf(pdf.root!.get('Metadata'));
  const { DOMParser } = new JSDOM('').window;
  return new DOMParser().parseFromString(
    Buffer.from(bytes ?? [])
      .toString('utf8')
      .replace(/<\?xpacket[^>]*>/g, ''),
    'application/xml',
  );
}

export function propertyOf(xml: Document, name: string): string {
  return xml.getElementsByTagName(name)[0]?.textContent ?? '';
}

const unless = (holds: boolean, fault: string): string[] => (holds ? [] : [fault]);

function dictionariesOf(pdf: PdfObjects, type: string): PdfDictionary[] {
  return [...pdf.objects.values()].filter(
    (value): value is PdfDictionary => value instanceof Map && nameOf(value.get('Type')) === type,
  );
}

const clauses: Readonly<Record<string, Check>> = {
  '6.1.2 header': ({ text }) => unless(/^%PDF-1\.7\n%[\x80-\xff]{4}/.test(text), 'not as it is to be'),
  '6.1.3 trailer': (pdf) => [
    ...unless(/\/ID \[<[0-9a-f]{32}> <[0-9a-f]{32}>\]/.test(pdf.text), 'no identifier'),
    ...unless(!pdf.isLocked, 'encrypted'),
    ...unless(/%%EOF\n$/.test(pdf.text), 'bytes after its end'),
  ],
  '6.1.4 table of places': ({ places, text }) =>
    [...places].flatMap(([object, at]) =>
      unless(text.startsWith(`${object} 0 obj\n`, at), `object ${object} is not at ${at}`),
    ),
  '6.1.7 streams': (pdf) =>
    [...pdf.places].flatMap(([object, at]) => {
      const end = pdf.text.indexOf('endobj', at);
      const stream = pdf.text.indexOf('>>\nstream\n', at);
      if (stream < 0 || stream > end) return [];
      const dictionary = pdf.dictionaryOf({ object })!;
      const length = Number(pdf.resolve(dictionary.get('Length')));
      return [
        ...unless(
          pdf.text.startsWith('\nendstream\n', stream + 10 + length),
          `object ${object} has a wrong length`,
        ),
        ...unless(
          !/LZW|Crypt/.test(JSON.stringify(dictionary.get('Filter') ?? '')),
          `object ${object} has a filter`,
        ),
        ...unless(!dictionary.has('F'), `object ${object} lies outside the file`),
      ];
    }),
  '6.1.13 limits': (pdf) => [
    ...unless(pdf.objects.size < 8_388_607, 'too many objects'),
    ...pdf.pages.flatMap(({ dictionary }) =>
      listOf(pdf, dictionary.get('MediaBox'))
        .slice(2)
        .flatMap((side) => unless(Number(side) >= 3 && Number(side) <= 14_400, `a side of ${String(side)}`)),
    ),
  ],
  '6.2.3 output intent': (pdf) => {
    const [intent, ...others] = listOf(pdf, pdf.root!.get('OutputIntents')).map(
      (each) => pdf.dictionaryOf(each)!,
    );
    const profile = Buffer.from(pdf.bytesOf(intent?.get('DestOutputProfile')) ?? []);
    return [
      ...unless(others.length === 0 && nameOf(intent?.get('S')) === 'GTS_PDFA1', 'not one of its kind'),
      ...unless(profile.toString('latin1', 36, 40) === 'acsp', 'no ICC profile'),
      ...unless(profile.toString('latin1', 16, 20) === 'RGB ', 'not RGB'),
      ...unless((profile[8] ?? 9) <= 4, 'of a later version'),
    ];
  },
  '6.2.2 operators and 6.2.4 colours': (pdf) =>
    pdf.pages.flatMap(({ operators }) =>
      operators.flatMap(({ name }) => unless(allowedOperators.has(name), `operator ${name}`)),
    ),
  '6.2.5 graphics states': (pdf) =>
    dictionariesOf(pdf, 'ExtGState').flatMap((state) =>
      unless(!['TR', 'TR2', 'HTP', 'HTO', 'BM', 'SMask'].some((key) => state.has(key)), 'more than opacity'),
    ),
  '6.2.8 pictures': (pdf) =>
    externalObjects(pdf, 'Image').flatMap((image) => [
      ...unless(/^Device(RGB|Gray)$/.test(nameOf(image.get('ColorSpace'))), 'a picture in another space'),
      ...unless(
        !['Interpolate', 'Alternates', 'OPI', 'Intent'].some((key) => image.has(key)),
        'a picture with more',
      ),
    ]),
  '6.2.9 external objects': (pdf) => [
    ...unless(
      externalObjects(pdf, 'Image').length + externalObjects(pdf, 'Form').length ===
        dictionariesOf(pdf, 'XObject').length,
      'another than a picture or a form',
    ),
    ...externalObjects(pdf, 'Form').flatMap((form) => formFaults(pdf, form)),
  ],
  '6.2.11 fonts': fontFaults,
  '6.3 annotations': (pdf) =>
    dictionariesOf(pdf, 'Annot').flatMap((each) => [
      ...unless(nameOf(each.get('Subtype')) === 'Link', 'another than a link'),
      ...unless(each.get('F') === 4, 'one that is not printed, or hidden'),
    ]),
  '6.5 actions': (pdf) =>
    unless(
      !/\/(OpenAction|AA|JavaScript|Launch|AcroForm|XFA|OCProperties|NeedsRendering)\b/.test(pdf.text),
      'there are some',
    ),
  '6.6.2 metadata': metadataFaults,
  '6.8 files': fileFaults,
};

const allowedOperators = new Set(
  'q Q cm w J j M d i gs m l c v y h re S s f F f* B B* b b* n W W* BT ET Tc Tw Tz TL Tf Tr Ts Td TD Tm T* Tj TJ rg RG g G Do BMC BDC EMC'.split(
    ' ',
  ),
);

function externalObjects(pdf: PdfObjects, subtype: 'Image' | 'Form'): PdfDictionary[] {
  return dictionariesOf(pdf, 'XObject').filter((each) => nameOf(each.get('Subtype')) === subtype);
}

/** A form brings all that its operators name (6.2.2), and marks no content: it is shown on several pages. */
function formFaults(pdf: PdfObjects, form: PdfDictionary): string[] {
  const resources = pdf.dictionaryOf(form.get('Resources'));
  const has = (kind: string, name: string) =>
    Boolean(pdf.dictionaryOf(resources?.get(kind))?.has(name.slice(1)));
  const [object] = [...pdf.objects].find(([, value]) => value === form)!;
  const operators = operatorsIn(Buffer.from(pdf.bytesOf({ object })!).toString('latin1'));
  return [
    ...unless(!['OPI', 'PS', 'Subtype2', 'Ref'].some((key) => form.has(key)), 'a form with more'),
    ...unless(listOf(pdf, form.get('BBox')).length === 4, 'a form without bounds'),
    ...operators.flatMap(({ name, operands }) => [
      ...unless(allowedOperators.has(name) && name !== 'Do', `a form has the operator ${name}`),
      ...unless(name !== 'Tf' || has('Font', operands[0]!), `a form lacks the font ${operands[0]}`),
      ...unless(name !== 'gs' || has('ExtGState', operands[0]!), `a form lacks the state ${operands[0]}`),
      ...unless(!operands.join(' ').includes('/MCID'), 'a form marks content'),
    ]),
  ];
}

function fontFaults(pdf: PdfObjects): string[] {
  return dictionariesOf(pdf, 'Font')
    .filter((font) => nameOf(font.get('Subtype')) === 'Type0')
    .flatMap((font) => {
      const inner = pdf.dictionaryOf(listOf(pdf, font.get('DescendantFonts'))[0])!;
      const descriptor = pdf.dictionaryOf(inner.get('FontDescriptor'))!;
      const program = pdf.bytesOf(descriptor.get('FontFile2')) ?? pdf.bytesOf(descriptor.get('FontFile3'));
      const name = nameOf(font.get('BaseFont'));
      const widths = listOf(pdf, listOf(pdf, inner.get('W'))[1]).map(Number);
      return [
        ...unless(program !== null, `${name} is not embedded`),
        ...unless(/^[A-Z]{6}\+/.test(name), `${name} does not say that it is a part of a face`),
        ...unless(nameOf(font.get('Encoding')) === 'Identity-H', `${name} is encoded otherwise`),
        ...unless(
          textOfString(pdf.dictionaryOf(inner.get('CIDSystemInfo'))?.get('Ordering')) === 'Identity',
          `${name} has another order`,
        ),
        ...(descriptor.has('FontFile2') ? widthFaults(name, program!, widths) : []),
        ...unless(
          !descriptor.has('FontFile3') || widths.every((width) => width === 1000),
          `${name} has other widths`,
        ),
      ];
    });
}

/** 6.2.11.5: the widths in the file are those of the face that lies in it, within a thousandth of the em. */
function widthFaults(name: string, program: Uint8Array, widths: readonly number[]): string[] {
  const font = fontkit.create(Buffer.from(program)) as fontkit.Font;
  const scale = 1000 / font.unitsPerEm;
  return widths.flatMap((width, glyph) =>
    unless(
      Math.abs(font.getGlyph(glyph).advanceWidth * scale - width) <= 1,
      `${name}: glyph ${glyph} is ${width} wide`,
    ),
  );
}

function metadataFaults(pdf: PdfObjects): string[] {
  const xml = metadataOf(pdf);
  const stream = pdf.dictionaryOf(pdf.root!.get('Metadata'));
  const infoAt = /\/Info (\d+) 0 R/.exec(pdf.text)?.[1];
  const info = pdf.dictionaryOf({ object: Number(infoAt) });
  const day = (key: string) =>
    textOfString(pdf.resolve(info?.get(key))).replace(
      /^D:(....)(..)(..)(..)(..)(..)Z$/,
      '$1-$2-$3T$4:$5:$6Z',
    );
  const told = (key: string) => textOfString(pdf.resolve(info?.get(key)));
  return [
    ...unless(nameOf(stream?.get('Subtype')) === 'XML' && !stream?.has('Filter'), 'packed, or no XML'),
    ...unless(xml.getElementsByTagName('parsererror').length === 0, 'not well formed'),
    ...unless(propertyOf(xml, 'dc:title') === told('Title'), 'another title'),
    ...unless(propertyOf(xml, 'dc:creator') === told('Author'), 'another author'),
    ...unless(propertyOf(xml, 'dc:description') === told('Subject'), 'another subject'),
    ...unless(propertyOf(xml, 'pdf:Keywords') === told('Keywords'), 'other keywords'),
    ...unless(propertyOf(xml, 'xmp:CreatorTool') === told('Creator'), 'another program'),
    ...unless(propertyOf(xml, 'pdf:Producer') === told('Producer'), 'another producer'),
    ...unless(propertyOf(xml, 'xmp:CreateDate') === day('CreationDate'), 'another day'),
    ...unless(propertyOf(xml, 'xmp:ModifyDate') === day('ModDate'), 'another day of change'),
    ...unless(/^[23]$/.test(propertyOf(xml, 'pdfaid:part')), 'no part of PDF/A'),
    ...unless(propertyOf(xml, 'pdfaid:conformance') === 'B', 'another level'),
    ...unless(
      propertyOf(xml, 'pdfuaid:part') === '' || propertyOf(xml, 'pdfaSchema:prefix') === 'pdfuaid',
      'an unknown property',
    ),
  ];
}

function fileFaults(pdf: PdfObjects): string[] {
  const files = dictionariesOf(pdf, 'Filespec');
  const part = propertyOf(metadataOf(pdf), 'pdfaid:part');
  const associated = listOf(pdf, pdf.root!.get('AF')).map(numberOf);
  return [
    ...unless(files.length === 0 || part === '3', 'PDF/A-2 allows no other files'),
    ...unless(associated.length === files.length, 'files that are not associated'),
    ...files.flatMap((file) => {
      const inside = pdf.dictionaryOf(pdf.dictionaryOf(file.get('EF'))?.get('F'));
      return [
        ...unless(file.has('F') && file.has('UF'), 'a file without a name'),
        ...unless(nameOf(file.get('AFRelationship')) === 'Source', 'a file that stands in no relation'),
        ...unless(nameOf(inside?.get('Subtype')) === 'application/json', 'a file of no kind'),
        ...unless(pdf.dictionaryOf(inside?.get('Params'))?.has('ModDate') ?? false, 'a file without a day'),
      ];
    }),
  ];
}
