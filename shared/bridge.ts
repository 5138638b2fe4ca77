/**
 * The one contract between the renderer and its host: every question the renderer may ask, with a schema for what
 * it sends and what comes back. Both hosts answer exactly these verbs and check both ways; the same contract tests
 * hold both.
 *
 * The renderer never sees a path. It holds handles: opaque words that the host gave out for a file, a folder or a
 * place to save to, and that mean nothing to any other session. Calls may report progress and be cancelled.
 */
import { z } from 'zod';
import { type Motif, motifSchema } from './chart/patch/motif.ts';
import { limits } from './design/limits.ts';
import { copySchema, patternLanguages } from './design/pattern-schema.ts';
import { referenceSchema, settledPlanSchema, yarnSchema } from './design/schema.ts';
import { hangingPapers } from './pattern/hanging-papers/hanging-papers.ts';
import { type Imprint, imprintSchema } from './pattern/imprint.ts';
import type { Result } from './result.ts';
import { stashSchema } from './yarn/stash.ts';

const handle = z.string().min(1).max(100);
const name = z.string().min(1).max(255);
const bytes = z.instanceof(Uint8Array);
const designText = z.string().max(limits.fileBytes);
const nothing = z.strictObject({});

/** What a file was when we last read or wrote it; a save that finds another stamp asks first. */
const stamp = z.strictObject({ size: z.number(), modifiedMs: z.number(), sha256: z.string() });

const place = z.strictObject({ handle, name });

const setting = {
  units: z.enum(['metric', 'us', 'both']),
  theme: z.enum(['system', 'light', 'dark']),
  paper: z.enum(['a4', 'letter']),
  designer: z.string().max(limits.nameChars),
  /** Left-handed makers usually start at the top right. */
  startCorner: z.enum(['top-left', 'top-right']),
  /** Single letters as keys for tools, on the chart only. */
  letterKeys: z.boolean(),
  /** Stands beside prices: '€', 'kr', 'USD'. Empty: prices are told as plain numbers. */
  currency: z.string().max(8),
};

export const settingsSchema = z.object({
  units: setting.units.default('metric'),
  theme: setting.theme.default('system'),
  paper: setting.paper.default('a4'),
  designer: setting.designer.default(''),
  startCorner: setting.startCorner.default('top-left'),
  letterKeys: setting.letterKeys.default(true),
  currency: setting.currency.default(''),
});

/** Made without the defaults: a part of the settings with defaults would set all that are not named back to theirs. */
const settingsChange = z.object(setting).partial();

/** A small picture of a design: the flat chart, thinned to at most 200 cells a side. */
const thumbnail = z.strictObject({
  columns: z.number(),
  rows: z.number(),
  cells: bytes,
  /** By code, as #rrggbb. */
  colors: z.record(z.string(), z.string()),
  /** Width over height of the knotted picture. */
  aspect: z.number(),
  /** Lengths of the fringe at some cords, evenly from left to right, in heights of the knotted picture. */
  fringe: z.array(z.number().nonnegative()),
});

const stashEntries = stashSchema.shape.yarns;
/** The schema keeps what it is given, so an imprint may be as unchangeable as our own are. */
const imprint: z.ZodType<Imprint, Imprint> = imprintSchema;

/** How one copy of a pattern is printed, and for whom. */
const copy = z.strictObject({
  language: copySchema.shape.language.unwrap(),
  ink: copySchema.shape.ink.unwrap(),
  cells: copySchema.shape.cells.unwrap(),
  rowsForm: copySchema.shape.rowsForm.unwrap(),
  rowsBeside: z.boolean(),
  leftHanded: z.boolean(),
  preparedFor: z.string().max(limits.nameChars),
});

/** The schema keeps what it is given, so a motif may be as unchangeable as our own are. */
const motif: z.ZodType<Motif, Motif> = motifSchema;
const motifId = motifSchema.shape.id;

/** What the person should be told beside the answer: a damaged file was set aside, and where it is now. */
const notice = z.string().optional();

const shelfEntry = z.strictObject({
  design: handle,
  fileName: name,
  modifiedMs: z.number(),
  /** Absent where the file can't be opened; `problem` then says why. */
  title: z.string().optional(),
  columns: z.number().optional(),
  rows: z.number().optional(),
  thumbnail: thumbnail.optional(),
  problem: z.string().optional(),
});

