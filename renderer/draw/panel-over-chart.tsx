/** A small panel over the chart's corner. It keeps no focus: the chart beside it stays in use. Escape puts it away. */
import { type ReactNode, useEffect, useRef } from 'react';
import { closeChartPanel } from './chart-panel.ts';

interface PanelProps {
  readonly title: string;
  /** Called when a field is left or Enter is pressed in it: what was written is meant. */
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
  return (
    <section
      ref={panel}
      className="chart-panel"
      aria-label={title}
      onBlur={onLeaveField}
      onKeyDown={(event) => {
        if (event.key === 'Enter' && event.target instanceof HTMLInputElement) onLeaveField();
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
