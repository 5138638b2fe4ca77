/** How the hanging is shown, in a row above the chart: cells at a click, all else in a small panel that opens below. */
import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { CommandId } from '../../../shared/commands.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { commandById, keyLabel } from '../../shell/keys.ts';
import { useStudio } from '../../store/use-studio.ts';
import type { CellView, Views } from '../../store/views.ts';
import { cellIcons } from './cell-icons.tsx';
import { sights } from './sights.ts';
import './view.css';

const cells: readonly (readonly [CellView, CommandId, label: string])[] = [
  ['knots', 'view-knots', 'Knots'],
  ['flat', 'view-flat', 'Flat squares'],
  ['symbols', 'symbols', 'Symbols'],
];

const switches: readonly (readonly ['finished' | 'distance' | 'rules' | 'rulers' | 'fade', CommandId])[] = [
  ['finished', 'view-finished'],
  ['distance', 'view-distance'],
  ['rules', 'view-rules'],
  ['rulers', 'view-rulers'],
  ['fade', 'view-fade'],
];

export function ViewBar() {
  const views = useStudio((state) => state.views);
  const bar = useRef<HTMLFieldSetElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const told = otherThanUsual(views);

  useEffect(() => {
    if (!isOpen) return;
    const onPointer = (event: PointerEvent) => {
      if (!bar.current?.contains(event.target as Node)) setOpen(false);
    };
    document.addEventListener('pointerdown', onPointer, true);
    return () => document.removeEventListener('pointerdown', onPointer, true);
  }, [isOpen]);

  return (
    <fieldset
      ref={bar}
      className="view-bar"
      aria-label="How the hanging is shown"
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !isOpen) return;
        event.stopPropagation();
        setOpen(false);
        button.current?.focus();
      }}
    >
      {told && <span className="view-tag">{told}</span>}
      <div className="view-buttons">
        {cells.map(([view, command, label]) => (
          <button
            type="button"
            key={view}
            aria-label={label}
            aria-pressed={views.cells === view}
            title={titleOf(command, label)}
            onClick={() => views.cells !== view && runCommand(command)}
          >
            {cellIcons[view]}
          </button>
        ))}
        <button
          ref={button}
          type="button"
          className="view-more"
          aria-expanded={isOpen}
          aria-controls={id}
          onClick={() => setOpen(!isOpen)}
        >
          View <span aria-hidden="true">▾</span>
        </button>
      </div>
      {isOpen && (
        <div id={id} className="view-panel">
          <fieldset>
            <legend>Show</legend>
            {switches.map(([view, command]) => (
              <label key={view} className="choice">
                <input type="checkbox" checked={views[view]} onChange={() => runCommand(command)} />
                <WithKey command={command}>{commandById(command).label}</WithKey>
              </label>
            ))}
          </fieldset>
          <fieldset>
            <legend>Colours</legend>
            {sights.map(([sight, command, label]) => (
              <label key={sight} className="choice">
                <input
                  type="radio"
                  name={`${id}-sight`}
                  checked={views.sight === sight}
                  onChange={() => runCommand(command)}
                />
                {label}
              </label>
            ))}
          </fieldset>
          <div className="view-deeds">
            <button type="button" onClick={() => runCommand('zoom-real')}>
              Real size
            </button>
            <button
              type="button"
              onClick={() => {
                setOpen(false);
                runCommand('reference');
              }}
            >
              Reference picture…
            </button>
          </div>
        </div>
      )}
    </fieldset>
  );
}

function WithKey({ command, children }: { command: CommandId; children: ReactNode }) {
  const key = keyLabel(commandById(command));
  return (
    <>
      {children}
      {key && <kbd>{key}</kbd>}
    </>
  );
}

/** Says what is shown otherwise than usual, so that nobody takes simulated colours for the yarns'. */
function otherThanUsual({ sight, distance, finished }: Views): string {
  const short = sights.find(([each]) => each === sight)?.[3] ?? '';
  return [distance ? 'from afar' : finished ? 'finished' : '', short]
    .filter((word) => word !== '')
    .join(', ');
}

function titleOf(command: CommandId, label: string): string {
  const key = keyLabel(commandById(command));
  return key ? `${label} (${key})` : label;
}
