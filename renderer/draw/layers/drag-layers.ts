/**
 * Layers taken to another place of the list by mouse, pen or finger. The place is shown while the pointer moves, the
 * list scrolls where it is dragged beyond its edge, and Escape leaves all as it was. A finger takes a layer by its
 * thumbnail; elsewhere it scrolls the list.
 */
import { type PointerEvent as ReactPointerEvent, type RefObject, useEffect, useRef, useState } from 'react';

export interface Dragged {
  readonly layer: string;
  /** Rows of the list above the place where the layer would be put, as the list is shown: 0 is the top. */
  readonly gap: number;
}

/** Pointer travel below this is a click, in CSS pixels. */
const clickPx = 5;
const edgePx = 18;
const scrollPx = 5;

interface LayerDrag {
  /** Null where nothing is dragged. */
  readonly dragged: Dragged | null;
  readonly press: (event: ReactPointerEvent, layer: string) => void;
  /** True for the click that a drag ends with, which is none. */
  readonly isDragEnd: () => boolean;
}

/** `drop` is told the layer, and the gap of the list that it was let go in. The list's rows are its `li`. */
export function useLayerDrag(
  list: RefObject<HTMLElement | null>,
  drop: (layer: string, gap: number) => void,
): LayerDrag {
  const [dragged, setDragged] = useState<Dragged | null>(null);
  const ended = useRef(false);
  const stop = useRef<() => void>(() => {});
  useEffect(() => () => stop.current(), []);

  const press = (event: ReactPointerEvent, layer: string) => {
    const byFinger = event.pointerType === 'touch';
    const onThumbnail = event.target instanceof Element && event.target.closest('.layer-thumbnail') !== null;
    if (event.button !== 0 || !event.isPrimary || (byFinger && !onThumbnail)) return;
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
      setDragged({ layer, gap });
      frame = requestAnimationFrame(follow);
    };
    const end = () => {
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
        if (place !== null) drop(layer, place);
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

  return { dragged, press, isDragEnd: () => ended.current };
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
