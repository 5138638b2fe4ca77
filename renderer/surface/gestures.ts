/**
 * Pointer, pen, touch and wheel on the chart. One finger, pen or the main button draws; two fingers, the middle
 * button, or Space with the pointer move and zoom the view; Control (Command) with the wheel zooms at the pointer, as
 * a pinch on a trackpad does; the wheel alone pans.
 */
import type { Cell } from '../../shared/chart/tools/cell.ts';
import type { Surface } from './surface.ts';

/** Keys held while the pointer is used, by what they mean. */
export interface Held {
  /** Shift: lines straight, boxes square, patches added to. */
  readonly shift: boolean;
  /** Takes from the patch. */
  readonly alt: boolean;
  /** The platform's key for dragging a copy: Control, or Option on a Mac. */
  readonly copy: boolean;
}

/** What draws. Cells may lie outside the chart. */
export interface Hand {
  press(cell: Cell, held?: Held): void;
  /** The cells that the pointer has come to, in order; it may have skipped some between them. */
  move(cells: readonly Cell[], held?: Held): void;
  release(): void;
  /** Takes back what was begun. */
  drop(): void;
  /** Null: the pointer has left the chart's element. */
  hover(cell: Cell | null): void;
}

interface Point {
  x: number;
  y: number;
}

function heldIn({ shiftKey, altKey, ctrlKey }: PointerEvent, isMac: boolean): Held {
  return { shift: shiftKey, alt: altKey && !isMac, copy: isMac ? altKey : ctrlKey };
}

/** Pans by the wheel; zooms at a point of the surface, in CSS pixels, while Control or Command is held. */
export function moveByWheel(surface: Surface, event: WheelEvent, at: Point): void {
  event.preventDefault();
  const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
  if (event.ctrlKey || event.metaKey) surface.zoom(1.0022 ** (-event.deltaY * unit), at);
  else if (event.shiftKey && event.deltaX === 0) surface.pan(-event.deltaY * unit, 0);
  else surface.pan(-event.deltaX * unit, -event.deltaY * unit);
}

/** Listens on `element` until the function that is given back is called. */
export function listenToGestures(
  element: HTMLElement,
  surface: Surface,
  hand: Hand,
  isMac = false,
): () => void {
  const fingers = new Map<number, Point>();
  let isDrawing = false;
  let panFrom: Point | null = null;
  let isSpaceDown = false;

  const at = ({ clientX, clientY }: { clientX: number; clientY: number }): Point => {
    const bounds = element.getBoundingClientRect();
    return { x: clientX - bounds.left, y: clientY - bounds.top };
  };
  const cellAt = (event: PointerEvent): Cell => {
    const { x, y } = at(event);
    return surface.cellAt(x, y);
  };

  const down = (event: PointerEvent) => {
    const wantsPan = event.button === 1 || (event.button === 0 && isSpaceDown);
    if (event.button !== 0 && !wantsPan) return;
    element.setPointerCapture(event.pointerId);
    if (event.pointerType === 'touch') fingers.set(event.pointerId, at(event));
    if (fingers.size === 2) {
      if (isDrawing) hand.drop();
      isDrawing = false;
    } else if (wantsPan) {
      event.preventDefault();
      panFrom = at(event);
    } else if (fingers.size <= 1) {
      isDrawing = true;
      hand.press(cellAt(event), heldIn(event, isMac));
    }
  };

  const move = (event: PointerEvent) => {
    if (fingers.has(event.pointerId) && fingers.size === 2) {
      pinch(event);
    } else if (panFrom) {
      const to = at(event);
      surface.pan(to.x - panFrom.x, to.y - panFrom.y);
      panFrom = to;
    } else {
      hand.hover(cellAt(event));
      if (!isDrawing) return;
      const between = event.getCoalescedEvents();
      hand.move((between.length > 0 ? between : [event]).map(cellAt), heldIn(event, isMac));
    }
  };

  const pinch = (event: PointerEvent) => {
    const still = [...fingers].find(([id]) => id !== event.pointerId)![1];
    const before = fingers.get(event.pointerId)!;
    const now = at(event);
    const distance = (point: Point) => Math.max(1, Math.hypot(point.x - still.x, point.y - still.y));
    const middle = { x: (now.x + still.x) / 2, y: (now.y + still.y) / 2 };
    surface.pan((now.x - before.x) / 2, (now.y - before.y) / 2);
    surface.zoom(distance(now) / distance(before), middle);
    fingers.set(event.pointerId, now);
  };

  const up = (event: PointerEvent) => {
    fingers.delete(event.pointerId);
    panFrom = null;
    if (!isDrawing) return;
    isDrawing = false;
    if (event.type === 'pointercancel') hand.drop();
    else hand.release();
  };

  /** A dialog over the chart takes the pointer away without a word: what was drawn is kept. */
  const lose = () => {
    if (isDrawing) hand.release();
    isDrawing = false;
    panFrom = null;
  };

  const leave = () => hand.hover(null);

  const wheel = (event: WheelEvent) => moveByWheel(surface, event, at(event));

  const spaceIs = (isDown: boolean) => {
    isSpaceDown = isDown;
    element.classList.toggle('panning', isDown);
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === ' ') spaceIs(event.type === 'keydown');
  };
  /** A window that lost the focus is not told that the key went up. */
  const blur = () => spaceIs(false);

  const listeners = {
    pointerdown: down,
    pointermove: move,
    pointerup: up,
    pointercancel: up,
    lostpointercapture: lose,
    pointerleave: leave,
  };
  for (const [name, listener] of Object.entries(listeners))
    element.addEventListener(name, listener as EventListener);
  element.addEventListener('wheel', wheel, { passive: false });
  window.addEventListener('keydown', key);
  window.addEventListener('keyup', key);
  window.addEventListener('blur', blur);
  return () => {
    for (const [name, listener] of Object.entries(listeners))
      element.removeEventListener(name, listener as EventListener);
    element.removeEventListener('wheel', wheel);
    window.removeEventListener('keydown', key);
    window.removeEventListener('keyup', key);
    window.removeEventListener('blur', blur);
  };
}
