/** A part of the right column, which can be folded away. */
import { type ReactNode, useId } from 'react';

interface SidePartProps {
  readonly title: string;
  /** Stands beside the title. */
  readonly note?: string;
  /** By this name a command finds it (`show-side-part.ts`). */
  readonly part?: string;
  readonly children: ReactNode;
}

export function SidePart({ title, note = '', part, children }: SidePartProps) {
  const id = useId();
  return (
    <details className="side-part" data-part={part} open>
      <summary id={id}>
        <h3>{title}</h3>
        {note && <span className="quiet small">{note}</span>}
      </summary>
      {children}
    </details>
  );
}
