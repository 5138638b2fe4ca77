/**
 * The first fault that the schema finds in a design file, as words a person can follow: which value, and what it
 * must be. Each field's words stand in one table; a test holds it to the schema.
 */
import { limits } from './limits.ts';
import { patternParts } from './pattern-schema.ts';
import { designFileSchema } from './schema.ts';

/** A value read from a file that satisfies the schema, or what is wrong with it: 'the title is missing'. */
export type SchemaAnswer =
  | { readonly file: ReturnType<typeof designFileSchema.parse> }
  | { readonly fault: string };

export function askSchema(value: unknown): SchemaAnswer {
  const odd = rowOfNoText(value);
  if (odd) return { fault: faultAt(odd, value) };
  const parsed = designFileSchema.safeParse(value);
  if (parsed.success) return { file: parsed.data };
  return { fault: faultAt(parsed.error.issues[0]?.path ?? [], value) };
}

/**
 * The path of the first row that is not a text. Rows may be many thousand, and the schema gathers a fault for each
 * before it answers, until it runs out of stack; all its other lists are short.
 */
function rowOfNoText(file: unknown): PropertyKey[] | null {
  const layers = listAt(['layers'], file).map((_, i) => ['layers', i, 'rows']);
  const kept = listAt(['editions'], file).flatMap((_, i) => [
    ['editions', i, 'made', 'chart'],
    ['editions', i, 'made', 'plan', 'rows'],
  ]);
  for (const path of [...layers, ...kept]) {
    const r = listAt(path, file).findIndex((row) => typeof row !== 'string');
    if (r >= 0) return [...path, r];
  }
  return null;
}

function listAt(path: readonly PropertyKey[], file: unknown): readonly unknown[] {
  const value = valueAt(path, file);
  return Array.isArray(value) ? value : [];
}

/** What is wrong with the value at `path`: it is missing, or not what it must be. */
export function faultAt(path: readonly PropertyKey[], file: unknown): string {
  const pattern = path.map((key) => (typeof key === 'number' ? '*' : String(key))).join('.');
  const [subject, rule] = fieldWords[pattern] ?? [`the value ${quoted(pattern)}`, 'something else'];
  const named = subject.replace(/\{(\w+)\}/g, (_, kind: string) =>
    counted[kind] === undefined ? nameOf(kind, path, file) : String(Number(path[counted[kind]]) + 1),
  );
  return valueAt(path, file) === undefined ? `${named} is missing` : `${named} must be ${rule}`;
}

/** A person's word inside one of our sentences: short, on one line. */
export function quoted(words: string): string {
  const line = words.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, '�');
  const letters = [...line];
  return `“${letters.length > 40 ? `${letters.slice(0, 39).join('')}…` : line}”`;
}

/** What is told by its number alone, from 1, and where in the path that number stands. */
const counted: Readonly<Record<string, number>> = { row: 3, cord: 2, line: 2, bundle: 2 };

const list = 'a list';
const group = 'a group of named values';
const aName = `a text of at most ${limits.nameChars} characters`;
const filledName = `a text of 1 to ${limits.nameChars} characters`;
const mm = 'a number of mm above 0, at most 100000';
const mmOrZero = 'a number of mm from 0 to 100000';
const place = 'a number of mm from -100000 to 100000';
const seconds = 'a number of seconds from 0 to 1000000';
const trueOrFalse = 'true or false';
const amount = 'a number from 0 to 1000000';
const times = 'a number above 0, at most 100';
const aRow = `a whole number from 1 to ${limits.rows}`;
const aCord = `a whole number from 1 to ${limits.columns}`;
const yarnId = 'one of y1 to y64';

type FieldWords = Readonly<Record<string, readonly [subject: string, rule: string]>>;

