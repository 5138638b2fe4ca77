/**
 * Entries taken to another place of their list by mouse, pen or finger. The place is shown while the pointer moves, the
 * list scrolls where it is dragged beyond its edge, and Escape leaves all as it was. A finger takes an entry by its
 * grip; elsewhere it scrolls the list.
 */
import { type PointerEvent as ReactPointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import './list-drag.css';

interface Dragged<Id extends string> {
  readonly id: Id;
  /** Entries above the place where this one would be put, as the list is shown: 0 is the top. */
  readonly gap: number;
}

/** Pointer travel below this is a click, in CSS pixels. */
const clickPx = 5;
const edgePx = 18;
const scrollPx = 5;

interface ListDrag<Id extends string> {
  /** Classes of the entry that is shown at a place, from 0 at the top, of a list of `count`. */
  readonly markOf: (id: Id, shownAt: number, count: number) => string;
  readonly press: (event: ReactPointerEvent, id: Id) => void;
  /** True for the click that a drag ends with, which is none. */
  readonly isDragEnd: () => boolean;
}

/**
 * `drop` is told the entry, and how many entries stood above the place where it was let go. The list's entries are its
 * `li`; `grip` selects the part of one that a finger can take.
 */
export function useListDrag<Id extends string>(
  list: RefObject<HTMLElement | null>,
  grip: string,
  drop: (id: Id, gap: number) => void,
): ListDrag<Id> {
  const [dragged, setDragged] = useState<Dragged<Id> | null>(null);
  const ended = useRef(false);
  const stop = useRef<() => void>(() => {});
  useEffect(() => () => stop.current(), []);

  const press = (event: ReactPointerEvent, id: Id) => {
    const byFinger = event.pointerType === 'touch';
    const onGrip = event.target instanceof Element && event.target.closest(grip) !== null;
    if (event.button !== 0 || !event.isPrimary || (byFinger && !onGrip)) return;
    stop.current();
    const listening = new AbortController();
    const start = event.clientY;
    let pointerY = start;
    let gap: number | null = null;
    let frame = 0;

    const follow = () => {
      const element = list.current;
      if (!element) return;
      scrollAtEdge(element, pointerY);
      gap = gapAt(element, pointerY);
      setDragged({ id, gap });
      frame = requestAnimationFrame(follow);
    };
    const end = () => {
      stop.current = () => {};
      listening.abort();
      cancelAnimationFrame(frame);
      setDragged(null);
      if (gap === null) return;
      ended.current = true;
      // The click, if there is one, comes before any timer.
      setTimeout(() => {
        ended.current = false;
      });
    };
    stop.current = end;
    const { signal } = listening;
    const isOurs = (other: PointerEvent) => other.pointerId === event.pointerId;
    window.addEventListener(
      'pointermove',
      (moved) => {
        if (!isOurs(moved)) return;
        pointerY = moved.clientY;
        if (gap === null && Math.abs(pointerY - start) >= clickPx) follow();
      },
      { signal },
    );
    window.addEventListener(
      'pointerup',
      (released) => {
        if (!isOurs(released)) return;
        const place = gap;
        end();
        if (place !== null) drop(id, place);
      },
      { signal },
    );
    window.addEventListener('pointercancel', (lost) => isOurs(lost) && end(), { signal });
    window.addEventListener(
      'keydown',
      (key) => {
        if (key.key !== 'Escape' || gap === null) return;
        key.preventDefault();
        key.stopPropagation();
        end();
      },
      { signal, capture: true },
    );
  };

  return {
    markOf: (id, shownAt, count) => (dragged ? markOf(dragged, id, shownAt, count) : ''),
    press,
    isDragEnd: () => ended.current,
  };
}

function markOf({ id, gap }: Dragged<string>, entry: string, shownAt: number, count: number): string {
  const mark = gap === shownAt ? ' drop-above' : gap === count && shownAt === count - 1 ? ' drop-below' : '';
  return id === entry ? `${mark} dragged` : mark;
}

function scrollAtEdge(list: HTMLElement, pointerY: number): void {
  const { top, bottom } = list.getBoundingClientRect();
  if (pointerY < top + edgePx) list.scrollTop -= scrollPx;
  else if (pointerY > bottom - edgePx) list.scrollTop += scrollPx;
}

function gapAt(list: HTMLElement, pointerY: number): number {
  const rows = [...list.querySelectorAll(':scope > li')];
  return rows.filter((row) => {
    const { top, height } = row.getBoundingClientRect();
    return top + height / 2 < pointerY;
  }).length;
}
