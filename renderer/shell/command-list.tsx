/** All commands with their keys, searchable: for whoever does not know where a thing is, and for the keyboard alone. */
import { useState } from 'react';
import { type CommandId, commands } from '../../shared/commands.ts';
import { canRun, runCommand } from './command-bus.ts';
import { ask } from './dialogs.tsx';
import { keyLabel } from './keys.ts';

export async function findCommand(): Promise<void> {
  const id = await ask<CommandId>({
    label: 'Find a command',
    body: (answer) => <CommandList answer={answer} />,
  });
  if (id) runCommand(id);
}

function CommandList({ answer }: { answer: (id: CommandId) => void }) {
  const [words, setWords] = useState('');
  const [at, setAt] = useState(0);
  const found = commands.filter((each) => each.label.toLowerCase().includes(words.trim().toLowerCase()));
  const chosen = found[Math.min(at, found.length - 1)];
  const move = (by: number) =>
    setAt((found.length + Math.min(at, found.length - 1) + by) % found.length || 0);

  return (
    <div className="sheet command-list">
      <h2 id="find-title">Find a command</h2>
      <input
        data-first
        role="combobox"
        aria-expanded="true"
        aria-controls="find-list"
        aria-labelledby="find-title"
        aria-activedescendant={chosen ? `find-${chosen.id}` : undefined}
        value={words}
        onChange={(event) => {
          setWords(event.target.value);
          setAt(0);
        }}
        onKeyDown={(event) => {
          if (event.key === 'ArrowDown') move(1);
          else if (event.key === 'ArrowUp') move(-1);
          else if (event.key === 'Enter' && chosen && canRun(chosen.id)) answer(chosen.id);
          else return;
          event.preventDefault();
        }}
      />
      <div id="find-list" className="list" role="listbox" tabIndex={-1} aria-labelledby="find-title">
        {found.map((each) => (
          <div
            key={each.id}
            id={`find-${each.id}`}
            role="option"
            tabIndex={-1}
            aria-selected={each === chosen}
            aria-disabled={!canRun(each.id)}
            ref={(element) => {
              if (each === chosen) element?.scrollIntoView({ block: 'nearest' });
            }}
            onClick={() => canRun(each.id) && answer(each.id)}
            onKeyDown={(event) => event.key === 'Enter' && canRun(each.id) && answer(each.id)}
          >
            <span>{each.label}</span>
            {keyLabel(each) && <kbd>{keyLabel(each)}</kbd>}
          </div>
        ))}
      </div>
      {found.length === 0 && <p className="quiet">No command has these words.</p>}
    </div>
  );
}
