/** A handle on the chart that is moved along one line: dragged by the pointer, or stepped by keys. */
import { useRef } from 'react';

/** In CSS pixels of the chart's view. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

interface HandleProps {
  readonly label: string;
  readonly at: Point;
  readonly isUpright: boolean;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** The value as a person says it. */
  readonly valueText: string;
  /** By keys: steps to the right or down, negative to the left or up; ten with Shift. */
  readonly onStep: (steps: number) => void;
  readonly onDrag: (to: Point) => void;
  readonly onDrop?: () => void;
}

const keySteps: Record<string, number> = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 };

export function Handle(props: HandleProps) {
  const { label, at, isUpright, value, min, max, valueText } = props;
  /** From the pointer to the handle's middle while it is dragged, so that it does not jump. */
  const held = useRef<Point | null>(null);
  const pointer = (event: React.PointerEvent): Point => {
    const bounds = event.currentTarget.parentElement!.getBoundingClientRect();
    return { x: event.clientX - bounds.left, y: event.clientY - bounds.top };
  };
  const end = () => {
    if (held.current) props.onDrop?.();
    held.current = null;
  };
  return (
    <div
      className={`handle ${isUpright ? 'upright' : 'level'}`}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-orientation={isUpright ? 'vertical' : 'horizontal'}
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuenow={value}
      aria-valuetext={valueText}
      title={`${label}: ${valueText}`}
      style={{ transform: `translate(${Math.round(at.x)}px, ${Math.round(at.y)}px)` }}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        const { x, y } = pointer(event);
        held.current = { x: at.x - x, y: at.y - y };
      }}
      onPointerMove={(event) => {
        if (!held.current) return;
        const { x, y } = pointer(event);
        props.onDrag({ x: x + held.current.x, y: y + held.current.y });
      }}
      onPointerUp={end}
      onPointerCancel={end}
      onKeyDown={(event) => {
        const step = keySteps[event.key];
        if (!step || event.ctrlKey || event.metaKey || event.altKey) return;
        event.preventDefault();
        props.onStep(event.shiftKey ? 10 * step : step);
      }}
    />
  );
}
