/**
 * The keyboard of a row of buttons, by the toolbar pattern of the WAI-ARIA Authoring Practices
 * (https://www.w3.org/WAI/ARIA/apg/patterns/toolbar/): Tab reaches the row once, at the one that is pressed or was used last;
 * left and right go from button to button and round, Home and End to the first and last.
 */
import { type KeyboardEvent, type RefObject, useEffect, useRef } from 'react';

interface ToolbarProps<Row extends HTMLElement> {
  readonly ref: RefObject<Row | null>;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onFocus: () => void;
}

/** To be spread over the element that holds the buttons, which has the role `toolbar`. */
export function useToolbar<Row extends HTMLElement>(): ToolbarProps<Row> {
  const ref = useRef<Row>(null);
  /** Buttons come and go and are disabled: after each drawing exactly one that works is reached with Tab. */
  useEffect(() => keepOneStop(ref.current));
  return {
    ref,
    onFocus: () => keepOneStop(ref.current),
    onKeyDown: (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
      const buttons = buttonsIn(ref.current);
      const here = buttons.findIndex((each) => each.matches(':focus'));
      const next = nextAt(event.key, here, buttons.length);
      if (here < 0 || next === null) return;
      event.preventDefault();
      buttons[next]?.focus();
    },
  };
}

function nextAt(key: string, here: number, count: number): number | null {
  const places: Readonly<Record<string, number>> = {
    ArrowRight: (here + 1) % count,
    ArrowLeft: (here + count - 1) % count,
    Home: 0,
    End: count - 1,
  };
  return places[key] ?? null;
}

function buttonsIn(row: HTMLElement | null): HTMLButtonElement[] {
  return [...(row?.querySelectorAll<HTMLButtonElement>('button:not(:disabled)') ?? [])];
}

function keepOneStop(row: HTMLElement | null): void {
  const buttons = buttonsIn(row);
  const stop =
    buttons.find((each) => each === document.activeElement) ??
    buttons.find((each) => each.getAttribute('aria-pressed') === 'true') ??
    buttons.find((each) => each.getAttribute('tabindex') === '0') ??
    buttons[0];
  for (const button of buttons) button.tabIndex = button === stop ? 0 : -1;
}
