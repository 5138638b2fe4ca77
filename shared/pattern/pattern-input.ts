/** What a pattern is made from, and what its pages share. */
import type { Chart } from '../chart/chart.ts';
import type { Design } from '../design/design.ts';
import type { PatternPart } from '../design/pattern-schema.ts';
import type { Edition } from '../design/schema.ts';
import type { Materials } from '../materials/materials.ts';
import type { Plan } from '../tying/plan.ts';
import type { Units } from '../units/units.ts';
import type { Copy } from './copy.ts';
import type { Figures } from './flow/figures.ts';
import type { Imprint } from './imprint.ts';
import type { CellsItem } from './page/page.ts';
import type { Paper, Sheet } from './page/papers.ts';
import type { Printer } from './page/printable.ts';

export interface PatternInput {
  /** As the copy ties it: see `designForCopy`. Chart and plan are its own. */
  readonly design: Design;
  readonly chart: Chart;
  readonly plan: Plan;
  readonly materials: Materials;
  readonly paper: Paper;
  readonly units: Units;
  /** Absent: as the design's own settings say. */
  readonly copy?: Copy;
  /** Absent: nobody is named but the design's designer. */
  readonly imprint?: Imprint;
  /** The edition that this is; null or absent: none was published, or the design has gone on since. */
  readonly edition?: Pick<Edition, 'number' | 'date' | 'errata'> | null;
}

export interface PatternContext extends Required<PatternInput> {
  readonly sheet: Sheet;
  /** The one colour of rules, marks and numbers, as #rrggbb: dark enough to be read on paper. */
  readonly accent: string;
  readonly cellInks: CellsItem['inks'];
  readonly printer: Printer;
  /** Figures in the pattern's units and language. */
  readonly figures: Figures;
}

/** On which pages the parts begin, from 1; a part that is not printed has none. */
export interface PageNumbers {
  first(part: PatternPart): number | null;
  /** How many pages the part has. */
  count(part: PatternPart): number;
}