const ownWords: FieldWords = {
  '': ['the design', group],
  format: ['the format', 'larkrow-design'],
  version: ['the version', 'a whole number'],
  title: ['the title', filledName],
  designer: ["the designer's name", aName],
  notes: ['the text of the notes', `a text of at most ${limits.stringChars} characters`],
  startCorner: ['the start corner', 'top-left or top-right'],
  columns: ['the number of cords', `a whole number from 1 to ${limits.columns}`],
  rows: ['the number of rows', `a whole number from 1 to ${limits.rows}`],
  cord: ['the cord', group],
  'cord.name': ["the cord's name", aName],
  'cord.diameterMm': ["the cord's thickness", mm],
  'cord.gPerM': ["the cord's mass", 'a number of g per m above 0, at most 10000'],
  'cord.takeUp': ["the cord's take-up", 'a share from 0 to 10'],
  'cord.trimMm': ["the cord's trim", mmOrZero],
  'cord.roundUpMm': ["the step of the cord's cut lengths", mm],
  dowel: ['the dowel', group],
  'dowel.diameterMm': ["the dowel's thickness", mm],
  'dowel.overhangMm': ["the dowel's overhang", mmOrZero],
  'dowel.gPerCm3': ["the density of the dowel's wood", 'a number of g per cubic cm above 0, at most 25'],
  fringe: ['the fringe', group],
  'fringe.shape': ["the fringe's shape", 'straight, v, inverted-v, curve or by-hand'],
  'fringe.longMm': ["the fringe's longest cord", mmOrZero],
  'fringe.shortMm': ["the fringe's shortest cord", mmOrZero],
  'fringe.byHandMm': ['the list of fringe lengths drawn by hand', `a list of 1 to ${limits.columns} lengths`],
  'fringe.byHandMm.*': ['the fringe of cord {cord}', mmOrZero],
  swatches: ['the list of swatches', list],
  'swatches.*': ['{swatch}', group],
  'swatches.*.widthMm': ['the width of {swatch}', mm],
  'swatches.*.cords': ['the number of cords of {swatch}', `a whole number from 1 to ${limits.columns}`],
  'swatches.*.heightMm': ['the height of {swatch}', mm],
  'swatches.*.rows': ['the number of rows of {swatch}', `a whole number from 1 to ${limits.rows}`],
  'swatches.*.yarnMm': ['the yarn of {swatch}', mm],
  'swatches.*.knots': ['the number of knots of {swatch}', 'a whole number from 1 to 1000000'],
  'swatches.*.cordBeforeMm': ['the length of cord before tying {swatch}', mm],
  'swatches.*.cordAfterMm': ['the length of cord after tying {swatch}', mm],
  'swatches.*.cordDiameterMm': ['the thickness of the cord of {swatch}', mm],
  'swatches.*.yarnDiameterMm': ['the thickness of the yarn of {swatch}', mm],
  'swatches.*.name': ['the name of {swatch}', aName],
  'swatches.*.told': ['whether {swatch} is told', 'true, or absent'],
  'swatches.*.date': ['the date of {swatch}', 'written like 2031-05-08'],
  tying: ['the group of settings for tying', group],
  'tying.workingLengthMm': ['the working length', mm],
  'tying.tailMm': ['the tail', mmOrZero],
  'tying.effortMm': ['the effort of a piece', mmOrZero],
  'tying.carryMaxCords': ['the longest carry in cords', `a whole number from 0 to ${limits.columns}`],
  'tying.carryMaxRows': ['the longest carry in rows', `a whole number from 0 to ${limits.rows}`],
  'tying.slack': ['the slack of a carry', 'a number from 1 to 10'],
  'tying.rowPriceMm': ['the price of a row parked', mmOrZero],
  'tying.reserveShare': ['the reserve of each piece', 'a share from 0 to 0.5'],
  'tying.liveWish': [
    'the wish for how many strands hang at once',
    `a whole number from 1 to ${limits.columns}`,
  ],
  pins: ['the list of pins', `a list of at most ${limits.pins} pins`],
  'pins.*': ['{pin}', group],
  'pins.*.kind': ['the kind of {pin}', 'cut, no-carry or carry'],
  'pins.*.row': ['the row of {pin}', aRow],
  'pins.*.cord': ['the cord of {pin}', aCord],
  'pins.*.toRow': ['the row that {pin} leads to', aRow],
  'pins.*.toCord': ['the cord that {pin} leads to', aCord],
  bundles: ['the group of bundles', group],
  'bundles.fitted': ['whether pieces are cut to measure', trueOrFalse],
  'bundles.cut': ['the list of bundles that are cut', `a list of at most ${limits.cutBundles} bundles`],
  'bundles.cut.*': ['cut bundle {bundle}', group],
  'bundles.cut.*.yarn': ['the yarn of cut bundle {bundle}', yarnId],
  'bundles.cut.*.cutMm': ['the length of cut bundle {bundle}', mm],
  'bundles.cut.*.pieces': ['the number of pieces of cut bundle {bundle}', 'a whole number from 1 to 1000000'],
  'bundles.plan': ['the plan of the labels', group],
  'bundles.plan.of': [
    'the mark of what the plan of the labels was made from',
    '64 hexadecimal digits in lower case',
  ],
  'bundles.plan.pitchMm': ['the pitch of the plan of the labels', mm],
  'bundles.plan.rowHeightMm': ['the row height of the plan of the labels', mm],
  'bundles.plan.knots': ['the list of knots of the plan of the labels', list],
  'bundles.plan.knots.*': ['a knot of the plan of the labels', group],
  'bundles.plan.knots.*.yarn': ['the yarn of a knot of the labels', yarnId],
  'bundles.plan.knots.*.knotMm': ['the yarn in a knot of the labels', mm],
  'bundles.plan.rows': ['the rows of the plan of the labels', `a list of at most ${limits.rows} rows`],
  'bundles.plan.rows.*': ['a row of the plan of the labels', 'a text'],
  'bundles.labelled': ['the mark of the labels that were printed', '64 hexadecimal digits in lower case'],
  rates: ['the group of rates', group],
  'rates.secondsPerKnot': ['the time per knot', seconds],
  'rates.secondsPerPiece': ['the time per piece', seconds],
  'rates.secondsPerRow': ['the time per row', seconds],
  'rates.secondsPerMount': ['the time per mount', seconds],
  'rates.secondsPerLooseEnd': ['the time per loose end', seconds],
  'rates.secondsToFinish': ['the time to finish', seconds],
  yarnMargin: ['the margin of yarn', 'a share from 0 to 10'],
  money: ['the group of prices', group],
  'money.currency': ['the currency', 'three capital letters, like EUR'],
  'money.cordPricePerM': ['the price of a metre of cord', amount],
  'money.dowelPrice': ['the price of the dowel', amount],
  'money.backingPrice': ['the price of the backing', amount],
  'money.patternFees': ['the fees for the pattern', amount],
  'money.hourlyRate': ['the pay for an hour', amount],
  'money.overheadShare': ['the overhead', 'a share from 0 to 10'],
  'money.wholesale': ['the way to the wholesale price', 'sum or keystone'],
  'money.sumTimes': ['the multiplier of materials, labour and overhead', times],
  'money.keystoneTimes': ['the multiplier of the keystone price', times],
  'money.retailTimes': ['the multiplier of the retail price', times],
  pattern: ['the group of what the pattern is composed of', group],
  'pattern.parts': ['the list of parts of the pattern', `a list of at most ${patternParts.length} parts`],
  'pattern.parts.*': ['a part of the pattern', patternParts.join(', ')],
  'pattern.texts': ['the group of texts of the pattern', group],
  'pattern.texts.welcome': ['the welcome of the pattern', 'a text'],
  'pattern.texts.terms': ['the terms of the pattern', 'a text'],
  'pattern.texts.skill': ['the skill that the pattern asks for', 'a text'],
  'pattern.texts.reading': ['the text on reading the chart of the pattern', 'a text'],
  'pattern.texts.order': ['the order of work of the pattern', 'a text'],
  'pattern.texts.finishing': ['the text on finishing of the pattern', 'a text'],
  'pattern.texts.care': ['the text on care of the pattern', 'a text'],
  'pattern.texts.cautions': ['the further cautions of the pattern', 'a text'],
  'pattern.texts.notes': ['the notes of the pattern', 'a text'],
  'pattern.cover': ['the photograph of the cover', group],
  'pattern.cover.mediaType': ['the kind of the photograph', 'image/png or image/jpeg'],
  'pattern.cover.widthPx': ['the width of the photograph', 'a whole number of pixels from 1 to 10000'],
  'pattern.cover.heightPx': ['the height of the photograph', 'a whole number of pixels from 1 to 10000'],
  'pattern.cover.picture': ['the content of the photograph', 'a list of lines of base64'],
  'pattern.cover.picture.*': [
    'a line of the photograph',
    `a line of base64, at most ${limits.referenceLineChars} characters`,
  ],
  'pattern.labels': ['the group of labels of the finished hanging', group],
  'pattern.labels.cordFibre': ['the fibre of the cord', aName],
  'pattern.labels.yarnFibre': ['the fibre of the yarn', aName],
  'pattern.copy': ['the group of how the pattern is printed', group],
  'pattern.copy.language': ['the language of the pattern', 'en or de'],
  'pattern.copy.ink': ['the ink of the chart', 'colour, symbols or grey'],
  'pattern.copy.cells': ['the size of the printed cells', 'standard or large'],
  'pattern.copy.rowsForm': ['the form of the written rows', 'long or compact'],
  'pattern.copy.rowsBeside': ['whether rows are written beside the chart', trueOrFalse],
  'pattern.copy.leftHanded': ['whether the pattern is left-handed', trueOrFalse],
  ground: ['the ground yarn', yarnId],
  yarns: ['the list of yarns', 'a list of at least one yarn'],
  'yarns.*': ['{yarn}', group],
  'yarns.*.id': ['the id of {yarn}', yarnId],
  'yarns.*.name': ['the name of {yarn}', filledName],
  'yarns.*.color': ['the colour of {yarn}', 'written like #5b7f4f, in lower case'],
  'yarns.*.symbol': ['the symbol of {yarn}', 'one letter or digit, @ or &'],
  'yarns.*.diameterMm': ['the thickness of {yarn}', mm],
  'yarns.*.metresPer100G': ['the length of 100 g of {yarn}', 'a number of metres above 0, at most 100000'],
  'yarns.*.skeinG': ['the skein of {yarn}', 'a number of g above 0, at most 100000'],
  'yarns.*.price': ['the price of a skein of {yarn}', amount],
  'yarns.*.ownedSkeins': ['the owned skeins of {yarn}', 'a number from 0 to 100000'],
  layers: ['the list of layers', 'a list of at least one layer'],
  'layers.*': ['{layer}', group],
  'layers.*.id': ['the id of {layer}', 'a word of 1 to 32 lower-case letters, digits and hyphens'],
  'layers.*.name': ['the name of {layer}', aName],
  'layers.*.visible': ['the visibility of {layer}', trueOrFalse],
  'layers.*.locked': ['the lock of {layer}', trueOrFalse],
  'layers.*.rows': ['the list of rows of {layer}', list],
  'layers.*.rows.*': ['row {row} of {layer}', 'a text'],
  reference: ['the reference picture', 'a group of named values, or null where there is none'],
  'reference.name': ['the name of the reference picture', aName],
  'reference.mediaType': ['the kind of the reference picture', 'image/png, image/jpeg or image/webp'],
  'reference.picture': ['the content of the reference picture', 'a list of lines of base64'],
  'reference.picture.*': [
    'line {line} of the reference picture',
    `a line of base64, at most ${limits.referenceLineChars} characters`,
  ],
  'reference.opacity': ['the opacity of the reference picture', 'a number from 0 to 1'],
  'reference.leftMm': ['the place of the reference picture from the left', place],
  'reference.topMm': ['the place of the reference picture from the top', place],
  'reference.widthMm': ['the width of the reference picture', mm],
  'reference.heightMm': ['the height of the reference picture', mm],
  'reference.visible': ['the visibility of the reference picture', trueOrFalse],
};

