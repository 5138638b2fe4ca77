/** What every sheet about the chart's size has: its title, its fields, and what comes of them in figures. */
import type { ReactNode } from 'react';
import type { Design } from '../../../shared/design/design.ts';
import { type Size, sizeProblem } from '../../../shared/design/size-edits.ts';
import { studio } from '../../store/studio.ts';
import { finishedSize } from './finished-size.ts';

interface SizeSheetProps {
  readonly title: string;
  readonly design: Design;
  /** What the chart would have. */
  readonly size: Size;
  /** Why the figures can't be used, in a sentence; empty where they can. */
  readonly fault?: string;
  /** A sentence beside the figures. */
  readonly note?: string;
  /** True where the figures are those that the chart has. */
  readonly isSame?: boolean;
  /** On the button that does it. */
  readonly deed: string;
  readonly done: () => void;
  readonly children: ReactNode;
}

export function SizeSheet({
  title,
  design,
  size,
  fault,
  note,
  isSame = false,
  deed,
  done,
  children,
}: SizeSheetProps) {
  const { units } = studio.getState().settings;
  const problem = fault || (sizeProblem(design, size)?.sentence ?? '');
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (!problem && !isSame) done();
      }}
    >
      <h2>{title}</h2>
      <div className="fields">{children}</div>
      <div role="status">
        {problem ? <p className="fault">{problem}</p> : <p>{finishedSize(design, size, units)}</p>}
        {note && <p className="quiet small">{note}</p>}
      </div>
      <div className="answers">
        <button type="submit" className="main" disabled={problem !== '' || isSame}>
          {deed}
        </button>
      </div>
    </form>
  );
}