const fileKind = z.enum(['design', 'picture', 'pattern', 'png', 'parcel']);

const call = <A extends z.ZodType, R extends z.ZodType>(args: A, result: R) => ({ args, result });

export const bridge = {
  'host.about': call(
    nothing,
    z.strictObject({
      host: z.enum(['electron', 'browser']),
      platform: z.enum(['mac', 'windows', 'linux']),
      version: z.string(),
      /** Where false, the studio shows its own chooser over `folders.list`. */
      nativeDialogs: z.boolean(),
      /** Where true, the host shows the studio's commands in a menu of the system. */
      nativeMenu: z.boolean(),
    }),
  ),
  'settings.read': call(nothing, settingsSchema),
  'settings.write': call(settingsChange, settingsSchema),

  /** The designs of the shelf's folder, newest first. The demos are put there on the very first start. */
  'shelf.list': call(nothing, z.strictObject({ folder: place, entries: z.array(shelfEntry) })),
  'shelf.useFolder': call(z.strictObject({ folder: handle }), nothing),
  'shelf.duplicate': call(z.strictObject({ design: handle }), shelfEntry),
  /** Gives the design another title and its file the name that goes with it. */
  'shelf.rename': call(
    z.strictObject({ design: handle, title: z.string().min(1).max(limits.nameChars) }),
    shelfEntry,
  ),
  'shelf.bin': call(z.strictObject({ design: handle }), nothing),
  /** Writes the demo designs into the shelf's folder, beside what is there. */
  'shelf.addDemos': call(nothing, z.strictObject({ added: z.number() })),

  'design.open': call(
    z.strictObject({ design: handle }),
    z.strictObject({ design: handle, fileName: name, text: designText, stamp }),
  ),
  /**
   * The design inside a pattern that was made with it, as a design that was never saved: the pattern is not written to. A
   * pattern that was dropped on the studio comes as its bytes. Problems: `no-design-inside`, `locked`, `too-large`.
   */
  'design.ofPattern': call(
    z.strictObject({ pattern: z.union([handle, bytes]) }),
    z.strictObject({ text: designText }),
  ),
  /**
   * Saves to a file that was opened, or to a place that was chosen. `stamp` is that of the version the text grew
   * from, null for a new file. Problems: `changed-outside` where the file is no longer that version.
   */
  'design.save': call(
    z.strictObject({ target: handle, text: designText, stamp: stamp.nullable() }),
    z.strictObject({ design: handle, fileName: name, stamp }),
  ),
  /** A place in the shelf's folder for a new design, under a file name that is free. */
  'shelf.newPlace': call(z.strictObject({ title: z.string().min(1).max(limits.nameChars) }), place),
  'recent.list': call(nothing, z.strictObject({ entries: z.array(place) })),
  'recent.clear': call(nothing, nothing),

  /** The system's own dialogs, where the host has them. Null: the person changed their mind. */
  'dialog.open': call(z.strictObject({ kind: fileKind }), place.nullable()),
  'dialog.saveAs': call(z.strictObject({ kind: fileKind, suggestedName: name }), place.nullable()),
  'dialog.folder': call(nothing, place.nullable()),

  /** For the studio's own chooser: what one granted folder holds. Null lists the granted folders themselves. */
  'folders.list': call(
    z.strictObject({ folder: handle.nullable(), kind: fileKind }),
    z.strictObject({
      /** From a granted folder down to this one. */
      trail: z.array(place),
      folders: z.array(place),
      files: z.array(place.extend({ modifiedMs: z.number() })),
    }),
  ),
  /** A place to save to. `exists` says that saving there replaces a file. */
  'folders.place': call(
    z.strictObject({ folder: handle, name, kind: fileKind }),
    place.extend({ exists: z.boolean() }),
  ),

  /** A picture's size and a small version of it to show, as PNG. */
  'picture.look': call(
    z.strictObject({ picture: handle }),
    z.strictObject({
      widthPx: z.number(),
      heightPx: z.number(),
      preview: bytes,
      previewWidthPx: z.number(),
      previewHeightPx: z.number(),
    }),
  ),
  /** A picture dropped or pasted into the studio: its bytes for a handle. */
  'picture.take': call(z.strictObject({ name, bytes }), place),
  /** A picture as cells. Reports progress; can be cancelled. */
  'picture.chart': call(
    z.strictObject({
      picture: handle,
      /** In pixels of the picture; absent: the whole of it. */
      crop: z
        .strictObject({ x: z.number(), y: z.number(), width: z.number(), height: z.number() })
        .optional(),
      columns: z.number().int().min(1).max(limits.columns),
      /** Absent: as many as keep the picture's proportions at this gauge. */
      rows: z.number().int().min(1).max(limits.rows).optional(),
      pitchMm: z.number().positive(),
      rowHeightMm: z.number().positive(),
      yarns: z.union([
        z.strictObject({ count: z.number().int().min(1).max(limits.yarns) }),
        z.strictObject({ from: z.array(yarnSchema).min(1).max(limits.yarns) }),
      ]),
      /**
       * Shows through where the picture is transparent, and gives thickness and skein to yarns that are chosen from
       * the picture. Absent: the first of `from`, or the ground of a new design.
       */
      ground: yarnSchema.optional(),
    }),
    z.strictObject({
      columns: z.number(),
      rows: z.number(),
      /** Codes by row, left to right; codes are those of `yarns`. */
      cells: bytes,
      yarns: z.array(yarnSchema),
    }),
  ),

  /** A picture to lie under a chart or to stand on a cover: upright, at most 1600 pixels a side and 2 MiB; PNG where it has transparency. */
  'reference.take': call(
    z.strictObject({ picture: handle }),
    z.strictObject({
      name: referenceSchema.shape.name,
      mediaType: z.enum(['image/png', 'image/jpeg']),
      bytes,
      widthPx: z.number(),
      heightPx: z.number(),
    }),
  ),

  /** A picture to stand as the designer's mark: at most 600 pixels a side and `limits.markBytes`; as `reference.take`. */
  'mark.take': call(
    z.strictObject({ picture: handle }),
    z.strictObject({ mediaType: z.enum(['image/png', 'image/jpeg']), bytes }),
  ),

  /** The yarns that the maker owns, for all designs. Problem: `newer-version`. */
  'stash.read': call(nothing, z.strictObject({ entries: stashEntries, notice })),
  /** All of them anew. */
  'stash.write': call(
    z.strictObject({ entries: stashEntries }),
    z.strictObject({ entries: stashEntries, notice }),
  ),

  /** Who publishes the patterns, for all designs. Problem: `newer-version`. */
  'imprint.read': call(nothing, z.strictObject({ imprint, notice })),
  'imprint.write': call(z.strictObject({ imprint }), z.strictObject({ imprint, notice })),

  /** The motifs that are kept for all designs, by name. */
  'motifs.list': call(nothing, z.strictObject({ motifs: z.array(motif), notice })),
  /** Problems: `exists` where a motif of this id is kept already, `too-many`. */
  'motifs.keep': call(z.strictObject({ motif }), nothing),
  /** Problem: `not-there`. */
  'motifs.rename': call(z.strictObject({ id: motifId, name: motifSchema.shape.name }), nothing),
  /** Moves its file to the bin. Problem: `not-there`. */
  'motifs.remove': call(z.strictObject({ id: motifId }), nothing),

  /** Writes the pattern. Reports progress; can be cancelled; leaves no half file. */
  'pattern.save': call(
    z.strictObject({
      text: designText,
      paper: z.enum(['a4', 'letter']),
      units: z.enum(['metric', 'us', 'both']),
      /** Puts the design into the file, from which `design.ofPattern` takes it. */
      attachDesign: z.boolean().optional(),
      /** Absent: as the design's own settings say. */
      copy: copy.optional(),
      target: handle,
    }),
    z.strictObject({ fileName: name, pages: z.number(), bytes: z.number() }),
  ),
  /** Writes labels for the bundles of cut pieces. As `pattern.save`; problem `nothing-to-cut` where no knot is tied. */
  'labels.save': call(
    z.strictObject({
      text: designText,
      paper: z.enum(['a4', 'letter']),
      units: z.enum(['metric', 'us', 'both']),
      /** Each piece cut as long as it is used, not at the working length. */
      fitted: z.boolean(),
      target: handle,
    }),
    z.strictObject({
      fileName: name,
      pages: z.number(),
      bytes: z.number(),
      /** The plan that the labels are of, for `bundles.plan`. */
      plan: settledPlanSchema.nullable(),
    }),
  ),
  /**
   * Writes the papers that go with the finished hanging. As `pattern.save`; problem `nothing-to-print` where none of those that
   * are asked for has a page.
   */
  'papers.save': call(
    z.strictObject({
      text: designText,
      paper: z.enum(['a4', 'letter']),
      units: z.enum(['metric', 'us', 'both']),
      copy: copy.optional(),
      which: z.array(z.enum(hangingPapers)).min(1).max(hangingPapers.length),
      target: handle,
    }),
    z.strictObject({ fileName: name, pages: z.number(), bytes: z.number(), notices: z.array(z.string()) }),
  ),
  /**
   * Writes everything for selling the pattern: copies for every paper, in colour and in symbols, in both sizes of cells; pictures
   * for the shop; the listing. One archive where the target is a place for one, a folder of its own where it is a folder. As
   * `pattern.save`.
   */
  'parcel.save': call(
    z.strictObject({
      text: designText,
      units: z.enum(['metric', 'us', 'both']),
      languages: z.array(z.enum(patternLanguages)).min(1).max(patternLanguages.length),
      /** Copies for left-handed and right-handed makers. */
      bothHands: z.boolean(),
      /** Stands on every page; empty: nobody is named. */
      preparedFor: z.string().max(limits.nameChars),
      as: z.enum(['archive', 'folder']),
      target: handle,
    }),
    z.strictObject({
      fileName: name,
      files: z.number(),
      bytes: z.number(),
      /** What its maker should know of the copies, a sentence each. */
      notices: z.array(z.string()),
    }),
  ),
  /** Writes the chart as a PNG picture with numbers and key. */
  'png.save': call(
    z.strictObject({ text: designText, target: handle }),
    z.strictObject({ fileName: name, bytes: z.number() }),
  ),

  /** Tells the host what its window holds, so that closing it can ask. */
  'window.describe': call(z.strictObject({ title: z.string(), unsaved: z.boolean() }), nothing),
  'window.close': call(nothing, nothing),
} as const;

