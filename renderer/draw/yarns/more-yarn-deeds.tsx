/** A small list above its button, with what is done to yarns less often. */
import { useEffect, useId, useRef, useState } from 'react';
import type { CommandId } from '../../../shared/commands.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { commandById } from '../../shell/keys.ts';

const deeds: readonly CommandId[] = ['yarns-that-go', 'recolour', 'stash', 'touching'];

export function MoreYarnDeeds() {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const whole = useRef<HTMLElement>(null);
  const button = useRef<HTMLButtonElement>(null);

  useEffect(() => {
    if (!isOpen) return;
    whole.current?.querySelector<HTMLElement>('.more-list button')?.focus();
    const onPointer = (event: PointerEvent) => {
      if (!whole.current?.contains(event.target as Node)) setOpen(false);
    };
    document.addEventListener('pointerdown', onPointer, true);
    return () => document.removeEventListener('pointerdown', onPointer, true);
  }, [isOpen]);

  return (
    <section
      ref={whole}
      aria-label="More about yarns"
      className="more-yarn-deeds"
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !isOpen) return;
        event.stopPropagation();
        setOpen(false);
        button.current?.focus();
      }}
    >
      <button
        ref={button}
        type="button"
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setOpen(!isOpen)}
      >
        More <span aria-hidden="true">▴</span>
      </button>
      {isOpen && (
        <div id={id} className="more-list">
          {deeds.map((command) => (
            <button
              type="button"
              key={command}
              className="plain"
              onClick={() => {
                setOpen(false);
                button.current?.focus();
                runCommand(command);
              }}
            >
              {commandById(command).label}
            </button>
          ))}
        </div>
      )}
    </section>
  );
}
