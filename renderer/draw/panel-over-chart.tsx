/**
 * A small panel over the chart's corner. It keeps no focus: the chart beside it stays in use. Escape puts it away, from
 * inside it, from the handles beside it, and where nothing has the focus.
 */
import { type ReactNode, useEffect, useRef } from 'react';
import { isAsking } from '../shell/dialogs.tsx';
import { closeChartPanel } from './chart-panel.ts';

interface PanelProps {
  readonly title: string;
  /** Called when a field or a group of radios is left, and before a key with Ctrl or Enter: what stands there is meant. */
  readonly onLeaveField: () => void;
  readonly children: ReactNode;
}

export function PanelOverChart({ title, onLeaveField, children }: PanelProps) {
  const panel = useRef<HTMLElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    const first = (which: string) => panel.current?.querySelector<HTMLElement>(which);
    (first('input:checked') ?? first('input, button.main'))?.focus();
    return () => {
      // What had the focus gets it back, unless the person has gone elsewhere meanwhile.
      const isIdle = document.activeElement === document.body;
      if (isIdle && before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented || isAsking()) return;
      const at = document.activeElement;
      if (at !== document.body && !panel.current?.parentElement?.contains(at)) return;
      event.preventDefault();
      closeChartPanel();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
  return (
    <section
      ref={panel}
      className="chart-panel"
      aria-label={title}
      onBlur={({ target, relatedTarget }) => {
        if (!isOtherRadio(target, relatedTarget)) onLeaveField();
      }}
      onKeyDown={(event) => {
        const isEnter = event.key === 'Enter' && event.target instanceof HTMLInputElement;
        // Undo, Save and the like find kept what is shown.
        if (isEnter || event.ctrlKey || event.metaKey) onLeaveField();
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        closeChartPanel();
      }}
    >
      <header>
        <h3>{title}</h3>
        <button type="button" className="plain" onClick={closeChartPanel}>
          Done
        </button>
      </header>
      {children}
    </section>
  );
}

/** Whether the focus only moves from one radio to another of its group. */
function isOtherRadio(from: EventTarget, to: EventTarget | null): boolean {
  const isRadio = (element: EventTarget | null) =>
    element instanceof HTMLInputElement && element.type === 'radio';
  return isRadio(from) && isRadio(to) && (from as HTMLInputElement).name === (to as HTMLInputElement).name;
}
