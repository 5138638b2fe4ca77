/**
 * The hanging on screen. React only mounts the surface; the cell outline is moved by hand. By keys: arrows move a
 * cell cursor, Space or Enter uses the tool there, Escape drops what was begun. While the pointer is in use, Space
 * moves the view with it instead.
 */
import type Konva from 'konva';
import { useEffect, useRef, useState } from 'react';
import { Stage } from 'react-konva';
import { goesRight } from '../../shared/chart/chart.ts';
import type { Cell } from '../../shared/chart/tools/cell.ts';
import { type Command, commands } from '../../shared/commands.ts';
import { handleCommands, runCommand } from '../shell/command-bus.ts';
import type { OpenDesign } from '../store/state.ts';
import { studio } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';
import { listenToGestures } from '../surface/gestures.ts';
import { Surface } from '../surface/surface.ts';
import { nameOfCode } from './code-names.ts';
import { hand, hasTwoEnds, isPressed } from './hand.ts';

export function ChartView() {
  const room = useRef<HTMLDivElement>(null);
  const stage = useRef<Konva.Stage>(null);
  const outline = useRef<HTMLDivElement>(null);
  const surface = useRef<Surface | null>(null);
  /** The cell cursor; null while the pointer is in use. */
  const cursor = useRef<Cell | null>(null);
  const [spoken, setSpoken] = useState('');
  const columns = useStudio((state) => state.open?.design.columns);
  const rows = useStudio((state) => state.open?.design.rows);
  const tool = useStudio((state) => state.tool);

  useEffect(() => {
    const made = new Surface(room.current!, stage.current!, () => {
      if (surface.current) placeOutline(surface.current, outline.current!);
    });
    surface.current = made;
    room.current!.focus({ preventScroll: true });
    const forget = [
      listenToGestures(room.current!, made, hand),
      studio.subscribe((state, before) => {
        if (state.under !== before.under) placeOutline(made, outline.current!);
        // What was begun with one tool is not ended with another.
        if (state.tool !== before.tool && isPressed()) hand.drop();
      }),
      handleCommands({
        'zoom-in': () => made.zoom(1.25),
        'zoom-out': () => made.zoom(0.8),
        'zoom-fit': () => made.fit(),
      }),
      () => hand.drop(),
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
    } else if (event.key === 'Enter' || (event.key === ' ' && (cursor.current || !under))) {
      if (!event.repeat) applyTool(at);
    } else if (event.key === 'Escape' && isPressed()) {
      hand.drop();
      setSpoken('Dropped.');
    } else if (settings.letterKeys && !event.ctrlKey && !event.metaKey && !event.altKey) {
      const command = commands.find((each: Command) => each.letter === event.key.toLowerCase());
      if (!command || !runCommand(command.id)) return;
    } else return;
    event.preventDefault();
  };

  const applyTool = (at: Cell) => {
    cursor.current = at;
    hand.hover(at);
    const isBegun = isPressed();
    if (!isBegun) hand.press(at);
    // A line waits for its other end; all else is done at once.
    if (isBegun || !hasTwoEnds(tool)) hand.release();
    setSpoken(`${isPressed() ? 'From here. ' : ''}${spokenCell(studio.getState().open!, at)}`);
  };

  /** Reached by keys, the chart shows its cursor at once. */
  const onFocus = () => {
    const { open, under } = studio.getState();
    if (!open || !room.current?.matches(':focus-visible')) return;
    cursor.current = under ?? startOf(open);
    hand.hover(cursor.current);
    setSpoken(spokenCell(open, cursor.current));
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
        onFocus={onFocus}
        onKeyDown={onKey}
        onPointerMove={(event) => {
          // Some browsers report a move where only the page moved under a resting pointer.
          if (event.movementX !== 0 || event.movementY !== 0) cursor.current = null;
        }}
        onPointerDown={() => {
          room.current?.focus({ preventScroll: true });
          cursor.current = null;
        }}
        onContextMenu={(event) => event.preventDefault()}
      >
        <Stage ref={stage} width={1} height={1} listening={false} />
      </div>
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
