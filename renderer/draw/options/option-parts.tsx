/** The parts that tools' options are made of. */
import type { CommandId } from '../../../shared/commands.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { commandById, keyLabel } from '../../shell/keys.ts';

interface ChooserProps<T extends string> {
  readonly label: string;
  readonly value: T;
  /** What each value is called, in order. */
  readonly choices: Readonly<Record<T, string>>;
  readonly onChange: (value: T) => void;
}

export function Chooser<T extends string>({ label, value, choices, onChange }: ChooserProps<T>) {
  return (
    <label className="option">
      {label}
      <select value={value} onChange={(event) => onChange(event.target.value as T)}>
        {(Object.entries(choices) as [T, string][]).map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}

export function Toggle(props: { label: string; on: boolean; onChange: (on: boolean) => void }) {
  return (
    <button type="button" aria-pressed={props.on} onClick={() => props.onChange(!props.on)}>
      {props.label}
    </button>
  );
}

export function CommandButton({ command, label }: { command: CommandId; label: string }) {
  const about = commandById(command);
  const key = keyLabel(about);
  return (
    <button
      type="button"
      title={key ? `${about.label} (${key})` : about.label}
      onClick={() => runCommand(command)}
    >
      {label}
    </button>
  );
}
