/**
 * The metadata of a pattern as XMP (ISO 16684-1): the same facts as in the file's information dictionary, as PDF/A asks, and
 * which standards the file follows.
 */
import type { Language } from '../../../../shared/design/pattern-schema.ts';

export interface Metadata {
  readonly title: string;
  readonly author: string;
  /** Empty: none is told. */
  readonly subject: string;
  readonly keywords: readonly string[];
  readonly language: Language;
  readonly program: string;
  readonly date: Date;
  /** 2 where nothing is attached, 3 where another file is: PDF/A-2 allows none that is not PDF/A itself. */
  readonly pdfAPart: 2 | 3;
  readonly isUa: boolean;
}

export function xmpOf(metadata: Metadata): string {
  const { title, author, subject, keywords, language, program, date, pdfAPart, isUa } = metadata;
  const day = date.toISOString().replace(/\.\d+Z$/, 'Z');
  return [
    '<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>',
    '<x:xmpmeta xmlns:x="adobe:ns:meta/">',
    '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    description(
      'dc="http://purl.org/dc/elements/1.1/"',
      '<dc:format>application/pdf</dc:format>',
      title &&
        `<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escaped(title)}</rdf:li></rdf:Alt></dc:title>`,
      author && `<dc:creator><rdf:Seq><rdf:li>${escaped(author)}</rdf:li></rdf:Seq></dc:creator>`,
      subject &&
        `<dc:description><rdf:Alt><rdf:li xml:lang="x-default">${escaped(subject)}</rdf:li></rdf:Alt></dc:description>`,
      keywords.length > 0 &&
        `<dc:subject><rdf:Bag>${keywords.map((word) => `<rdf:li>${escaped(word)}</rdf:li>`).join('')}</rdf:Bag></dc:subject>`,
      `<dc:language><rdf:Bag><rdf:li>${language}</rdf:li></rdf:Bag></dc:language>`,
    ),
    description(
      'xmp="http://ns.adobe.com/xap/1.0/"',
      `<xmp:CreateDate>${day}</xmp:CreateDate>`,
      `<xmp:ModifyDate>${day}</xmp:ModifyDate>`,
      `<xmp:CreatorTool>${escaped(program)}</xmp:CreatorTool>`,
    ),
    description(
      'pdf="http://ns.adobe.com/pdf/1.3/"',
      keywords.length > 0 && `<pdf:Keywords>${escaped(keywords.join(', '))}</pdf:Keywords>`,
      `<pdf:Producer>${escaped(program)}</pdf:Producer>`,
    ),
    description(
      'pdfaid="http://www.aiim.org/pdfa/ns/id/"',
      `<pdfaid:part>${pdfAPart}</pdfaid:part>`,
      '<pdfaid:conformance>B</pdfaid:conformance>',
    ),
    isUa && description('pdfuaid="http://www.aiim.org/pdfua/ns/id/"', '<pdfuaid:part>1</pdfuaid:part>'),
    isUa && uaExplained,
    '</rdf:RDF>',
    '</x:xmpmeta>',
    '<?xpacket end="w"?>',
  ]
    .filter(Boolean)
    .join('\n');
}

function description(namespace: string, ...properties: (string | false)[]): string {
  const told = properties.filter((each) => each !== false);
  return `<rdf:Description rdf:about="" xmlns:${namespace}>${told.join('')}</rdf:Description>`;
}

/** PDF/A asks that properties which it does not know itself, such as PDF/UA's, are explained (ISO 19005-2, 6.6.2.3.3). */
const uaExplained = [
  '<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"',
  ' xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">',
  '<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">',
  '<pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>',
  '<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>',
  '<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>',
  '<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">',
  '<pdfaProperty:name>part</pdfaProperty:name>',
  '<pdfaProperty:valueType>Integer</pdfaProperty:valueType>',
  '<pdfaProperty:category>internal</pdfaProperty:category>',
  '<pdfaProperty:description>The part of ISO 14289 that the file follows</pdfaProperty:description>',
  '</rdf:li></rdf:Seq></pdfaSchema:property>',
  '</rdf:li></rdf:Bag></pdfaExtension:schemas></rdf:Description>',
].join('');

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

function escaped(text: string): string {
  return text.replace(/[&<>]/g, (letter) => entities[letter]!);
}
