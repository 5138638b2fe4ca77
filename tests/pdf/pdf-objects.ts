/** The objects, pages and drawing operators of a PDF as it was written here, for checks that look below what a viewer shows. */
import { openPdfFile, type PdfFile } from '../../app/services/pdf-in/pdf-file.ts';
import type { PdfDictionary, PdfValue } from '../../app/services/pdf-in/pdf-values.ts';

export interface PdfObjects extends PdfFile {
  /** The file's own bytes, a character each. */
  readonly text: string;
  /** Every object by its number. */
  readonly objects: ReadonlyMap<number, PdfValue>;
  /** By its number, the byte at which an object begins, after the file's table of places; those in streams are not told. */
  readonly places: ReadonlyMap<number, number>;
  readonly pages: readonly PdfPageObject[];
}

export interface PdfPageObject {
  readonly object: number;
  readonly dictionary: PdfDictionary;
  readonly operators: readonly PdfOperator[];
}

export interface PdfOperator {
  readonly name: string;
  /** As they are written: numbers, names, hex strings, brackets. */
  readonly operands: readonly string[];
}

export function openObjects(bytes: Uint8Array): PdfObjects {
  const file = openPdfFile(bytes);
  if (!file?.root) throw new Error('this is no PDF');
  const text = Buffer.from(bytes).toString('latin1');
  const { places, packed } = tableOf(file, text);
  const objects = new Map([...places.keys(), ...packed].map((object) => [object, file.resolve({ object })]));
  const kids = listOf(file, file.dictionaryOf(file.root.get('Pages'))?.get('Kids'));
  const pages = kids.map((kid) => {
    const dictionary = file.dictionaryOf(kid)!;
    const content = file.bytesOf(dictionary.get('Contents'))!;
    return {
      object: numberOf(kid),
      dictionary,
      operators: operatorsIn(Buffer.from(content).toString('latin1')),
    };
  });
  return { ...file, text, objects, places, pages };
}

export function listOf(file: PdfFile, value: PdfValue | undefined): readonly PdfValue[] {
  const list = file.resolve(value);
  return Array.isArray(list) ? list : [];
}

/** The number that a reference names. */
export function numberOf(value: PdfValue | undefined): number {
  return typeof value === 'object' && value !== null && 'object' in value ? value.object : -1;
}

export function nameOf(value: PdfValue | undefined): string {
  return typeof value === 'object' && value !== null && 'name' in value ? value.name : '';
}

/** A string's letters, where it is in UTF-16 or in the first 256 characters. */
export function textOfString(value: PdfValue | undefined): string {
  if (typeof value !== 'object' || value === null || !('text' in value)) return '';
  const bytes = Buffer.from(value.text, 'latin1');
  return bytes[0] === 0xfe && bytes[1] === 0xff ? bytes.subarray(2).swap16().toString('utf16le') : value.text;
}

interface Table {
  readonly places: Map<number, number>;
  /** The numbers of objects that lie in streams. */
  readonly packed: number[];
}

/** The table at the end: as text, ISO 32000-1, 7.5.4, or as a stream, 7.5.8. */
function tableOf(file: PdfFile, text: string): Table {
  const at = Number(/startxref\n(\d+)\n%%EOF\n?$/.exec(text)?.[1]);
  const stream = /^(\d+) 0 obj\n/.exec(text.slice(at, at + 20));
  if (stream) return tableInStream(file, Number(stream[1]));
  const [, count = '0'] = /^xref\n0 (\d+)\n/.exec(text.slice(at)) ?? [];
  const first = at + `xref\n0 ${count}\n`.length;
  const places = Array.from({ length: Number(count) - 1 }, (_, i): [number, number] => [
    i + 1,
    Number(text.slice(first + 20 * (i + 1)).slice(0, 10)),
  ]);
  return { places: new Map(places), packed: [] };
}

function tableInStream(file: PdfFile, object: number): Table {
  const widths = listOf(file, file.dictionaryOf({ object })?.get('W')).map(Number);
  const bytes = Buffer.from(file.bytesOf({ object }) ?? []);
  const size = widths.reduce((sum, width) => sum + width, 0);
  const places = new Map<number, number>();
  const packed: number[] = [];
  for (let number = 0; number < bytes.length / size; number++) {
    const kind = bytes.readUIntBE(number * size, widths[0]!);
    if (kind === 1) places.set(number, bytes.readUIntBE(number * size + widths[0]!, widths[1]!));
    if (kind === 2) packed.push(number);
  }
  return { places, packed };
}

export function operatorsIn(content: string): PdfOperator[] {
  const operators: PdfOperator[] = [];
  let operands: string[] = [];
  for (const [token] of content.matchAll(/<<|>>|\[|\]|<[0-9a-fA-F]*>|\/[^\s<>[\]/]+|[^\s<>[\]/]+/g)) {
    if (/^[a-zA-Z'"]/.test(token)) {
      operators.push({ name: token, operands });
      operands = [];
    } else operands.push(token);
  }
  return operators;
}
