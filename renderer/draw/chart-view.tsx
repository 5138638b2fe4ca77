/**
 * The hanging on screen. React only mounts the surface; the cell outline is moved by hand. By keys: arrows move a
 * cell cursor, or what was chosen with Patch; Space or Enter uses the tool, Escape drops what was begun. While the
 * pointer is in use, Space moves the view with it instead.
 */
import type Konva from 'konva';
import { useEffect, useId, useRef, useState } from 'react';
import { Stage } from 'react-konva';
import { isChosen } from '../../shared/chart/patch/mask.ts';
import type { Cell } from '../../shared/chart/tools/cell.ts';
import { type Command, type CommandId, commands } from '../../shared/commands.ts';
import { counted } from '../../shared/units/counted.ts';
import { aboutHost } from '../host.ts';
import { handleCommands, runCommand } from '../shell/command-bus.ts';
import { endStroke } from '../store/changing.ts';
import type { StudioState } from '../store/state.ts';
import { studio } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';
import { type Hand, listenToGestures } from '../surface/gestures.ts';
import { Surface } from '../surface/surface.ts';
import { movedBy, spokenCell, startOf, stepOf } from './chart-cursor.ts';
import { followCells } from './go-to-cell.ts';
import { hand, hasTwoEnds, isPressed } from './hand/hand.ts';
import { dropLifted, liftedNow } from './hand/lifting.ts';
import { whyNotDraw } from './hand/why-not-draw.ts';
import { ChartHandles } from './handles.tsx';
import { nudgePatch } from './patch/patch-deeds.tsx';
import { RowUnder } from './rows-text/row-under.tsx';

