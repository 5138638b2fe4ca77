/**
 * The whole chart as text, row by row, to be walked through by a screen reader or read large. Some rows at a time: a
 * list of thousands would be slow to walk through and to draw.
 */
import { useEffect, useRef, useState } from 'react';
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import { ask } from '../../shell/dialogs.tsx';
import { endStroke } from '../../store/changing.ts';
import { studio } from '../../store/studio.ts';
import { startOf } from '../chart-cursor.ts';
import { goToCell } from '../go-to-cell.ts';
import { FigureField } from '../options/figure-field.tsx';
import { rowsInWords } from './row-words.ts';
import './rows-text.css';

/** Rows on a page. */
const perPage = 40;

export async function readRowsAsText(): Promise<void> {
  endStroke();
  const { open, under } = studio.getState();
  if (!open) return;
  const row = await ask<number>({
    label: 'Rows as text',
    wide: true,
    body: (answer) => (
      <RowsSheet chart={open.chart} yarns={open.design.yarns} from={under?.row ?? 0} answer={answer} />
    ),
  });
  if (row !== null) goToCell({ row, column: under?.column ?? startOf(open).column });
}

interface RowsProps {
  readonly chart: Chart;
  readonly yarns: readonly Yarn[];
  /** The row that is shown first, from 0. */
  readonly from: number;
  readonly answer: (row: number) => void;
}

function RowsSheet({ chart, yarns, from, answer }: RowsProps) {
  const [row, setRow] = useState(from);
  const list = useRef<HTMLOListElement>(null);
  const first = Math.floor(row / perPage) * perPage;
  const last = Math.min(chart.rows, first + perPage);
  const turnTo = (next: number) => setRow(Math.min(chart.rows - 1, Math.max(0, next)));
  useEffect(() => {
    list.current?.children[row - first]?.scrollIntoView({ block: 'nearest' });
  }, [row, first]);
  /** Of all the rows' buttons only that of the current row is reached with Tab; arrows lead to the others. */
  const onKey = (event: React.KeyboardEvent) => {
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (!step) return;
    event.preventDefault();
    turnTo(row + step);
    // The row that is current now is drawn a moment later.
    requestAnimationFrame(() => list.current?.querySelector<HTMLElement>('[tabindex="0"]')?.focus());
  };

  return (
    <div className="sheet rows-text">
      <h2>Rows as text</h2>
      <div className="rows-pages">
        <FigureField label="Row" value={row + 1} min={1} max={chart.rows} onChange={(n) => turnTo(n - 1)} />
        <button type="button" data-first onClick={() => answer(row)}>
          Go to row {row + 1} on the chart
        </button>
        <span className="spring" />
        <button type="button" aria-disabled={first === 0} onClick={() => turnTo(first - perPage)}>
          Rows before
        </button>
        <button type="button" aria-disabled={last === chart.rows} onClick={() => turnTo(last)}>
          Rows after
        </button>
      </div>
      <p role="status" className="quiet">
        Rows {first + 1} to {last} of {chart.rows}. The yarn’s cords stand in brackets, in the order in which
        they are tied; lift these cords before the row is tied.
      </p>
      <ol ref={list} start={first + 1} aria-label={`Rows ${first + 1} to ${last}`} onKeyDown={onKey}>
        {numbered(rowsInWords(chart, yarns, first, perPage), first).map(({ at, words }) => (
          <li key={at} aria-current={at === row || undefined}>
            <span>{words}</span>
            <button
              type="button"
              className="plain"
              tabIndex={at === row ? 0 : -1}
              aria-label={`Go to row ${at + 1}`}
              onClick={() => answer(at)}
            >
              Go to
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}

function numbered(rows: readonly string[], first: number): { at: number; words: string }[] {
  return rows.map((words, i) => ({ at: first + i, words }));
}
