/** What is done on the Plan screen, by pointer, keys and commands alike. */
import type { Cell } from '../../shared/chart/tools/cell.ts';
import type { TyingSettings } from '../../shared/design/schema.ts';
import { goToCell } from '../draw/go-to-cell.ts';
import { change } from '../store/changing.ts';
import { studio } from '../store/studio.ts';
import { showLeaf, showPlace } from './leaves/leaves.ts';
import type { PlanTables } from './plans/plan-tables.ts';
import { type PlanView, plans, shownPlan } from './plans/plans.ts';
import { strandAt, strandBeside, strandFacts } from './plans/strand-facts.ts';
import { steppedKnots, type TyingStep } from './plans/tying-place.ts';

/** Chooses the strand that ties a cell; a bare cell lets go of the one chosen. */
export function chooseStrandAt(cell: Cell): void {
  const tables = tablesNow();
  if (tables) plans.setState({ chosen: strandAt(tables, cell) === null ? null : cell });
}

/** Chooses a strand, and goes to where it begins. */
export function chooseStrand(strand: number): void {
  const tables = tablesNow();
  if (!tables) return;
  const { start } = strandFacts(tables, strand);
  const cell = { row: start.row - 1, column: start.cord - 1 };
  plans.setState({ chosen: cell });
  showCell(cell);
}

/** Turns to the chart, where it is not shown, and brings the cell cursor to a cell of it. */
export function showCell(cell: Cell): void {
  // A chart that is only now turned to begins at the cell cursor.
  plans.setState({ under: cell });
  showLeaf('chart');
  goToCell(cell);
}

/** The strand of the same yarn that is attached next or before; the first of all where none is chosen. */
export function chooseBeside(by: 1 | -1): void {
  const tables = tablesNow();
  if (!tables || tables.strands.count === 0) return;
  const strand = chosenStrand();
  chooseStrand(strand === null ? 0 : strandBeside(tables, strand, by));
}

/** Goes to where the chosen strand begins or ends. */
export function goToStrand(place: 'start' | 'end'): void {
  const tables = tablesNow();
  const strand = chosenStrand();
  if (!tables || strand === null) return;
  const { row, cord } = strandFacts(tables, strand)[place];
  showCell({ row: row - 1, column: cord - 1 });
}

export function letGoOfStrand(): void {
  plans.setState({ chosen: null });
}

/** What was begun in another view, a carry that is being pinned, is given up. */
export function showView(view: PlanView): void {
  showLeaf('chart');
  plans.setState((before) => ({ view, carryFrom: before.view === view ? before.carryFrom : null }));
}

/** Shows the hanging with so many knots tied. All of them: nothing is faint. */
export function tieTo(knots: number): void {
  const tables = tablesNow();
  if (!tables) return;
  showPlace();
  const all = tables.stretches.knotsBefore[tables.stretches.count]!;
  const within = Math.max(0, Math.min(all, knots));
  plans.setState({ tied: within === all ? null : within });
}

export function stepTying(step: TyingStep): void {
  const tables = tablesNow();
  if (!tables) return;
  const { count, knotsBefore } = tables.stretches;
  tieTo(steppedKnots(tables, plans.getState().tied ?? knotsBefore[count]!, step));
}

/** One step of the history; settings that were tried are what they are changed to. */
export function changeTying(label: string, tying: TyingSettings): void {
  const { open } = studio.getState();
  if (open && !isSame(open.design.tying, tying)) change(label, { kind: 'set', field: 'tying', value: tying });
  plans.setState({ draft: null });
}

/** Tries settings without keeping them; null goes back to those of the design. */
export function tryTying(tying: TyingSettings | null): void {
  plans.setState({ draft: tying && { tying } });
}

/** The strand that is chosen in the plan that is shown; null where none is. */
export function chosenStrand(): number | null {
  const { chosen } = plans.getState();
  const tables = tablesNow();
  return chosen && tables ? strandAt(tables, chosen) : null;
}

function tablesNow(): PlanTables | null {
  return shownPlan(plans.getState())?.tables ?? null;
}

function isSame(a: TyingSettings, b: TyingSettings): boolean {
  const keys = Object.keys({ ...a, ...b }) as (keyof TyingSettings)[];
  return keys.every((key) => a[key] === b[key]);
}