const aDate = 'written like 2031-05-08';
const editionWords: FieldWords = {
  editions: ['the list of editions', `a list of at most ${limits.editions} editions`],
  'editions.*': ['{edition}', group],
  'editions.*.number': ['the number of {edition}', `a whole number from 1 to ${limits.editions}`],
  'editions.*.date': ['the date of {edition}', aDate],
  'editions.*.note': ['the note of {edition}', 'a text'],
  'editions.*.errata': ['the list of errata of {edition}', `a list of at most ${limits.errata} errata`],
  'editions.*.errata.*': ['an erratum of {edition}', group],
  'editions.*.errata.*.date': ['the date of an erratum of {edition}', aDate],
  'editions.*.errata.*.text': ['the text of an erratum of {edition}', 'a text'],
  'editions.*.made': ['what {edition} was made of', group],
  'editions.*.made.chart': ['the chart of {edition}', `a list of 1 to ${limits.rows} rows`],
  'editions.*.made.chart.*': ['a row of the chart of {edition}', 'a text'],
  'editions.*.made.plan': ['the plan of {edition}', group],
  'editions.*.made.plan.pitchMm': ['the pitch of the plan of {edition}', mm],
  'editions.*.made.plan.rowHeightMm': ['the row height of the plan of {edition}', mm],
  'editions.*.made.plan.knots': ['the list of knots of the plan of {edition}', list],
  'editions.*.made.plan.knots.*': ['a knot of the plan of {edition}', group],
  'editions.*.made.plan.knots.*.yarn': ['the yarn of a knot of {edition}', yarnId],
  'editions.*.made.plan.knots.*.knotMm': ['the yarn in a knot of {edition}', mm],
  'editions.*.made.plan.rows': ['the rows of the plan of {edition}', `a list of at most ${limits.rows} rows`],
  'editions.*.made.plan.rows.*': ['a row of the plan of {edition}', 'a text'],
  ...kept(['title', 'designer', 'startCorner', 'columns', 'cord', 'dowel', 'fringe', 'swatches', 'tying']),
  ...kept(['yarnMargin', 'ground', 'yarns', 'rates']),
  'editions.*.made.fitted': ['whether the pieces of {edition} are cut to measure', trueOrFalse],
  'editions.*.made.pattern': ['the group of what {edition} was composed of', group],
  ...kept(['pattern.parts', 'pattern.texts', 'pattern.cover', 'pattern.copy']),
  'editions.*.made.pattern.coverOf': [
    'the edition whose photograph {edition} has',
    `a whole number from 1 to ${limits.editions}`,
  ],
};

/** An edition keeps some fields of the design as they were; they are told by the same words. */
function kept(fields: readonly string[]): FieldWords {
  const isKept = (path: string) => fields.some((field) => path === field || path.startsWith(`${field}.`));
  const words = Object.entries(ownWords).filter(([path]) => isKept(path));
  return Object.fromEntries(
    words.map(([path, [subject, rule]]) => [
      `editions.*.made.${path}`,
      [`${subject.replace(/\{(\w+)\}/g, 'a $1')} of {edition}`, rule],
    ]),
  );
}

/** By path, with `*` for any place in a list: the value's name, and what it must be. */
export const fieldWords: FieldWords = { ...ownWords, ...editionWords };

/** 'yarn 4 “Moss”': counted from 1, with the name where it has one. */
function nameOf(kind: string, path: readonly PropertyKey[], file: unknown): string {
  const name = valueAt([...path.slice(0, 2), 'name'], file);
  const number = Number(path[1]) + 1;
  return typeof name === 'string' && name !== '' ? `${kind} ${number} ${quoted(name)}` : `${kind} ${number}`;
}

function valueAt(path: readonly PropertyKey[], file: unknown): unknown {
  let value: unknown = file;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}
