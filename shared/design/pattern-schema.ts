/**
 * What a design's pattern is composed of, kept in the design: its parts and their order, the texts that the designer has
 * written, and how a copy is printed. Whatever is absent is as usual, so that a pattern can be printed at once.
 */
import { z } from 'zod';
import { limits } from './limits.ts';

/** The parts of a pattern, in their usual order. */
export const patternParts = [
  'cover',
  'welcome',
  'materials',
  'cut-list',
  'reading',
  'knots',
  'map',
  'chart',
  'chart-symbols',
  'rows',
  'ticks',
  'strands',
  'finishing',
  'fringe',
  'care',
  'designer',
] as const;

export type PatternPart = (typeof patternParts)[number];

/** The languages that a pattern can be printed in, by BCP 47. */
export const patternLanguages = ['en', 'de'] as const;

export type Language = (typeof patternLanguages)[number];

const text = z.string().max(limits.stringChars);

export const copySchema = z.looseObject({
  language: z.enum(patternLanguages).optional(),
  /** 'colour': symbols on the yarns' colours. 'symbols': on white. 'grey': on greys that stay apart in print. */
  ink: z.enum(['colour', 'symbols', 'grey']).optional(),
  /** The least width of a printed cell: 'standard' 4 mm, 'large' 6 mm. */
  cells: z.enum(['standard', 'large']).optional(),
  /** Written rows as whole words, or as short as they can be. */
  rowsForm: z.enum(['long', 'compact']).optional(),
  /** The written rows stand beside the chart's own rows, where there is room for them. */
  rowsBeside: z.boolean().optional(),
  /** Row 1 begins at the top right, and the knots are drawn for the left hand. Absent: as the design's start corner. */
  leftHanded: z.boolean().optional(),
});

const patternTextsSchema = z.looseObject({
  /** Greets the buyer and says what the picture is about. */
  welcome: text.optional(),
  /** What a buyer may do with the pattern and with what is made by it. */
  terms: text.optional(),
  /** What a maker should know already. */
  skill: text.optional(),
  /** How the chart is read: a line is a sentence of its own. */
  reading: text.optional(),
  /** The order of work: a line is a step. */
  order: text.optional(),
  finishing: text.optional(),
  /** A line is an entry; what stands before its first colon is its title. */
  care: text.optional(),
  /** Besides the usual ones, which are always printed; written as the care is. */
  cautions: text.optional(),
  /** Of the designer to the maker, on the materials page. */
  notes: text.optional(),
});

export const patternSchema = z.looseObject({
  /** In printing order. A part that is not named is not printed. Absent: the usual ones. */
  parts: z.array(z.enum(patternParts)).max(patternParts.length).optional(),
  /** In place of the first versions; a text that is there and empty is left out of the pattern. */
  texts: patternTextsSchema.optional(),
  /** The maker's own photograph, in place of the drawn hanging on the cover. */
  cover: z
    .looseObject({
      mediaType: z.enum(['image/png', 'image/jpeg']),
      widthPx: z.number().int().positive().max(10_000),
      heightPx: z.number().int().positive().max(10_000),
      /** The picture file in base64, in lines, as of the reference picture. */
      picture: z
        .array(
          z
            .string()
            .regex(/^[A-Za-z0-9+/]+={0,2}$/)
            .max(limits.referenceLineChars),
        )
        .min(1)
        .max(limits.referenceLines),
    })
    .optional(),
  /** What stands on the labels of the finished hanging. */
  labels: z
    .looseObject({
      /** What the cord is made of: '100 % cotton'. Absent: a line is left to write on. */
      cordFibre: z.string().max(limits.nameChars).optional(),
      yarnFibre: z.string().max(limits.nameChars).optional(),
    })
    .optional(),
  /** How a copy is printed that is not asked for otherwise. */
  copy: copySchema.optional(),
});
