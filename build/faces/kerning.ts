/**
 * How much nearer or farther than their advances two characters stand to each other in a face: its pair positioning
 * (OpenType, GPOS lookup type 2), as a shaper applies it. Characters that kern alike come together in classes.
 */
import type { Font } from 'fontkit';

/** Classes of characters, and by the left character's class its pairs: right class, thousandths of the em, and so on. */
export interface Kerning {
  readonly lefts: readonly string[];
  readonly rights: readonly string[];
  readonly pairs: readonly (readonly number[])[];
}

/** Of these code points only. */
export function kerningOf(font: Font, codes: readonly number[]): Kerning {
  const kern = pairKerning(font);
  const glyphs = codes.map((code) => font.glyphForCodePoint(code).id);
  const none = glyphs.map(() => 0);
  const rows = glyphs.map((left) =>
    kern.begins(left) ? glyphs.map((right) => kern.between(left, right)) : none,
  );
  const lefts = classesOf(rows);
  const columns = glyphs.map((_, right) => lefts.map((members) => rows[members[0]!]![right]!));
  const rights = classesOf(columns);
  const letters = (members: readonly number[]) => String.fromCodePoint(...members.map((at) => codes[at]!));
  return {
    lefts: lefts.map(letters),
    rights: rights.map(letters),
    pairs: lefts.map((members) =>
      rights.flatMap(([right], at) => {
        const value = rows[members[0]!]![right!]!;
        return value === 0 ? [] : [at, value];
      }),
    ),
  };
}

/** Indexes of equal lists, those of nothing but zeros left out. */
function classesOf(lists: readonly (readonly number[])[]): number[][] {
  const classes = new Map<string, number[]>();
  lists.forEach((list, at) => {
    if (list.every((value) => value === 0)) return;
    const key = list.join();
    const members = classes.get(key);
    if (members) members.push(at);
    else classes.set(key, [at]);
  });
  return [...classes.values()];
}

interface PairKerning {
  /** Whether any pair begins with this glyph. */
  begins(left: number): boolean;
  /** In thousandths of the em. */
  between(left: number, right: number): number;
}

/** Every lookup may add its own; within one, the first table that knows the pair counts. */
function pairKerning(font: Font): PairKerning {
  const { featureList, lookupList } = (font as unknown as { GPOS: Positioning }).GPOS;
  const lookups = new Set(
    featureList.filter(({ tag }) => tag === 'kern').flatMap(({ feature }) => feature.lookupListIndexes),
  );
  const tables = [...lookups].map((at) =>
    lookupList
      .get(at)
      .subTables.map((table) => ('extension' in table ? table.extension : table))
      .filter((table): table is PairTable => 'valueFormat1' in table)
      .map(pairTable),
  );
  const thousandth = 1000 / font.unitsPerEm;
  const firstOf = (lookup: (typeof tables)[number], left: number, right: number) => {
    for (const table of lookup) {
      const value = table.between(left, right);
      if (value !== null) return value;
    }
    return 0;
  };
  return {
    begins: (left) => tables.flat().some((table) => table.covers(left)),
    between: (left, right) =>
      Math.round(tables.reduce((sum, lookup) => sum + firstOf(lookup, left, right), 0) * thousandth),
  };
}

interface KnownPairs {
  covers(left: number): boolean;
  /** Null where the table does not know the pair. */
  between(left: number, right: number): number | null;
}

function pairTable(table: PairTable): KnownPairs {
  const covered = coverageOf(table.coverage);
  const covers = (left: number) => covered.has(left);
  if (table.version === 1) {
    const sets = Array.from({ length: table.pairSetCount! }, (_, at) => {
      const pairs = table.pairSets!.get(at);
      return new Map(pairs.map(({ secondGlyph, value1 }) => [secondGlyph, value1.xAdvance ?? 0]));
    });
    return { covers, between: (left, right) => sets[covered.get(left) ?? -1]?.get(right) ?? null };
  }
  const firsts = classOf(table.classDef1!);
  const seconds = classOf(table.classDef2!);
  const values = Array.from({ length: table.class1Count! }, (_, first) => {
    const record = table.classRecords!.get(first);
    return Array.from({ length: table.class2Count! }, (_, second) => record.get(second).value1.xAdvance ?? 0);
  });
  return {
    covers,
    between: (left, right) => (covered.has(left) ? values[firsts(left)]![seconds(right)]! : null),
  };
}

function coverageOf({ glyphs, rangeRecords }: Coverage): Map<number, number> {
  const covered = new Map<number, number>();
  glyphs?.forEach((glyph, at) => {
    covered.set(glyph, at);
  });
  for (const { start, end, startCoverageIndex } of rangeRecords ?? []) {
    for (let glyph = start; glyph <= end; glyph++) covered.set(glyph, startCoverageIndex + glyph - start);
  }
  return covered;
}

function classOf({
  startGlyph = 0,
  classValueArray,
  classRangeRecord,
}: ClassDefinition): (glyph: number) => number {
  const classes = new Map<number, number>();
  classValueArray?.forEach((value, at) => {
    classes.set(startGlyph + at, value);
  });
  for (const { start, end, class: value } of classRangeRecord ?? []) {
    for (let glyph = start; glyph <= end; glyph++) classes.set(glyph, value);
  }
  return (glyph) => classes.get(glyph) ?? 0;
}

/** The tables as fontkit gives them, which its types leave out. */
interface Positioning {
  readonly featureList: readonly {
    readonly tag: string;
    readonly feature: { readonly lookupListIndexes: readonly number[] };
  }[];
  readonly lookupList: Lazy<{
    readonly subTables: readonly (PairTable | { readonly extension: PairTable } | object)[];
  }>;
}

interface Lazy<T> {
  get(at: number): T;
}

interface Value {
  readonly xAdvance?: number;
}

interface PairTable {
  readonly version: 1 | 2;
  readonly coverage: Coverage;
  readonly valueFormat1: unknown;
  readonly pairSetCount?: number;
  readonly pairSets?: Lazy<readonly { readonly secondGlyph: number; readonly value1: Value }[]>;
  readonly classDef1?: ClassDefinition;
  readonly classDef2?: ClassDefinition;
  readonly class1Count?: number;
  readonly class2Count?: number;
  readonly classRecords?: Lazy<Lazy<{ readonly value1: Value }>>;
}

interface Coverage {
  readonly glyphs?: readonly number[];
  readonly rangeRecords?: readonly {
    readonly start: number;
    readonly end: number;
    readonly startCoverageIndex: number;
  }[];
}

interface ClassDefinition {
  readonly startGlyph?: number;
  readonly classValueArray?: readonly number[];
  readonly classRangeRecord?: readonly {
    readonly start: number;
    readonly end: number;
    readonly class: number;
  }[];
}
