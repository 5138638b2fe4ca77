/**
 * The design file, version 2: the single source for types, validation and the published JSON Schema.
 *
 * Objects are loose: keys that this version does not know are kept and written back, so a file survives a visit
 * to an older studio. Lengths are in mm, masses in g, times in s. A layer's cells are one string a row, see
 * `row-text.ts`; they are parsed by our own code, since a schema over millions of cells would be slow.
 */
import { z } from 'zod';
import { limits } from './limits.ts';
import { type copySchema, patternSchema } from './pattern-schema.ts';

export const DESIGN_FORMAT = 'larkrow-design';
export const DESIGN_VERSION = 2;

/**
 * Without this, zod tries once whether it may compile code. A page under our content security policy may not, and
 * would report the try as a violation.
 */
z.config({ jitless: true });

const name = z.string().max(limits.nameChars);
const text = z.string().max(limits.stringChars);
const mm = z.number().positive().max(100_000);
const mmOrZero = z.number().nonnegative().max(100_000);
const amount = z.number().nonnegative().max(1_000_000);
const times = z.number().positive().max(100);
const seconds = z.number().nonnegative().max(1_000_000);

const yarnIdPattern = /^y([1-9]|[1-5][0-9]|6[0-4])$/;
const yarnId = z
  .templateLiteral(['y', z.number()])
  .refine((id) => yarnIdPattern.test(id))
  .meta({ pattern: yarnIdPattern.source });

export const yarnSchema = z.looseObject({
  id: yarnId,
  name: name.min(1),
  /** sRGB, as #rrggbb in lower case. */
  color: z.string().regex(/^#[0-9a-f]{6}$/),
  /** One letter or digit of the studio's own symbol alphabet. */
  symbol: z.string().regex(/^[A-Za-z0-9@&]$/),
  diameterMm: mm,
  /** Metres of yarn in 100 g. */
  metresPer100G: z.number().positive().max(100_000),
  skeinG: z.number().positive().max(100_000),
  /** Of one skein, in the maker's own money; absent: not told. */
  price: amount.optional(),
  /** Skeins at home, whole or begun; absent: not told. */
  ownedSkeins: z.number().nonnegative().max(100_000).optional(),
});

export const swatchSchema = z.looseObject({
  /** Measured width over `cords` cords. */
  widthMm: mm,
  cords: z.number().int().positive().max(limits.columns),
  /** Measured height over `rows` rows. */
  heightMm: mm,
  rows: z.number().int().positive().max(limits.rows),
  /** Yarn that `knots` knots took, tails left out; both or neither. */
  yarnMm: mm.optional(),
  knots: z.number().int().positive().max(1_000_000).optional(),
  /** A stretch of one cord before it was tied, and the same stretch knotted; both or neither. */
  cordBeforeMm: mm.optional(),
  cordAfterMm: mm.optional(),
  /** What it was tied with, where that is not the hanging's own cord and ground. */
  cordDiameterMm: mm.optional(),
  yarnDiameterMm: mm.optional(),
  name: name.optional(),
  /** Not measured: a gauge that the maker wrote down, so many cords and rows over a width and a height. It gives the size, in place of the swatches. */
  told: z.literal(true).optional(),
  /** The day it was measured, as ISO 8601 writes it: 2031-05-08. */
  date: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/)
    .optional(),
});

export const cordSchema = z.looseObject({
  name,
  diameterMm: mm,
  /** Mass of one metre of cord. */
  gPerM: z.number().positive().max(10_000),
  /** How much longer a leg must be than the height it is knotted to, as a share: 0.03 is 3 %. */
  takeUp: z.number().nonnegative().max(10),
  /** Added to each leg, and cut off at the end. */
  trimMm: mmOrZero,
  /** Cut lengths are rounded up to a multiple of this. */
  roundUpMm: mm,
});

export const dowelSchema = z.looseObject({
  diameterMm: mm,
  /** From the dowel's end to the first mount, at each side. */
  overhangMm: mmOrZero,
  /** Density of the dowel's wood, for the mass of the hanging: g per cubic cm. */
  gPerCm3: z.number().positive().max(25),
});

export const fringeSchema = z.looseObject({
  shape: z.enum(['straight', 'v', 'inverted-v', 'curve', 'by-hand']),
  /** Fringe of the longest cord below the last row. */
  longMm: mmOrZero,
  /** Fringe of the shortest cord; equal to `longMm` where the fringe is straight. */
  shortMm: mmOrZero,
  /** Each cord's length, left to right, where the shape is 'by-hand'; elsewhere kept and not used. */
  byHandMm: z.array(mmOrZero).min(1).max(limits.columns).optional(),
});

export const tyingSchema = z.looseObject({
  workingLengthMm: mm,
  tailMm: mmOrZero,
  effortMm: mmOrZero,
  carryMaxCords: z.number().int().nonnegative().max(limits.columns),
  carryMaxRows: z.number().int().nonnegative().max(limits.rows),
  slack: z.number().min(1).max(10),
  rowPriceMm: mmOrZero,
  /** Kept free of each piece, for a looser hand than the gauge's: 0.03 is 3 % of the working length. Absent: nothing. */
  reserveShare: z.number().nonnegative().max(0.5).optional(),
  /** No more strands than this shall hang at once between two rows. Absent: as many as is best. */
  liveWish: z.number().int().positive().max(limits.columns).optional(),
});

