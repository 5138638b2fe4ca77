import { z } from 'zod';
import { DESIGN_VERSION, designFileSchema } from './schema.ts';

/**
 * The JSON Schema (draft 2020-12) of the design file, for other programs: stored as `larkrow-design.schema.json` by
 * `npx tsx build/publish-schema.mjs`. It says what one value may be; the laws between values are in `check-design.ts`.
 */
export function designJsonSchema(): object {
  return z.toJSONSchema(
    designFileSchema.meta({
      title: `Larkrow design, version ${DESIGN_VERSION}`,
      description:
        'A knotted picture hanging. Lengths in mm, masses in g, times in s. A row of a layer is a text of stretches from left to right, each a count followed by a yarn id, by "." for empty or by "-" for bare: "12y1 3y2 25."; its counts add up to columns. Keys that are not named here are kept.',
    }),
  );
}
