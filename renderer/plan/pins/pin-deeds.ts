/**
 * Decisions that the maker pins, by pointer, keys and commands alike: each is one step of the history, and the plan
 * follows. What is pinned already is taken back by doing it again.
 */
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { Pin } from '../../../shared/design/schema.ts';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import { studio } from '../../store/studio.ts';
import { showLeaf } from '../leaves/leaves.ts';
import { chooseStrandAt, showCell } from '../plan-deeds.ts';
import { plans } from '../plans/plans.ts';
import { carryBetween, cutAt, noCarryAt, runAround } from './pin-place.ts';
import { pinWords } from './pin-words.ts';
import { keyOf } from './shown-pins.ts';

export function pinCut(): void {
  const at = placeNow();
  const pin = at && cutAt(at.chart, at.cell);
  if (at && pin)
    toggle(pin, `${pinWords(pin)}${pin.cord === at.cell.column + 1 ? '' : ', where the run ends'}.`);
  else tellProblem(at ? 'That cell is bare: no strand ends there. Choose a knot.' : noPlace);
}

export function pinNoCarry(): void {
  const at = placeNow();
  if (at) toggle(noCarryAt(at.cell));
  else tellProblem(noPlace);
}

/** The knot that is chosen next tells where the strand goes on. Asked for once more, that is the knot here. */
export function beginCarry(): void {
  const at = placeNow();
  if (!at) tellProblem(noPlace);
  else if (plans.getState().carryFrom) endCarry(at.cell);
  else if (!runAround(at.chart, at.cell))
    tellProblem('That cell is bare: no strand is carried from there. Choose a knot.');
  else {
    showLeaf('chart');
    plans.setState({ carryFrom: at.cell });
  }
}

export function dropCarry(): void {
  plans.setState({ carryFrom: null });
}

/** Chooses the strand of a knot, or, while a carry is being pinned, the knot that it leads to. */
export function chooseKnot(cell: Cell): void {
  if (plans.getState().carryFrom) endCarry(cell);
  else chooseStrandAt(cell);
}

export function removePin(pin: Pin): void {
  setPins('Remove a pin', (pins) => pins.filter((each) => keyOf(each) !== keyOf(pin)));
  tell('Removed. Undo brings it back.');
}

export function removePins(): void {
  const { open } = studio.getState();
  if (!open?.design.pins?.length) {
    tell('Nothing is pinned.');
    return;
  }
  setPins('Remove all pins', () => []);
  tell('All pins are removed. Undo brings them back.');
}

/** Goes to where it is pinned, and chooses the strand there. */
export function goToPin({ row, cord }: Pin): void {
  const cell = { row: row - 1, column: cord - 1 };
  chooseStrandAt(cell);
  showCell(cell);
}

/** Where a pin is set now: the cell cursor or the cell under the pointer, else the knot that was chosen. */
function placeNow(): { readonly chart: Chart; readonly cell: Cell } | null {
  const { open } = studio.getState();
  const { under, chosen } = plans.getState();
  const cell = under ?? chosen;
  return open && cell && { chart: open.chart, cell };
}

function endCarry(to: Cell): void {
  const { open } = studio.getState();
  const from = plans.getState().carryFrom;
  if (!open || !from) return;
  const pin = carryBetween(open.chart, from, to);
  if (pin.ok) {
    dropCarry();
    toggle(pin.value);
  } else tellProblem(pin.problem.sentence);
}

/** `says`: what is told once it is pinned. */
function toggle(pin: Pin, says = `${pinWords(pin)}.`): void {
  const pins = studio.getState().open?.design.pins ?? [];
  if (pins.some((each) => keyOf(each) === keyOf(pin))) removePin(pin);
  else if (pins.length >= limits.pins)
    tellProblem(`A design has at most ${limits.pins.toLocaleString('en')} pins. Remove some first.`);
  else {
    setPins(labels[pin.kind], (before) => [...before, pin]);
    tell(says);
  }
}

const noPlace = 'Choose a knot on the chart first.';

const labels: Readonly<Record<Pin['kind'], string>> = {
  cut: 'Cut here',
  'no-carry': 'Never carry across here',
  carry: 'Carry from here',
};

/** A design without pins says nothing of them. */
function setPins(label: string, next: (pins: readonly Pin[]) => readonly Pin[]): void {
  const { open } = studio.getState();
  if (!open) return;
  const pins = next(open.design.pins ?? []);
  change(label, { kind: 'set', field: 'pins', value: pins.length === 0 ? undefined : [...pins] });
}
