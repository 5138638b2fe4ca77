/**
 * The hanging with its strands over it: looked at, not drawn on. A click chooses the strand of a knot; by keys, arrows
 * move a cell cursor and Space or Enter chooses. React only mounts the surface and the sheet over it.
 */

import type Konva from 'konva';
import { useEffect, useRef, useState } from 'react';
import { Stage } from 'react-konva';
import type { Cell } from '../../shared/chart/tools/cell.ts';
import { type Command, commands } from '../../shared/commands.ts';
import { counted } from '../../shared/units/counted.ts';
import { movedBy, startOf } from '../draw/chart-cursor.ts';
import { nameOfCode } from '../draw/code-names.ts';
import { followCells } from '../draw/go-to-cell.ts';
import { aboutHost } from '../host.ts';
import { handleCommands, runCommand } from '../shell/command-bus.ts';
import { commandById } from '../shell/keys.ts';
import { studio } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';
import { listenToGestures } from '../surface/gestures.ts';
import { Surface } from '../surface/surface.ts';
import { overlayNow } from './overlay/overlay-now.ts';
import { plainly } from './overlay/plainly.ts';
import { PlanSheet } from './overlay/plan-sheet.ts';
import { placeWords } from './panels/place-words.ts';
import { CarryAsks } from './pins/carry-asks.tsx';
import { chooseKnot, dropCarry } from './pins/pin-deeds.ts';
import { letGoOfStrand } from './plan-deeds.ts';
import { PlanViewChoice } from './plan-view-choice.tsx';
import { type Plans, plans, shownPlan } from './plans/plans.ts';
import { tyingPlace } from './plans/tying-place.ts';
import { viewCommands } from './view-commands.ts';

export function PlanChart() {
  const room = useRef<HTMLDivElement>(null);
  const stage = useRef<Konva.Stage>(null);
  const outline = useRef<HTMLDivElement>(null);
  const surface = useRef<Surface | null>(null);
  /** The cell cursor; null while the pointer is in use. */
  const cursor = useRef<Cell | null>(null);
  const [spoken, setSpoken] = useState('');
  const columns = useStudio((state) => state.open?.design.columns);
  const rows = useStudio((state) => state.open?.design.rows);

  useEffect(() => {
    const made = new Surface(
      room.current!,
      stage.current!,
      () => place(surface.current, outline.current),
      plainly,
    );
    const sheet = new PlanSheet(made, stage.current!);
    const show = () => sheet.show(overlayNow(room.current!));
    const goTo = (cell: Cell) => {
      cursor.current = cell;
      made.reveal(cell);
      plans.setState({ under: cell });
      setSpoken(wordsOf(cell));
    };
    const { under } = plans.getState();
    if (under) goTo(under);
    surface.current = made;
    room.current!.focus({ preventScroll: true });
    show();
    const theme = new MutationObserver(show);
    theme.observe(document.documentElement, { attributeFilter: ['data-theme'] });
    const forget = [
      listenToGestures(room.current!, made, hand, aboutHost().platform === 'mac'),
      studio.subscribe(
        (state, before) => (state.open !== before.open || state.views !== before.views) && show(),
      ),
      plans.subscribe((state, before) => {
        if (shownKeys.some((key) => state[key] !== before[key])) show();
        if (state.under !== before.under) place(made, outline.current);
        if (document.activeElement === room.current)
          setSpoken((words) => changeWords(state, before) || words);
      }),
      handleCommands({
        'zoom-in': () => made.zoom(1.25),
        'zoom-out': () => made.zoom(0.8),
        'zoom-fit': () => made.fit(),
        'zoom-chart': () => made.fitChart(),
        'zoom-real': () => made.zoomToReal(),
        'go-chart': () => room.current?.focus({ preventScroll: true }),
      }),
      followCells(goTo),
      () => theme.disconnect(),
      dropCarry,
      () => sheet.destroy(),
      () => made.destroy(),
    ];
    return () => {
      for (const each of forget) each();
      surface.current = null;
    };
  }, []);

  const onKey = (event: React.KeyboardEvent) => {
    const { open, settings } = studio.getState();
    if (!open || !surface.current) return;
    const at = cursor.current ?? plans.getState().under ?? startOf(open);
    const moved = movedBy(event, at, open);
    if (moved) {
      cursor.current = moved;
      surface.current.reveal(moved);
      plans.setState({ under: moved });
      setSpoken(wordsOf(moved));
    } else if (event.key === 'Enter' || (event.key === ' ' && cursor.current)) {
      chooseKnot(at);
    } else if (event.key === 'Escape' && plans.getState().carryFrom) {
      dropCarry();
    } else if (event.key === 'Escape' && plans.getState().chosen) {
      letGoOfStrand();
      setSpoken('Let go.');
    } else if (settings.letterKeys && !event.ctrlKey && !event.metaKey && !event.altKey) {
      const command = commands.find(
        (each: Command) => each.needs === 'plan' && each.letter === event.key.toLowerCase(),
      );
      if (!command || !runCommand(command.id)) return;
    } else return;
    event.preventDefault();
  };

  /** Reached by keys, the chart shows its cursor at once. */
  const onFocus = () => {
    const { open } = studio.getState();
    if (!open || !room.current?.matches(':focus-visible')) return;
    cursor.current = plans.getState().under ?? startOf(open);
    plans.setState({ under: cursor.current });
    setSpoken(wordsOf(cursor.current));
  };

  return (
    <section className="plan-chart" aria-label="Chart with its strands">
      <PlanViewChoice />
      <div className="plan-hanging">
        <div
          ref={room}
          className="room"
          role="application"
          // The chart is moved in by keys, so it takes the focus.
          tabIndex={0}
          aria-label={`Chart of ${counted(columns ?? 0, 'cord')} and ${counted(rows ?? 0, 'row')}. Arrow keys move, Enter chooses the strand of a knot.`}
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
        <CarryAsks />
      </div>
      <p className="unseen" aria-live="polite">
        {spoken}
      </p>
    </section>
  );
}

