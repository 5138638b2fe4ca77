/**
 * The rows of the tying order with their steps. A hanging may have hundreds of thousands of steps: a row has them only while it
 * is near the part that is seen; until then it has its name and about the room that they take.
 */
import { useEffect, useMemo, useRef } from 'react';
import { goesRight } from '../../../shared/chart/chart.ts';
import type { StepForm } from '../../../shared/tying/steps/step-language.ts';
import { useStudio } from '../../store/use-studio.ts';
import type { PlanTables } from '../plans/plan-tables.ts';
import { type Plans, plans, usePlans } from '../plans/plans.ts';
import { OrderRow, type Place } from './order-row.tsx';
import { revealRow } from './show-row.ts';

interface OrderRowsProps {
  readonly order: NonNullable<Plans['order']>;
  readonly form: StepForm;
  /** From 1; null where all is tied. */
  readonly rowNow: number | null;
  readonly tables: PlanTables;
}

/** One stop for Tab; within the list the arrows go from row to row. */
const arrows: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 };

export function OrderRows({ order, form, rowNow, tables }: OrderRowsProps) {
  const list = useRef<HTMLOListElement>(null);
  const near = usePlans((state) => state.rowsNear);
  const tied = usePlans((state) => state.tied);
  const yarns = useStudio((state) => state.open?.design.yarns);
  const units = useStudio((state) => state.settings.units);
  const yarnsById = useMemo(() => new Map((yarns ?? []).map((yarn) => [yarn.id, yarn])), [yarns]);
  const { counts, steps } = order;
  const rows = useMemo(
    () => Array.from(counts, (count, r) => ({ row: r + 1, count })).filter(({ count }) => count !== -1),
    [counts],
  );
  useEffect(() => watchRows(rows.map((_, i) => list.current!.children[i]!)), [rows]);
  useEffect(() => {
    if (rowNow !== null) revealRow(rowNow);
  }, [rowNow]);
  const isNear = new Set(near);
  const stop = rows.find(({ row }) => row >= (rowNow ?? 1))?.row ?? rows.at(-1)?.row;
  return (
    <ol
      ref={list}
      className="order-rows"
      onKeyDown={(event) => {
        const by = arrows[event.key];
        if (!by) return;
        event.preventDefault();
        const all = [...event.currentTarget.querySelectorAll('button')];
        all[
          Math.min(all.length - 1, Math.max(0, all.indexOf(event.target as HTMLButtonElement) + by))
        ]?.focus();
      }}
    >
      {rows.map(({ row, count }) => (
        <OrderRow
          key={row}
          {...{ row, count, form, units, yarnsById }}
          steps={isNear.has(row) ? (steps.get(row) ?? null) : null}
          // Only in the row at the slider does it matter how many knots are tied.
          tied={row === rowNow ? tied : null}
          place={placeOf(row, rowNow)}
          isStop={row === stop}
          knotsBefore={knotsBefore(tables, row)}
          startColumn={goesRight(tables.startCorner, row - 1) ? 0 : tables.columns - 1}
        />
      ))}
    </ol>
  );
}

/** While the order is not followed, no row is done. */
function placeOf(row: number, rowNow: number | null): Place {
  if (row === rowNow) return 'now';
  return rowNow !== null && row < rowNow ? 'done' : 'ahead';
}

/** Keeps in mind which rows are near the part of the list that is seen. */
function watchRows(rows: readonly Element[]): () => void {
  const near = new Set<number>();
  const watcher = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        const row = Number((target as HTMLElement).dataset.row);
        if (isIntersecting) near.add(row);
        else near.delete(row);
      }
      plans.setState({ rowsNear: [...near] });
    },
    { root: rows[0]?.closest('.plan-leaf') ?? null, rootMargin: '400px' },
  );
  for (const each of rows) watcher.observe(each);
  return () => watcher.disconnect();
}

/** Knots of the hanging that are tied before a row; `row` counts from 1. */
function knotsBefore({ rowStart, stretches }: PlanTables, row: number): number {
  return stretches.knotsBefore[rowStart[row - 1] ?? stretches.count]!;
}
