/**
 * The design inside a pattern that was made with it: one of the files that the PDF carries (ISO 32000-1, 7.11.4). The PDF may
 * have been saved again by other programs since.
 *
 * Problems: `too-large`, `no-design-inside`, `locked`, and those of a design that is damaged.
 */
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { readDesignBytes } from '../../../shared/design/read-design.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { openPdfFile, type PdfFile } from './pdf-file.ts';
import type { PdfDictionary, PdfValue } from './pdf-values.ts';

export interface DesignInPdf {
  readonly design: Design;
  /** The design's own file. */
  readonly bytes: Uint8Array;
}

/** Whether a file calls itself a PDF. Some have a few bytes before it. */
export function isPdf(bytes: Uint8Array): boolean {
  return Buffer.from(bytes.subarray(0, 1024)).toString('latin1').includes('%PDF-');
}

export function designInPdf(bytes: Uint8Array): Result<DesignInPdf> {
  if (bytes.length > limits.patternBytes) return tooLarge;
  const file = openPdfFile(bytes);
  if (!file) return tooLarge;
  let fault: Result<never> | null = null;
  for (const specification of designsFirst(file, filesIn(file))) {
    const found = file.dictionaryOf(specification.get('EF'));
    const inside = file.bytesOf(found?.get('UF')) ?? file.bytesOf(found?.get('F'));
    if (!inside) continue;
    const design = readDesignBytes(inside);
    if (design.ok) return good({ design: design.value, bytes: inside });
    if (design.problem.code !== 'not-a-design') fault ??= design;
  }
  return fault ?? (file.isLocked ? locked : nothingInside);
}

const tooLarge = problem(
  'too-large',
  `This PDF is larger than the ${limits.patternBytes / 1024 / 1024} MiB that Larkrow opens. Open the design itself, a .larkrow file.`,
);

/** Known from a file's size, before it is read. */
export const patternTooLarge = tooLarge.problem;

const locked = problem(
  'locked',
  'This PDF is locked, so that no design can be read from it. Open a copy that asks for no password.',
);

const nothingInside = problem(
  'no-design-inside',
  'There is no design in this PDF. Only a pattern that was made with its design inside can be opened; choose that one, or the design itself.',
);

/** Files that are tried: a pattern carries one. */
const MOST_FILES = 16;
/** Branches of the tree of names that are looked at. */
const MOST_BRANCHES = 256;

/** What describes the files: those of the whole document, and those listed by name. */
function filesIn(file: PdfFile): PdfDictionary[] {
  const associated = listOf(file, file.root?.get('AF'));
  const names = file.dictionaryOf(file.root?.get('Names'));
  const all = [...associated, ...namedIn(file, names?.get('EmbeddedFiles'))];
  return all
    .slice(0, MOST_BRANCHES)
    .map((value) => file.dictionaryOf(value))
    .filter((each) => each !== null);
}

/** The values of a tree of names (ISO 32000-1, 7.9.6), each branch once. */
function namedIn(file: PdfFile, tree: PdfValue | undefined): PdfValue[] {
  const values: PdfValue[] = [];
  const branches: (PdfValue | undefined)[] = [tree];
  for (let seen = 0; seen < branches.length && seen < MOST_BRANCHES; seen++) {
    const branch = file.dictionaryOf(branches[seen]);
    const names = listOf(file, branch?.get('Names'));
    values.push(...names.filter((_, i) => i % 2 === 1));
    branches.push(...listOf(file, branch?.get('Kids')));
  }
  return values;
}

function listOf(file: PdfFile, value: PdfValue | undefined): readonly PdfValue[] {
  const list = file.resolve(value);
  return Array.isArray(list) ? list.slice(0, MOST_BRANCHES) : [];
}

/** Those that are called designs before others, and no more than are worth a try. */
function designsFirst(file: PdfFile, files: readonly PdfDictionary[]): PdfDictionary[] {
  const isCalledDesign = (each: PdfDictionary) =>
    [each.get('UF'), each.get('F')].some((name) => {
      const text = file.resolve(name);
      // Names may be in UTF-16, with zeros between the letters.
      return isText(text) && text.text.replaceAll('\0', '').toLowerCase().endsWith('.larkrow');
    });
  const called = files.filter(isCalledDesign);
  return [...called, ...files.filter((each) => !called.includes(each))].slice(0, MOST_FILES);
}

function isText(value: PdfValue): value is { readonly text: string } {
  return typeof value === 'object' && value !== null && 'text' in value;
}