export function ChartView() {
  const room = useRef<HTMLDivElement>(null);
  const stage = useRef<Konva.Stage>(null);
  const outline = useRef<HTMLDivElement>(null);
  const surface = useRef<Surface | null>(null);
  /** The cell cursor; null while the pointer is in use. */
  const cursor = useRef<Cell | null>(null);
  const [spoken, setSpoken] = useState('');
  const rowUnder = useId();
  /** The surface as what lies over it needs it: null until it is mounted. */
  const [shown, setShown] = useState<Surface | null>(null);
  const columns = useStudio((state) => state.open?.design.columns);
  const rows = useStudio((state) => state.open?.design.rows);

  useEffect(() => {
    const made = new Surface(room.current!, stage.current!, () => {
      if (surface.current) placeOutline(surface.current, outline.current!);
    });
    surface.current = made;
    setShown(made);
    room.current!.focus({ preventScroll: true });
    room.current!.dataset.hand = handSays(studio.getState());
    /** While keys are used, a pointer that only rests there does not take the cell cursor away. */
    const pointerHand: Hand = {
      ...hand,
      hover: (cell: Cell | null) => {
        if (!cursor.current) hand.hover(cell);
      },
    };
    const forget = [
      listenToMoves(room.current!, () => {
        cursor.current = null;
      }),
      listenToGestures(room.current!, made, pointerHand, aboutHost().platform === 'mac'),
      studio.subscribe((state, before) => {
        if (state.under !== before.under) placeOutline(made, outline.current!);
        // What was begun with one tool is not gone on with by another.
        if (state.tool !== before.tool && isPressed()) hand.release();
        const says = handSays(state);
        if (room.current && room.current.dataset.hand !== says) room.current.dataset.hand = says;
      }),
      handleCommands({
        'zoom-in': () => made.zoom(1.25),
        'zoom-out': () => made.zoom(0.8),
        'zoom-fit': () => made.fit(),
        'zoom-chart': () => made.fitChart(),
        'go-chart': () => room.current?.focus({ preventScroll: true }),
        'zoom-real': () => made.zoomToReal(),
      }),
      followCells((cell) => {
        room.current!.focus({ preventScroll: true });
        cursor.current = cell;
        made.reveal(cell);
        hand.hover(cell);
        setSpoken(spokenCell(studio.getState().open!, cell));
      }),
      () => hand.release(),
      endStroke,
      () => made.destroy(),
    ];
    return () => {
      for (const each of forget) each();
      surface.current = null;
      setShown(null);
    };
  }, []);

  const onKey = (event: React.KeyboardEvent) => {
    const { open, settings, under } = studio.getState();
    if (!open || !surface.current) return;
    const at = cursor.current ?? under ?? startOf(open);
    const moved = movedBy(event, at, open);
    const content = contentCommand(event);
    if (content) {
      runCommand(content);
    } else if (isPatchKey(event)) {
      setSpoken(doPatchKey(event));
    } else if (moved) {
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
    } else if (isNativeKey(event)) {
      runCommand(nativeKeys[event.key.toLowerCase()]!);
    } else if (settings.letterKeys && !event.ctrlKey && !event.metaKey && !event.altKey) {
      const command = commands.find(
        (each: Command) => each.needs === 'draw' && each.letter === event.key.toLowerCase(),
      );
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
    if (isBegun || !hasTwoEnds()) hand.release();
    setSpoken(`${isPressed() ? 'From here. ' : ''}${spokenCell(studio.getState().open!, at)}`);
  };

  /** Reached by keys, the chart shows its cursor at once. */
  const onFocus = () => {
    const { open, under } = studio.getState();
    if (!open || !room.current?.matches(':focus-visible')) return;
    cursor.current ??= under ?? startOf(open);
    hand.hover(cursor.current);
    setSpoken(spokenCell(open, cursor.current));
  };

  return (
    <section className="chart-view" aria-label="Chart">
      <div
        ref={room}
        className="room"
        role="application"
        // The chart is drawn on and moved in by keys, so it takes the focus.
        tabIndex={0}
        aria-label={`Chart of ${counted(columns ?? 0, 'cord')} and ${counted(rows ?? 0, 'row')}. Arrow keys move, Space uses the tool.`}
        aria-describedby={rowUnder}
        onFocus={onFocus}
        onKeyDown={onKey}
        onPointerDown={() => {
          room.current?.focus({ preventScroll: true });
          cursor.current = null;
        }}
        onContextMenu={(event) => event.preventDefault()}
      >
        <Stage ref={stage} width={1} height={1} listening={false} />
      </div>
      <div ref={outline} className="cell-outline" hidden />
      {shown && <ChartHandles surface={shown} />}
      <RowUnder id={rowUnder} />
      <p className="unseen" aria-live="polite">
        {spoken}
      </p>
    </section>
  );
}

/** What the pointer's picture says will happen; the style sheet has a cursor for each. */
function handSays({ open, tool, patch, under }: StudioState): string {
  if (!open) return '';
  if (tool === 'patch') return patch && under && isChosen(patch.mask, under) ? 'move' : 'choose';
  if (tool === 'match') return 'match';
  if (whyNotDraw(open)) return 'no-draw';
  return tool;
}

/** With Alt the arrows move the cells of the layer drawn on, by ten with Shift. */
function contentCommand({ key, altKey, shiftKey }: React.KeyboardEvent): CommandId | null {
  const way = contentWays[key];
  if (!altKey || !way) return null;
  return shiftKey ? `content-${way}-ten` : `content-${way}`;
}

const contentWays: Readonly<Record<string, 'left' | 'right' | 'up' | 'down'>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

/** Keys that belong to the chosen patch, or to what is in the air. */
function isPatchKey(event: React.KeyboardEvent): boolean {
  const { tool, patch } = studio.getState();
  if (isPressed() || !patch) return false;
  if (event.key === 'Delete' || event.key === 'Backspace') return true;
  if (!liftedNow() && tool !== 'patch') return false;
  return stepOf(event) !== null || event.key === 'Escape' || event.key === 'Enter';
}

/** Does what the key says, and gives the words for it. */
function doPatchKey(event: React.KeyboardEvent): string {
  const step = stepOf(event);
  if (step) {
    nudgePatch(...step);
    const bounds = studio.getState().patch?.mask.bounds;
    return bounds
      ? `Patch at row ${bounds.top + 1}, cord ${bounds.left + 1}`
      : 'The patch is outside the chart';
  }
  if (event.key === 'Enter') {
    endStroke();
    studio.setState({ patch: null });
    return 'Tied down.';
  }
  if (event.key === 'Escape') {
    if (liftedNow()) dropLifted();
    else studio.setState({ patch: null });
    return 'Let go.';
  }
  runCommand('unpick-patch');
  return 'Patch unpicked.';
}

/** Keys that the platform has for text, and that mean cells while the chart has the focus. */
const nativeKeys: Readonly<Record<string, 'cut' | 'copy' | 'choose-all'>> = {
  x: 'cut',
  c: 'copy',
  a: 'choose-all',
};

function isNativeKey(event: React.KeyboardEvent): boolean {
  const isMod = aboutHost().platform === 'mac' ? event.metaKey : event.ctrlKey;
  return isMod && !event.shiftKey && !event.altKey && Object.hasOwn(nativeKeys, event.key.toLowerCase());
}

/** Tells that the pointer is in use. Some browsers report a move where only the page moved under a resting one. */
function listenToMoves(element: HTMLElement, moved: () => void): () => void {
  const onMove = (event: PointerEvent) => {
    if (event.movementX !== 0 || event.movementY !== 0) moved();
  };
  element.addEventListener('pointermove', onMove);
  return () => element.removeEventListener('pointermove', onMove);
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
