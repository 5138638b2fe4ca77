/** All commands with their keys, searchable: for whoever does not know where a thing is, and for the keyboard alone. */
import { useState } from 'react';
import type { Command, CommandId } from '../../shared/commands.ts';
import { useStudio } from '../store/use-studio.ts';
import { ChartKeys } from './chart-keys.tsx';
import { runCommand } from './command-bus.ts';
import { ask } from './dialogs.tsx';
import { type CommandGroup, findCommands } from './find-commands.ts';
import { keyLabel } from './keys.ts';
import { whyNotRun } from './why-not-run.ts';

/** The commands that were run from here, the latest first, while the studio runs. */
let recent: readonly CommandId[] = [];
const mostRecent = 5;

export async function findCommand(): Promise<void> {
  const id = await ask<CommandId>({
    label: 'Find a command',
    body: (answer) => <CommandList answer={answer} />,
  });
  if (!id) return;
  recent = [id, ...recent.filter((each) => each !== id)].slice(0, mostRecent);
  runCommand(id);
}

type Listed = CommandGroup['commands'][number];

/** A command as it stands in the list. One that was used last stands twice, so its id alone does not say which. */
interface Entry {
  readonly key: string;
  readonly command: Listed;
  readonly whyNot: string;
}

const steps: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1, PageDown: 10, PageUp: -10 };

function CommandList({ answer }: { answer: (id: CommandId) => void }) {
  const [words, setWords] = useState('');
  const [at, setAt] = useState(0);
  const groups = findCommands(words, recent).map(({ title, commands }) => ({
    title,
    entries: commands.map((command): Entry => {
      return { key: `find-${title}-${command.id}`.replaceAll(' ', '-'), command, whyNot: whyNotRun(command) };
    }),
  }));
  const entries = groups.flatMap((group) => group.entries);
  const chosen = entries[Math.min(at, entries.length - 1)];

  const onKey = (event: React.KeyboardEvent) => {
    const step = steps[event.key];
    if (step) setAt(moved(Math.min(at, entries.length - 1), step, entries.length));
    else if (event.key === 'Enter' && chosen?.whyNot === '') answer(chosen.command.id);
    else if (event.key !== 'Enter') return;
    event.preventDefault();
  };

  return (
    <div className="sheet command-list">
      <h2 id="find-title">Find a command</h2>
      <input
        data-first
        role="combobox"
        aria-expanded="true"
        aria-controls="find-list"
        aria-labelledby="find-title"
        aria-activedescendant={chosen?.key}
        placeholder="Any words, such as: layer down"
        value={words}
        onChange={(event) => {
          setWords(event.target.value);
          setAt(0);
        }}
        onKeyDown={onKey}
      />
      <div id="find-list" className="list" role="listbox" tabIndex={-1} aria-labelledby="find-title">
        {groups.map(({ title, entries: some }) => (
          <fieldset key={title} aria-label={title}>
            <p className="group-title" aria-hidden="true">
              {title}
            </p>
            {some.map((entry) => (
              <Option key={entry.key} entry={entry} isChosen={entry === chosen} answer={answer} />
            ))}
          </fieldset>
        ))}
      </div>
      <p className={entries.length === 0 ? 'quiet' : 'unseen'} role="status">
        {entries.length === 0
          ? 'No command has these words.'
          : entries.length === 1
            ? '1 command'
            : `${entries.length} commands`}
      </p>
      <ChartKeys />
    </div>
  );
}

interface OptionProps {
  readonly entry: Entry;
  readonly isChosen: boolean;
  readonly answer: (id: CommandId) => void;
}

function Option({ entry: { key, command, whyNot }, isChosen, answer }: OptionProps) {
  const run = () => {
    if (whyNot === '') answer(command.id);
  };
  return (
    <div
      id={key}
      role="option"
      tabIndex={-1}
      aria-selected={isChosen}
      aria-disabled={whyNot !== ''}
      ref={(element) => {
        if (isChosen) element?.scrollIntoView({ block: 'nearest' });
      }}
      onClick={run}
      onKeyDown={(event) => event.key === 'Enter' && run()}
    >
      <span className="label">{command.label}</span>
      {whyNot && <span className="small">{whyNot}</span>}
      <Keys command={command} />
    </div>
  );
}

/** A letter is said to belong to the chart, and is none where letters were switched off. */
function Keys({ command }: { command: Command }) {
  const hasLetters = useStudio((state) => state.settings.letterKeys);
  const isLetter = command.letter !== undefined && command.keys === undefined;
  const label = keyLabel(command);
  if (!label || (isLetter && !hasLetters)) return null;
  return (
    <span className="keys">
      {isLetter && <span className="small">on the chart</span>}
      <kbd>{label}</kbd>
    </span>
  );
}

/** By one step round and round; by more, as far as there are entries. */
function moved(from: number, by: number, count: number): number {
  if (count === 0) return 0;
  if (Math.abs(by) === 1) return (from + by + count) % count;
  return Math.min(count - 1, Math.max(0, from + by));
}