export type Verb = keyof typeof bridge;
export type Args<V extends Verb> = z.input<(typeof bridge)[V]['args']>;
export type Answer<V extends Verb> = z.output<(typeof bridge)[V]['result']>;

export type Handle = z.infer<typeof handle>;
export type Stamp = z.infer<typeof stamp>;
export type Place = z.infer<typeof place>;
export type Settings = z.infer<typeof settingsSchema>;
export type ShelfEntry = z.infer<typeof shelfEntry>;
export type Thumbnail = z.infer<typeof thumbnail>;
export type FileKind = z.infer<typeof fileKind>;

/** What a host tells the renderer unasked. */
export const hostEventSchema = z.discriminatedUnion('kind', [
  /** A command of the studio's table was chosen in the system's menu. */
  z.strictObject({ kind: z.literal('command'), id: z.string() }),
  /** A design was opened from outside: a double click, a second start. */
  z.strictObject({ kind: z.literal('open'), design: handle }),
  /** The window is asked to close while it holds unsaved work. */
  z.strictObject({ kind: z.literal('close-asked') }),
]);
export type HostEvent = z.infer<typeof hostEventSchema>;

export interface Progress {
  /** 0 to 1. */
  done: number;
  /** What is being done, for the person: 'Page 3 of 14'. */
  what: string;
}

/** The part of the platform's AbortSignal that cancelling needs. */
export interface CancelSignal {
  readonly aborted: boolean;
  addEventListener(type: 'abort', listener: () => void): void;
  removeEventListener(type: 'abort', listener: () => void): void;
}

export interface CallOptions {
  signal?: CancelSignal;
  onProgress?: (progress: Progress) => void;
}

/** What the renderer holds. A cancelled call answers with the problem `cancelled`. */
export interface Bridge {
  call<V extends Verb>(verb: V, args: Args<V>, options?: CallOptions): Promise<Result<Answer<V>>>;
  listen(listener: (event: HostEvent) => void): () => void;
}
