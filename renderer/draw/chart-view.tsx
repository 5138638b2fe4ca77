/**
 * The hanging on screen. React only mounts the surface; the cell outline is moved by hand. By keys: arrows move a
 * cell cursor, Space or Enter uses the tool there, Escape drops what was begun.
 */
import { useEffect, useRef, useState } from 'react';
import { goesRight } from '../../shared/chart/chart.ts';
import type { Cell } from '../../shared/chart/tools/cell.ts';
import { type Command, commands } from '../../shared/commands.ts';
import { handleCommands, runCommand } from '../shell/command-bus.ts';
import { type OpenDesign, studio } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';
import { listenToGestures } from '../surface/gestures.ts';
import { Surface } from '../surface/surface.ts';
import { nameOfCode } from './code-names.ts';
import { hand, isPressed } from './hand.ts';

export function ChartView() {
  const room = useRef<HTMLDivElement>(null);
  const outline = useRef<HTMLDivElement>(null);
  const surface = useRef<Surface | null>(null);
  const cursor = useRef<Cell | null>(null);
  const [spoken, setSpoken] = useState('');
  const columns = useStudio((state) => state.open?.design.columns);
  const rows = useStudio((state) => state.open?.design.rows);
  const tool = useStudio((state) => state.tool);

  useEffect(() => {
    const made = new Surface(room.current!, () => {
      if (surface.current) placeOutline(surface.current, outline.current!);
    });
    surface.current = made;
    const forget = [
      listenToGestures(room.current!, made, hand),
      studio.subscribe((state, before) => {
        if (state.under !== before.under) placeOutline(made, outline.current!);
      }),
      handleCommands({
        'zoom-in': () => made.zoom(1.25),
        'zoom-out': () => made.zoom(0.8),
        'zoom-fit': () => made.fit(),
      }),
      () => made.destroy(),
    ];
    return () => {
      for (const each of forget) each();
      surface.current = null;
    };
  }, []);

  const onKey = (event: React.KeyboardEvent) => {
    const { open, settings, under } = studio.getState();
    if (!open || !surface.current) return;
    const at = cursor.current ?? under ?? startOf(open);
    const moved = movedBy(event, at, open);
    if (moved) {
      cursor.current = moved;
      surface.current.reveal(moved);
      hand.hover(moved);
      if (isPressed()) hand.move([moved]);
      setSpoken(spokenCell(open, moved));
    } else if ((event.key === ' ' || event.key === 'Enter') && !event.repeat) {
      cursor.current = at;
      hand.hover(at);
      if (isPressed()) hand.release();
      else hand.press(at);
      // A freehand knot is one cell; a shape waits for its other end.
      if (isPressed() && (tool === 'knot' || tool === 'unpick')) hand.release();
      setSpoken(`${isPressed() ? 'From here. ' : ''}${spokenCell(studio.getState().open!, at)}`);
    } else if (event.key === 'Escape' && isPressed()) {
      hand.drop();
      setSpoken('Dropped.');
    } else if (settings.letterKeys && !event.ctrlKey && !event.metaKey && !event.altKey) {
      const command = (commands as readonly Command[]).find(
        (each) => each.letter === event.key.toLowerCase(),
      );
      if (!command || !runCommand(command.id as (typeof commands)[number]['id'])) return;
    } else return;
    event.preventDefault();
  };

  return (
    <section className="chart-view" aria-label="Chart">
      <div
        ref={room}
        className={`room tool-${tool}`}
        role="application"
        // The chart is drawn on and moved in by keys, so it takes the focus.
        tabIndex={0}
        aria-label={`Chart of ${columns} cords and ${rows} rows. Arrow keys move, Space uses the tool.`}
        onKeyDown={onKey}
        onPointerDown={() => {
          cursor.current = null;
          room.current?.focus({ preventScroll: true });
        }}
      />
      <div ref={outline} className="cell-outline" hidden />
      <p className="unseen" aria-live="polite">
        {spoken}
      </p>
    </section>
  );
}

function placeOutline(surface: Surface, element: HTMLElement): void {
  const { under } = studio.getState();
  element.hidden = under === null;
  if (!under) return;
  const { x, y, width, height } = surface.placeOf(under);
  element.style.transform = `translate(${x}px, ${y}px)`;
  element.style.width = `${width}px`;
  element.style.height = `${height}px`;
}

/** Row 1 begins in the start corner, and so does the cell cursor. */
function startOf({ design }: OpenDesign): Cell {
  return { row: 0, column: goesRight(design.startCorner, 0) ? 0 : design.columns - 1 };
}

/** Where a key takes the cell cursor; null where it is no key of the cursor. */
function movedBy(event: React.KeyboardEvent, { row, column }: Cell, { design }: OpenDesign): Cell | null {
  const by = event.ctrlKey || event.metaKey || event.shiftKey ? 10 : 1;
  const ways: Record<string, [number, number]> = {
    ArrowLeft: [0, -by],
    ArrowRight: [0, by],
    ArrowUp: [-by, 0],
    ArrowDown: [by, 0],
    PageUp: [-10, 0],
    PageDown: [10, 0],
    Home: [0, -design.columns],
    End: [0, design.columns],
  };
  const way = ways[event.key];
  if (!way) return null;
  const within = (value: number, most: number) => Math.min(most - 1, Math.max(0, value));
  return { row: within(row + way[0], design.rows), column: within(column + way[1], design.columns) };
}

function spokenCell({ design, chart }: OpenDesign, { row, column }: Cell): string {
  const name = nameOfCode(design, chart.cells[row * chart.columns + column]!);
  return `Row ${row + 1}, cord ${column + 1}, ${name}`;
}
