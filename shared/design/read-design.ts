/**
 * From a file's text to a design, or to one sentence that says what is wrong with it and what to do. Nothing is half
 * opened, and nothing in a file can crash or stall the studio: its cost is known before it is parsed, its values go
 * through the schema, its cells through a strict reader.
 *
 * Problems: `not-a-design`, `damaged`, `too-large`, `newer-version`.
 */
import { good, problem, type Result } from '../result.ts';
import { brokenLaw, type Law, laws } from './check-design.ts';
import type { Design, Layer } from './design.ts';
import { limits } from './limits.ts';
import { canMigrate, type JsonObject, type Migrations, migrate, migrations } from './migrations.ts';
import { codesAllowed, readRow } from './row-text.ts';
import { DESIGN_FORMAT, DESIGN_VERSION, type DesignFile } from './schema.ts';
import { askSchema, quoted } from './schema-fault.ts';
import { sizeFault } from './size-fault.ts';
import { textProblem, tooManyBytes } from './text-problem.ts';
import { textOfUtf8 } from './utf8.ts';

/** What a file is held to; a test passes others, to show that each of ours is needed. */
export interface Rules {
  readonly steps: Migrations;
  readonly laws: readonly Law[];
}

const ours: Rules = { steps: migrations, laws };

/** The design in a file's bytes: UTF-8, with or without a byte-order mark. */
export function readDesignBytes(bytes: Uint8Array): Result<Design> {
  if (bytes.length > limits.fileBytes) return { ok: false, problem: tooManyBytes };
  const text = textOfUtf8(bytes);
  if (text !== null) return readDesign(text);
  return opensWithBrace(bytes) ? damaged('some of its bytes are not text (UTF-8)') : notADesign;
}

/** The design in a file's text. */
export function readDesign(text: string, rules: Rules = ours): Result<Design> {
  const tooMuch = textProblem(text);
  if (tooMuch) return { ok: false, problem: tooMuch };
  const parsed = objectIn(text);
  if (!parsed.ok) return parsed;
  const { version } = parsed.value;
  if (typeof version !== 'number' || !Number.isInteger(version)) {
    return damaged('it does not say of which version it is');
  }
  if (version > DESIGN_VERSION) return newer(version);
  if (!canMigrate(version, rules.steps)) return damaged(`there never was a version ${version} of designs`);
  const file = migrate(parsed.value, version, rules.steps);
  const beyond = countFault(file);
  if (beyond) return tooLarge(beyond);
  const answer = askSchema(file);
  if ('fault' in answer) return damaged(answer.fault);
  return designOf(answer.file, rules.laws);
}

/** The JSON object with our format in `text`, cleared of keys that could be taken for prototypes. */
function objectIn(text: string): Result<JsonObject> {
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (!/\S/.test(json)) return problem('not-a-design', 'The file is empty. Open an older copy of it.');
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    if (!json.includes(DESIGN_FORMAT)) return notADesign;
    return damaged(
      json.trimEnd().endsWith('}') ? 'its text is garbled' : 'its text breaks off before the end',
    );
  }
  if (!isObject(value) || value.format !== DESIGN_FORMAT) return notADesign;
  dropPrototypes(value);
  return good(value);
}

