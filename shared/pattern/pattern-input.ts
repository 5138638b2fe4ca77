/** What a pattern is made from, and what its pages share. */
import type { Chart } from '../chart/chart.ts';
import type { Design } from '../design/design.ts';
import type { Materials } from '../materials/materials.ts';
import type { Plan } from '../tying/plan.ts';
import type { Units } from '../units/units.ts';
import type { CellsItem } from './page.ts';
import type { Paper, Sheet } from './papers.ts';
import type { Printer } from './printable.ts';

export interface PatternInput {
  readonly design: Design;
  readonly chart: Chart;
  readonly plan: Plan;
  readonly materials: Materials;
  readonly paper: Paper;
  readonly units: Units;
}

export interface PatternContext extends PatternInput {
  readonly sheet: Sheet;
  readonly cellInks: CellsItem['inks'];
  readonly printer: Printer;
}