/**
 * What the maker has decided about the strands, to be obeyed by every plan. Rows and cords count from 1; a pin that no
 * longer fits the chart is kept, and not obeyed.
 *
 * 'cut': the strand that ends a run with this knot ends there. 'no-carry': no carry passes behind this cell.
 * 'carry': the strand that ends a run with this knot goes on with the run that begins at `toRow` and `toCord`.
 */
const pinSchema = z.looseObject({
  kind: z.enum(['cut', 'no-carry', 'carry']),
  row: z.number().int().positive().max(limits.rows),
  cord: z.number().int().positive().max(limits.columns),
  /** Both where the pin is a carry, and on no other. */
  toRow: z.number().int().positive().max(limits.rows).optional(),
  toCord: z.number().int().positive().max(limits.columns).optional(),
});

export const ratesSchema = z.looseObject({
  secondsPerKnot: seconds,
  /** For each piece that is attached or joined. */
  secondsPerPiece: seconds,
  secondsPerRow: seconds,
  /** To mount one cut cord on the dowel. */
  secondsPerMount: seconds,
  /** To tie off or trim one loose end. */
  secondsPerLooseEnd: seconds,
  /** Everything that does not grow with the hanging: trimming the fringe, hanging it up. */
  secondsToFinish: seconds,
});

const layerSchema = z.looseObject({
  id: z.string().regex(/^[a-z][a-z0-9-]{0,31}$/),
  name,
  visible: z.boolean(),
  locked: z.boolean(),
  /** One string a row, top to bottom, left to right as seen from the front. */
  rows: z
    .array(
      z.string().meta({ pattern: '^[1-9][0-9]*(y[1-9][0-9]?|[.]|-)( [1-9][0-9]*(y[1-9][0-9]?|[.]|-))*$' }),
    )
    .max(limits.rows),
});

/** What things cost and how a price is made of it, in the maker's own money; what is absent was not told. */
export const moneySchema = z.looseObject({
  /** The money's code by ISO 4217: EUR. */
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .optional(),
  cordPricePerM: amount.optional(),
  dowelPrice: amount.optional(),
  backingPrice: amount.optional(),
  /** Paid for the pattern or the right to sell what is made by it, for each hanging. */
  patternFees: amount.optional(),
  hourlyRate: amount.optional(),
  /** Of materials and labour, as a share: 0.1 is 10 %. */
  overheadShare: z.number().nonnegative().max(10).optional(),
  /** 'sum': materials, labour and overhead, times `sumTimes`; 'keystone': materials times `keystoneTimes`. */
  wholesale: z.enum(['sum', 'keystone']).optional(),
  sumTimes: times.optional(),
  keystoneTimes: times.optional(),
  /** Retail is wholesale times this. */
  retailTimes: times.optional(),
});

/** Pieces of one yarn and one length that the maker has cut already. */
const cutPiecesSchema = z.looseObject({
  yarn: yarnId,
  cutMm: mm,
  pieces: z.number().int().positive().max(1_000_000),
});

/** A plan as it is kept: see `tying/kept-plan.ts`. */
const keptPlanSchema = z.looseObject({
  pitchMm: mm,
  rowHeightMm: mm,
  knots: z.array(z.looseObject({ yarn: yarnId, knotMm: mm })).max(limits.yarns),
  /** A line for each row of the chart. */
  rows: z.array(z.string()).max(limits.rows),
});

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

/** A plan that stays in use while it is asked for as it was then: see `tying/settled-plan.ts`. */
export const settledPlanSchema = keptPlanSchema.extend({
  /** SHA-256, in hex, of all that the plan was made from. */
  of: sha256,
});

/** How the maker cuts pieces into bundles, and how far that is. */
const bundlesSchema = z.looseObject({
  /** True: each piece is cut as long as it is used, with a reserve. Absent or false: at the working length. */
  fitted: z.boolean().optional(),
  cut: z.array(cutPiecesSchema).max(limits.cutBundles).optional(),
  /** SHA-256, in hex, of the cut list that labels were printed for last. */
  labelled: sha256.optional(),
  /** The plan that those labels are of. */
  plan: settledPlanSchema.optional(),
});

/** A picture laid under the chart while drawing. It is seen on the screen only: no print, no figure knows of it. */
export const referenceSchema = z.looseObject({
  name,
  mediaType: z.enum(['image/png', 'image/jpeg', 'image/webp']),
  /** The picture file in base64, in lines, so that no text of the design file grows too long. */
  picture: z
    .array(
      z
        .string()
        .regex(/^[A-Za-z0-9+/]+={0,2}$/)
        .max(limits.referenceLineChars),
    )
    .min(1)
    .max(limits.referenceLines),
  /** From 0, not to be seen, to 1. */
  opacity: z.number().min(0).max(1),
  /** Its left edge from that of cord 1, to the right. */
  leftMm: z.number().min(-100_000).max(100_000),
  /** Its upper edge from that of row 1, downwards. */
  topMm: z.number().min(-100_000).max(100_000),
  widthMm: mm,
  heightMm: mm,
  visible: z.boolean(),
});

const isoDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);

/** An edition of the pattern that was published, with all that it was made of, so that it can be printed again. */
const editionSchema = z.looseObject({
  number: z.number().int().positive().max(limits.editions),
  date: isoDate,
  /** What is new in it, in the designer's words. */
  note: text,
  /** What was found to be wrong in it since. */
  errata: z.array(z.looseObject({ date: isoDate, text })).max(limits.errata),
  made: z.looseObject({
    title: name.min(1),
    designer: name,
    startCorner: z.enum(['top-left', 'top-right']),
    columns: z.number().int().positive().max(limits.columns),
    cord: cordSchema,
    dowel: dowelSchema,
    fringe: fringeSchema,
    swatches: z.array(swatchSchema).max(limits.swatches),
    tying: tyingSchema,
    yarnMargin: z.number().nonnegative().max(10),
    ground: yarnId,
    yarns: z.array(yarnSchema).min(1).max(limits.yarns),
    /** This and the next two are absent where an edition was published before they were kept. */
    rates: ratesSchema.optional(),
    /** Each piece was cut as long as it is used. */
    fitted: z.boolean().optional(),
    /** How it was composed and worded. */
    pattern: patternSchema
      .omit({ labels: true })
      .extend({
        /** The number of the edition before whose photograph this one has too, in place of `cover`. */
        coverOf: z.number().int().positive().max(limits.editions).optional(),
      })
      .optional(),
    /** The flat chart, one string a row, as in a layer. */
    chart: z.array(z.string()).min(1).max(limits.rows),
    plan: keptPlanSchema,
  }),
});

export const designFileSchema = z.looseObject({
  format: z.literal(DESIGN_FORMAT),
  version: z.literal(DESIGN_VERSION),
  title: name.min(1),
  designer: name,
  notes: text,
  startCorner: z.enum(['top-left', 'top-right']),
  columns: z.number().int().positive().max(limits.columns),
  rows: z.number().int().positive().max(limits.rows),
  cord: cordSchema,
  dowel: dowelSchema,
  fringe: fringeSchema,
  /** Empty: the gauge is estimated from the thickness of cord and yarn. */
  swatches: z.array(swatchSchema).max(limits.swatches),
  tying: tyingSchema,
  /** Where two contradict each other, the first is obeyed. */
  pins: z.array(pinSchema).max(limits.pins).optional(),
  bundles: bundlesSchema.optional(),
  rates: ratesSchema,
  /** Yarn bought above the need, as a share: 0.1 is 10 %. */
  yarnMargin: z.number().nonnegative().max(10),
  money: moneySchema.optional(),
  /** How the pattern is composed and printed. */
  pattern: patternSchema.optional(),
  /** The editions of the pattern that were published, the first one first. */
  editions: z.array(editionSchema).max(limits.editions).optional(),
  /** The yarn that fills a new design's background; its thickness sets the gauge where no swatch does. */
  ground: yarnId,
  yarns: z.array(yarnSchema).min(1).max(limits.yarns),
  /** Bottom layer first. */
  layers: z.array(layerSchema).min(1).max(limits.layers),
  /** Null: no picture lies under the chart. */
  reference: referenceSchema.nullable(),
});

/** A type without the 'any other key' of loose objects: such keys are kept, but no code of ours reads them. */
type Known<T> = T extends readonly (infer U)[]
  ? Known<U>[]
  : T extends object
    ? { [K in keyof T as string extends K ? never : K]: Known<T[K]> }
    : T;

export type DesignFile = Known<z.infer<typeof designFileSchema>>;
export type Yarn = Known<z.infer<typeof yarnSchema>>;
export type Swatch = Known<z.infer<typeof swatchSchema>>;
export type Cord = Known<z.infer<typeof cordSchema>>;
export type Dowel = Known<z.infer<typeof dowelSchema>>;
export type Fringe = Known<z.infer<typeof fringeSchema>>;
export type Reference = Known<z.infer<typeof referenceSchema>>;
export type TyingSettings = Known<z.infer<typeof tyingSchema>>;
export type Money = Known<z.infer<typeof moneySchema>>;
export type PatternSettings = Known<z.infer<typeof patternSchema>>;
export type CopySettings = Known<z.infer<typeof copySchema>>;
export type BundleSettings = Known<z.infer<typeof bundlesSchema>>;
export type Edition = Known<z.infer<typeof editionSchema>>;
export type SettledPlan = Known<z.infer<typeof settledPlanSchema>>;
export type KeptPlan = Known<z.infer<typeof keptPlanSchema>>;
export type Pin = Known<z.infer<typeof pinSchema>>;
export type Rates = Known<z.infer<typeof ratesSchema>>;
export type StartCorner = DesignFile['startCorner'];
