/**
 * What is marked on the chart: the cells that cause one part of the picture's cost (`views.marks`), or the places where
 * two yarns touch (`marking`), at most one of them at a time; and while tidying is looked at, the cells that it changes
 * instead. It follows the picture while that is drawn.
 */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Chart } from '../../../shared/chart/chart.ts';
import { placesOf, type TouchingPair } from '../../../shared/yarn/touching.ts';
import { type Findings, findings } from '../../planning/findings.ts';
import { changeViews, studio } from '../../store/studio.ts';
import type { Marks } from '../../store/views.ts';
import { onTidying, tidyingNow } from './tidy.ts';

type Pair = Pick<TouchingPair, 'a' | 'b'>;

/** The yarns, by their codes, whose touching places are marked. */
const marking = createStore<{ readonly pair: Pair | null }>(() => ({ pair: null }));

export function useMarkedPair(): Pair | null {
  return useStore(marking, ({ pair }) => pair);
}

/** Marks what causes a part of the cost, or nothing where that is marked already. */
export function toggleMarks(marks: Marks): void {
  const isOn = studio.getState().views.marks === marks;
  marking.setState({ pair: null });
  changeViews({ marks: isOn ? null : marks });
}

/** Marks where two yarns touch, or nothing where that is marked already. */
export function togglePair({ a, b }: Pair): void {
  const { pair } = marking.getState();
  const isOn = pair?.a === a && pair.b === b;
  changeViews({ marks: null });
  marking.setState({ pair: isOn ? null : { a, b } });
}

/** Keeps the marked cells true to what is asked for until the function that is given back is called. */
export function keepMarking(): () => void {
  const mark = () => {
    const { open, views, marked } = studio.getState();
    const asked = () =>
      open && cellsToMark(open.chart, findings.getState(), views.marks, marking.getState().pair);
    const next = tidyingNow()?.cells ?? asked();
    if (next !== marked) studio.setState({ marked: next });
  };
  const forget = [
    findings.subscribe(({ pairs }, before) => {
      const { pair } = marking.getState();
      // The two yarns touch no longer, or can be told apart by now: nothing is left to be shown.
      if (pair && pairs !== before.pairs && !pairs?.some(({ a, b }) => a === pair.a && b === pair.b))
        marking.setState({ pair: null });
      mark();
    }),
    marking.subscribe(mark),
    onTidying(mark),
    studio.subscribe((state, before) => {
      const [now, then] = [state.open?.chart, before.open?.chart];
      const isOtherSize = now?.columns !== then?.columns || now?.rows !== then?.rows;
      const isOtherStroke = state.open?.stroke !== before.open?.stroke;
      if (state.views.marks === before.views.marks && !isOtherSize && !isOtherStroke) return;
      if (state.views.marks !== before.views.marks && state.views.marks) marking.setState({ pair: null });
      mark();
    }),
    () => marking.setState({ pair: null }),
    () => studio.setState({ marked: null }),
  ];
  mark();
  return () => {
    for (const each of forget) each();
  };
}

/**
 * A byte a cell, 1 where it is to be marked; null where nothing is, so that the picture is not veiled for nothing. What
 * was found on a chart of another size says nothing about this one.
 */
export function cellsToMark(
  chart: Chart,
  { columns, rows, cells }: Findings,
  marks: Marks | null,
  pair: Pair | null,
): Uint8Array | null {
  if (columns !== chart.columns || rows !== chart.rows) return null;
  const marked = pair ? placesOf(chart, pair.a, pair.b) : marks && cells[marks];
  return marked?.includes(1) ? marked : null;
}
