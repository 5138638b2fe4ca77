/**
 * The fringe drawn by hand: drag over the cord ends, and each cord is as long as the hand is low over it. By keys, left
 * and right choose a cord, down lengthens it and up shortens it, as its end moves.
 */
import { useEffect, useRef, useState } from 'react';
import { fringeByHand, fringeMm } from '../../../shared/gauge/fringe.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { studio } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import { moveByWheel } from '../../surface/gestures.ts';
import type { Surface } from '../../surface/surface.ts';
import { drawnLengths, type HandPlace } from './drawn-lengths.ts';
import { dropFringe, keepFringe, setFringe, shownFringe, tryFringe } from './fringe-deeds.ts';
import { longestFringeMm, soundLength } from './fringe-ends.ts';
import { keyStepMm } from './key-step.ts';

/** How far beside the outer cords a hand may begin, in CSS pixels. */
const besidePx = 24;

export function ByHand({ surface }: { surface: Surface }) {
  const fringe = useStudio(shownFringe)!;
  const columns = useStudio((state) => state.open?.design.columns ?? 1);
  const units = useStudio((state) => state.settings.units);
  const [chosen, setChosen] = useState(0);
  const area = useRef<HTMLDivElement>(null);
  /** Null while no pointer draws. */
  const hand = useRef<HandPlace | null>(null);
  const lengths = fringeMm(columns, fringe);
  const cord = Math.min(chosen, columns - 1);
  const { pitchMm, widthMm, heightMm } = surface.geometry;
  const left = surface.pointOf({ x: 0, y: heightMm });
  const right = surface.pointOf({ x: widthMm, y: heightMm });
  const end = surface.pointOf({ x: (cord + 0.5) * pitchMm, y: heightMm + lengths[cord]! });

  useEffect(() => {
    const element = area.current!;
    const onWheel = (event: WheelEvent) => {
      const bounds = element.parentElement!.getBoundingClientRect();
      moveByWheel(surface, event, { x: event.clientX - bounds.left, y: event.clientY - bounds.top });
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [surface]);

  const placeOf = ({ clientX, clientY }: { clientX: number; clientY: number }): HandPlace => {
    const bounds = area.current!.parentElement!.getBoundingClientRect();
    const { x, y } = surface.mmAt({ x: clientX - bounds.left, y: clientY - bounds.top });
    return { cord: Math.floor(x / pitchMm), mm: y - heightMm };
  };
  const drawTo = (places: readonly HandPlace[]) => {
    const now = shownFringe(studio.getState());
    if (!now || !hand.current) return;
    let drawn = fringeMm(columns, now);
    for (const place of places) {
      drawn = drawnLengths(drawn, hand.current, place);
      hand.current = place;
    }
    setChosen(Math.min(columns - 1, Math.max(0, hand.current.cord)));
    tryFringe(fringeByHand(drawn));
  };

  const onKey = (event: React.KeyboardEvent) => {
    const by = event.shiftKey ? 10 : 1;
    const way = { ArrowLeft: -by, ArrowRight: by, Home: -columns, End: columns }[event.key];
    const longer = { ArrowDown: by, ArrowUp: -by }[event.key];
    if (event.ctrlKey || event.metaKey || event.altKey || (way === undefined && longer === undefined)) return;
    event.preventDefault();
    if (way !== undefined) setChosen(Math.min(columns - 1, Math.max(0, cord + way)));
    else if (longer !== undefined) {
      const mm = soundLength(lengths[cord]! + longer * keyStepMm(units));
      setFringe(fringeByHand(lengths.with(cord, mm)));
    }
  };

  return (
    <>
      <div
        ref={area}
        className="fringe-area"
        role="slider"
        tabIndex={0}
        aria-label="Fringe by hand. Left and right choose a cord, down lengthens it, up shortens it"
        aria-orientation="vertical"
        aria-valuemin={0}
        aria-valuemax={longestFringeMm}
        aria-valuenow={Math.round(lengths[cord]!)}
        aria-valuetext={`cord ${cord + 1}, ${formatLength(lengths[cord]!, units)}`}
        style={{
          transform: `translate(${left.x - besidePx}px, ${left.y}px)`,
          width: right.x - left.x + 2 * besidePx,
          height: Math.max(24, surface.screen.height - left.y),
        }}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          // The panel is left before anything is drawn: what was chosen in it is a step of its own, and so is the drag.
          event.currentTarget.focus({ preventScroll: true });
          keepFringe();
          event.currentTarget.setPointerCapture(event.pointerId);
          const place = placeOf(event);
          hand.current = place;
          drawTo([place]);
        }}
        onPointerMove={(event) => {
          if (!hand.current) return;
          const between = event.nativeEvent.getCoalescedEvents();
          drawTo((between.length > 0 ? between : [event]).map(placeOf));
        }}
        onPointerUp={() => {
          hand.current = null;
          keepFringe();
        }}
        onPointerCancel={() => {
          hand.current = null;
          dropFringe();
        }}
        onKeyDown={onKey}
      />
      <div className="cord-end" style={{ transform: `translate(${end.x}px, ${end.y}px)` }} />
    </>
  );
}
