/**
 * The parts of the pattern in printing order, and below them those that are left out. A part is ticked to be printed, goes to
 * another place by drag, by Alt with an arrow or by its buttons, and shows its pages when its name is pressed.
 */
import { useRef } from 'react';
import type { PatternPart } from '../../../shared/design/pattern-schema.ts';
import { counted } from '../../../shared/units/counted.ts';
import { useListDrag } from '../../draw/list-drag.ts';
import { useStudio } from '../../store/use-studio.ts';
import { movePart, partsLeftOut, partsPrinted, printPart, usualParts } from '../pattern-deeds.ts';
import { usePattern } from '../pattern-view.ts';
import { choosePart } from './choose-part.ts';
import { partNames } from './part-words.ts';

export function PartsPanel() {
  const design = useStudio((state) => state.open?.design);
  const pages = usePattern((view) => view.document?.pages);
  const chosen = usePattern((view) => view.chosen);
  const list = useRef<HTMLUListElement>(null);
  const printed = partsPrinted(design);
  const leftOut = partsLeftOut(design);
  const { markOf, press, isDragEnd } = useListDrag(list, '.publish-grip', (part: PatternPart, gap) => {
    const from = printed.indexOf(part);
    if (from >= 0) movePart(part, gap > from ? gap - 1 : gap);
  });
  const count = (part: PatternPart) => pages?.filter((page) => page.part === part).length ?? 0;

  const onKey = (event: React.KeyboardEvent, part: PatternPart, at: number) => {
    const by = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (!event.altKey || by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    movePart(part, at + by);
  };

  return (
    <section className="publish-parts" aria-label="Parts">
      <h2>Parts</h2>
      <p className="quiet small">
        Press a name to see its pages. Drag it, or press Alt with ↑ or ↓, to move it.
      </p>
      <ul ref={list} aria-label="Parts in printing order">
        {printed.map((part, at) => (
          <li
            key={part}
            className={markOf(part, at, printed.length)}
            onKeyDown={(event) => onKey(event, part, at)}
          >
            <PrintBox part={part} isPrinted />
            <button
              type="button"
              className="publish-part publish-grip"
              onPointerDown={(event) => press(event, part)}
              aria-current={part === chosen}
              onClick={() => !isDragEnd() && choosePart(part)}
              aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown"
              title="Show its pages; drag, or Alt with an arrow, to move it"
            >
              <span>{partNames[part]}</span>{' '}
              <span className="quiet">{pages && pagesInWords(count(part))}</span>
            </button>
            <MoveButton part={part} to={at - 1} isPossible={at > 0} way="up" />
            <MoveButton part={part} to={at + 1} isPossible={at < printed.length - 1} way="down" />
          </li>
        ))}
      </ul>
      {leftOut.length > 0 && (
        <>
          <h3>Left out</h3>
          <ul aria-label="Parts that are left out">
            {leftOut.map((part) => (
              <li key={part}>
                <PrintBox part={part} isPrinted={false} />
                <span className="publish-part quiet">{partNames[part]}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      <button type="button" aria-disabled={!design?.pattern?.parts} onClick={usualParts}>
        The usual parts
      </button>
    </section>
  );
}

function PrintBox({ part, isPrinted }: { part: PatternPart; isPrinted: boolean }) {
  return (
    <input
      type="checkbox"
      aria-label={`Print ${partNames[part]}`}
      checked={isPrinted}
      data-print={part}
      onChange={() => {
        printPart(part, !isPrinted);
        // The part goes over to the other list, and its box with it: the focus follows.
        requestAnimationFrame(() =>
          document.querySelector<HTMLElement>(`.publish-parts [data-print="${part}"]`)?.focus(),
        );
      }}
    />
  );
}

interface MoveButtonProps {
  readonly part: PatternPart;
  readonly to: number;
  readonly isPossible: boolean;
  readonly way: 'up' | 'down';
}

function MoveButton({ part, to, isPossible, way }: MoveButtonProps) {
  return (
    <button
      type="button"
      className="plain publish-move"
      // The keys of the part's own name do the same: for them these would be two stops more in each line.
      tabIndex={-1}
      aria-label={`Move ${partNames[part]} ${way}`}
      title={`Move ${way}`}
      aria-disabled={!isPossible}
      onClick={() => isPossible && movePart(part, to)}
    >
      <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
        <path
          d={way === 'up' ? 'M2 8 6 4l4 4' : 'M2 4l4 4 4-4'}
          fill="none"
          stroke="currentColor"
          strokeWidth="1.6"
        />
      </svg>
    </button>
  );
}

function pagesInWords(count: number): string {
  return count === 0 ? 'no page' : counted(count, 'page');
}
