/** The maker's own decisions: pinned at the cell cursor or the chosen knot, and listed with those that can't be obeyed. */
import { useMemo } from 'react';
import type { CommandId } from '../../../shared/commands.ts';
import type { Pin } from '../../../shared/design/schema.ts';
import { counted } from '../../../shared/units/counted.ts';
import { nameOfCode } from '../../draw/code-names.ts';
import { SidePart } from '../../draw/side-part.tsx';
import { runCommand } from '../../shell/command-bus.ts';
import { commandById, keyLabel } from '../../shell/keys.ts';
import type { OpenDesign } from '../../store/state.ts';
import { useStudio } from '../../store/use-studio.ts';
import { type Plans, plans, shownPlan, usePlans } from '../plans/plans.ts';
import { goToPin, removePin } from './pin-deeds.ts';
import { cutAt, noCarryAt, runAround } from './pin-place.ts';
import { cutWords, pinWords } from './pin-words.ts';
import { keyOf, type ShownPin, shownPins } from './shown-pins.ts';
import './pins.css';

export function PinsPart() {
  const pins = useStudio((state) => state.open?.design.pins);
  const planned = usePlans(shownPlan);
  const shown = useMemo(() => shownPins(pins, planned), [pins, planned]);
  return (
    <SidePart title="Pins" note={shown.length > 0 ? counted(shown.length, 'decision') : ''}>
      <div className="pins">
        <PinHere pins={shown} />
        <PinList pins={shown} />
      </div>
    </SidePart>
  );
}

/** What can be pinned at the cell cursor, or at the knot that was chosen. */
function PinHere({ pins }: { pins: readonly ShownPin[] }) {
  const open = useStudio((state) => state.open);
  const cell = usePlans((state) => state.under ?? state.chosen);
  const carryFrom = usePlans((state) => state.carryFrom);
  if (!open) return null;
  const cut = cell && cutAt(open.chart, cell);
  const noCarry = cell && noCarryAt(cell);
  const isPinned = (pin: Pin | null) => pin !== null && pins.some(({ key }) => key === keyOf(pin));
  return (
    <>
      <p className="pin-place">{cell ? placeWords(open, cell) : 'Choose a knot on the chart.'}</p>
      <div className="pin-buttons">
        <PinButton id="pin-cut" isPinned={isPinned(cut)} ahead={cut} />
        <PinButton id="pin-carry" isPinned={carryFrom !== null} ahead={null} />
        <PinButton id="pin-no-carry" isPinned={isPinned(noCarry)} ahead={noCarry} />
      </div>
      <p className="cut-place quiet">
        {cell && cut ? cutWords(cut, cell) : 'Strands are cut between runs, where the yarn in a row changes.'}
      </p>
    </>
  );
}

interface PinButtonProps {
  readonly id: CommandId;
  readonly isPinned: boolean;
  /** What it would pin: shown on the chart while the button is pointed at, or has the focus. */
  readonly ahead: Pin | null;
}

function PinButton({ id, isPinned, ahead }: PinButtonProps) {
  const command = commandById(id);
  const show = () => plans.setState({ pinAhead: ahead });
  const hide = () => plans.setState({ pinAhead: null });
  return (
    <button
      type="button"
      aria-pressed={isPinned}
      title={`${command.label} (${keyLabel(command)})`}
      onPointerEnter={show}
      onPointerLeave={hide}
      onFocus={show}
      onBlur={hide}
      onClick={() => {
        hide();
        runCommand(id);
      }}
    >
      {command.label}
    </button>
  );
}

function PinList({ pins }: { pins: readonly ShownPin[] }) {
  const settled = usePlans((state) => state.settled);
  const faults = pins.filter(({ fault }) => fault !== '').length;
  return (
    <>
      <p role="status" className={faults > 0 ? 'fault' : 'quiet'}>
        {pins.length > 0 && !settled ? 'Planning…' : pinsWords(pins.length, faults)}
      </p>
      {pins.length > 0 && (
        <>
          <ol className="pin-list" aria-label="Pins">
            {pins.map(({ pin, key, fault }) => (
              <li key={key}>
                <button type="button" className="plain" onClick={() => goToPin(pin)}>
                  {pinWords(pin)}
                </button>
                <button type="button" aria-label={`Remove: ${pinWords(pin)}`} onClick={() => removePin(pin)}>
                  Remove
                </button>
                {fault && <p className="fault">{fault}</p>}
              </li>
            ))}
          </ol>
          <button type="button" onClick={() => runCommand('remove-pins')}>
            {commandById('remove-pins').label}
          </button>
        </>
      )}
    </>
  );
}

function pinsWords(count: number, faults: number): string {
  if (count === 0) return 'Nothing is pinned: the plan decides by your settings alone.';
  if (faults === 0) return 'The plan obeys them, and is otherwise as good as it can be.';
  return `${counted(faults, 'pin')} can’t be obeyed; the plan goes on without.`;
}

/** 'At row 5, cord 3: Moss, cords 3-9'. */
function placeWords({ chart, design }: OpenDesign, cell: NonNullable<Plans['under']>): string {
  const place = `At row ${cell.row + 1}, cord ${cell.column + 1}`;
  const run = runAround(chart, cell);
  if (!run) return `${place}: bare cord`;
  const cords = run.first === run.last ? `cord ${run.first + 1}` : `cords ${run.first + 1}-${run.last + 1}`;
  return `${place}: ${nameOfCode(design, run.yarn)}, ${cords}`;
}