/** What the sheet over the chart depends on. */
const shownKeys = [
  'quick',
  'full',
  'view',
  'chosen',
  'carryFrom',
  'pinAhead',
  'tied',
  'overMm',
  'rowsBy',
] as const;

const hand = {
  press: chooseKnot,
  move() {},
  release() {},
  drop() {},
  hover(cell: Cell | null) {
    const { open } = studio.getState();
    const isInside =
      open !== null &&
      cell !== null &&
      cell.row >= 0 &&
      cell.column >= 0 &&
      cell.row < open.design.rows &&
      cell.column < open.design.columns;
    const under = isInside ? cell : null;
    const before = plans.getState().under;
    if (under?.row !== before?.row || under?.column !== before?.column) plans.setState({ under });
  },
};

/** What a key has changed that is seen elsewhere on the screen; empty where that is nothing. */
function changeWords(state: Plans, before: Plans): string {
  if (state.view !== before.view) return `Shown: ${commandById(viewCommands[state.view]).label}.`;
  const tables = shownPlan(state)?.tables;
  if (state.tied === before.tied || !tables) return '';
  const all = tables.stretches.knotsBefore[tables.stretches.count]!;
  return placeWords(tables, tyingPlace(tables, state.tied ?? all), all);
}

/** 'Row 12, cord 7, Moss, strand 3, piece 4', and in the view of it '4 strands hang below the row'. */
function wordsOf({ row, column }: Cell): string {
  const { open } = studio.getState();
  if (!open) return '';
  const name = nameOfCode(open.design, open.chart.cells[row * open.chart.columns + column]!);
  const cell = `Row ${row + 1}, cord ${column + 1}, ${name}`;
  const { view } = plans.getState();
  const planned = shownPlan(plans.getState());
  const tables = planned?.tables;
  const live = planned?.rows[row]?.live ?? 0;
  const hanging = view === 'live' ? `, ${counted(live, 'strand hangs', 'strands hang')} below the row` : '';
  const s = tables?.stretchAt[row * open.chart.columns + column] ?? -1;
  if (!tables || s === -1) return cell + hanging;
  const piece = tables.stretches.piece[s]!;
  const strand = tables.pieces.strand[piece]!;
  return `${cell}, strand ${tables.strands.number[strand]}, piece ${tables.pieces.number[piece]}${hanging}`;
}

function place(surface: Surface | null, element: HTMLElement | null): void {
  if (!surface || !element) return;
  const { under } = plans.getState();
  element.hidden = under === null;
  if (!under) return;
  const { x, y, width, height } = surface.placeOf(under);
  element.style.transform = `translate(${x}px, ${y}px)`;
  element.style.width = `${width}px`;
  element.style.height = `${height}px`;
}