/** Counts beyond the limits, found before the schema walks through the lists. */
function countFault(file: JsonObject): string | null {
  const { columns, rows, layers, yarns, swatches, pins, bundles, editions, fringe, pattern, reference } =
    file;
  if (Array.isArray(yarns) && yarns.length > limits.yarns) {
    return `${yarns.length} yarns are more than the ${limits.yarns} of one design`;
  }
  if (Array.isArray(swatches) && swatches.length > limits.swatches) {
    return `${swatches.length} swatches are more than the ${limits.swatches} of one design`;
  }
  if (countOf(pins) > limits.pins)
    return `${countOf(pins)} pins are more than the ${limits.pins} of one design`;
  const cut = isObject(bundles) ? countOf(bundles.cut) : 0;
  if (cut > limits.cutBundles) {
    return `${cut} bundles that are cut are more than the ${limits.cutBundles} of one design`;
  }
  if (countOf(editions) > limits.editions) {
    return `${countOf(editions)} editions are more than the ${limits.editions} of one pattern`;
  }
  const lengths = isObject(fringe) ? countOf(fringe.byHandMm) : 0;
  if (lengths > limits.columns) {
    return `${lengths} fringe lengths are more than the ${limits.columns} cords of the widest chart`;
  }
  const lines = isObject(reference) ? countOf(reference.picture) : 0;
  if (lines > limits.referenceLines) {
    return `its reference picture has ${lines} lines, more than the ${limits.referenceLines} of the largest`;
  }
  const cover = Math.max(...[pattern, ...patternsOf(editions)].map(coverLines));
  if (cover > limits.referenceLines) {
    return `the photograph of its cover has ${cover} lines, more than the ${limits.referenceLines} of the largest`;
  }
  const sheets: readonly unknown[] = Array.isArray(layers) ? layers : [];
  const fault = sizeFault(countOr1(columns), countOr1(rows), sheets.length);
  if (fault) return fault;
  for (const sheet of sheets) {
    if (!isObject(sheet) || !Array.isArray(sheet.rows) || sheet.rows.length <= limits.rows) continue;
    return `${sheet.rows.length} rows are more than the ${limits.rows} of the longest chart`;
  }
  return null;
}

function designOf(file: DesignFile, all: readonly Law[]): Result<Design> {
  const { format: _format, version: _version, layers, ...rest } = file;
  const allowed = codesAllowed(file.yarns);
  const sheets: Layer[] = [];
  for (const layer of layers) {
    const rows: Uint8Array[] = [];
    for (const text of layer.rows) {
      const row = readRow(text, file.columns, allowed);
      if (typeof row === 'string') {
        return damaged(`layer ${quoted(layer.name)}, row ${rows.length + 1} ${row}`);
      }
      rows.push(row);
    }
    sheets.push({ ...layer, rows });
  }
  const design: Design = { ...rest, layers: sheets };
  const fault = brokenLaw(design, all);
  return fault ? damaged(fault) : good(design);
}

/**
 * JSON may hold a key `__proto__`. It is nobody's data, and one careless copy would make it a prototype; so it is
 * dropped, at every level. The text's depth is within limits, so this can't run out of stack.
 */
function dropPrototypes(value: unknown): void {
  if (Array.isArray(value)) {
    for (const each of value) if (typeof each === 'object') dropPrototypes(each);
  } else if (isObject(value)) {
    if (Object.hasOwn(value, '__proto__')) Reflect.deleteProperty(value, '__proto__');
    for (const each of Object.values(value)) if (typeof each === 'object') dropPrototypes(each);
  }
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function countOf(value: unknown): number {
  return Array.isArray(value) ? value.length : 0;
}

function coverLines(pattern: unknown): number {
  return isObject(pattern) && isObject(pattern.cover) ? countOf(pattern.cover.picture) : 0;
}

/** What each edition was composed of. */
function patternsOf(editions: unknown): unknown[] {
  const all: readonly unknown[] = Array.isArray(editions) ? editions : [];
  return all.map((each) => (isObject(each) && isObject(each.made) ? each.made.pattern : null));
}

/** A count as the file gives it; 1 where it is none, for the schema to refuse. */
function countOr1(value: unknown): number {
  return typeof value === 'number' && Number.isFinite(value) && value >= 1 ? value : 1;
}

/** True where the first byte that is no white space, and no byte-order mark, is an opening brace. */
function opensWithBrace(bytes: Uint8Array): boolean {
  const start = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  const first = bytes.subarray(start).find((byte) => byte > 0x20);
  return first === 0x7b;
}

const notADesign = problem(
  'not-a-design',
  'There is no Larkrow design in this file, whatever its name says. Choose one that was saved by Larkrow.',
);

function damaged(what: string): ReturnType<typeof problem> {
  return problem('damaged', `The file is damaged: ${what}. Open an older copy of it, or ask for it again.`);
}

function tooLarge(what: string): ReturnType<typeof problem> {
  return problem('too-large', `The design is too large: ${what}. Make it smaller where it was made.`);
}

function newer(version: number): ReturnType<typeof problem> {
  return problem(
    'newer-version',
    `The file was saved by a newer Larkrow: it has version ${version}, and this Larkrow reads up to version ${DESIGN_VERSION}. Update Larkrow to open it.`,
  );
}
