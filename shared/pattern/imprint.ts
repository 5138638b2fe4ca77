/**
 * The imprint: who publishes the patterns, kept once for all of them beside the settings. Everything may be empty; what is
 * empty is not printed, and preflight points out what a buyer would miss.
 */
import { z } from 'zod';
import { limits } from '../design/limits.ts';

const IMPRINT_FORMAT = 'larkrow-imprint';
const IMPRINT_VERSION = 1;

/** Lines of contact: as many as stand on a cover. */
export const imprintLimits = { contactLines: 8 } as const;

const line = z.string().max(limits.nameChars);

export const imprintSchema = z.looseObject({
  format: z.literal(IMPRINT_FORMAT),
  version: z.literal(IMPRINT_VERSION),
  /** As it stands on covers; a design's own designer stands before it. */
  name: line,
  /** The workshop's or shop's name. */
  workshop: line,
  /** How to be reached: address, mail, page of the web, a line each. */
  contact: z.array(line).max(imprintLimits.contactLines),
  /** Of the designer, for the last page. */
  about: z.string().max(limits.stringChars),
  /** The mark, a small picture: PNG or JPEG in base64, at most `limits.markBytes`. */
  mark: z
    .looseObject({
      mediaType: z.enum(['image/png', 'image/jpeg']),
      base64: z
        .string()
        .regex(/^[A-Za-z0-9+/]+={0,2}$/)
        .max((limits.markBytes / 3) * 4 + 4),
    })
    .nullable(),
  /** The accent of titles and rules, as #rrggbb; null: taken from each design. */
  accent: z
    .string()
    .regex(/^#[0-9a-f]{6}$/)
    .nullable(),
});

export type Imprint = Pick<
  z.infer<typeof imprintSchema>,
  'format' | 'version' | 'name' | 'workshop' | 'contact' | 'about' | 'mark' | 'accent'
>;

export const emptyImprint: Imprint = {
  format: IMPRINT_FORMAT,
  version: IMPRINT_VERSION,
  name: '',
  workshop: '',
  contact: [],
  about: '',
  mark: null,
  accent: null,
};
