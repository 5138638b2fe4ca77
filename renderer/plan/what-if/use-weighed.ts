/** Designs that are weighed against one another, planned in a worker of their own while they are looked at. */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { WeighAnswer, Weighable, Weighed, WeighQuestion } from './weigh.worker.ts';

export interface Weighing {
  /** By key; nothing where no plan has come yet. */
  readonly weighed: Readonly<Record<string, Weighed>>;
  /** Why one can't be planned, by key. */
  readonly problems: Readonly<Record<string, string>>;
  /** Share of the full plans that is done; null where none are being made. */
  readonly progress: number | null;
  readonly stop: () => void;
  readonly again: () => void;
}

/** Time from a change to its question: long enough to join the strokes of a key. */
const restMs = 300;

/** `all` must be the same value while nothing changes. */
export function useWeighed(all: readonly Weighable[]): Weighing {
  const worker = useRef<Worker | null>(null);
  const number = useRef(0);
  const [weighed, setWeighed] = useState<Weighing['weighed']>({});
  const [problems, setProblems] = useState<Weighing['problems']>({});
  const [progress, setProgress] = useState<number | null>(null);

  useEffect(() => {
    const made = new Worker(new URL('./weigh.worker.ts', import.meta.url), { type: 'module' });
    worker.current = made;
    made.addEventListener('message', ({ data }: MessageEvent<WeighAnswer>) => {
      if (data.number !== number.current) return;
      if (data.kind === 'progress') setProgress(data.done === 1 ? null : data.done);
      else if (data.kind === 'problem') {
        setProblems((before) => ({ ...before, [data.key]: data.sentence }));
      } else setWeighed((before) => ({ ...before, [data.key]: data.weighed }));
    });
    return () => made.terminate();
  }, []);

  const ask = useCallback((what: readonly Weighable[]) => {
    number.current++;
    setProblems({});
    setProgress(0);
    worker.current?.postMessage({
      kind: 'weigh',
      number: number.current,
      all: what,
    } satisfies WeighQuestion);
  }, []);

  useEffect(() => {
    // What is shown until the answer comes is not settled.
    setProgress(0);
    const timer = setTimeout(() => ask(all), restMs);
    return () => clearTimeout(timer);
  }, [all, ask]);

  return {
    weighed,
    problems,
    progress,
    stop: () => {
      worker.current?.postMessage({ kind: 'stop' } satisfies WeighQuestion);
      setProgress(null);
    },
    again: () => ask(all),
  };
}

/** What a plan needs of a design, and no more. */
export function weighable(key: string, design: Design, chart: Chart): Weighable {
  return { key, design: { ...design, layers: [], reference: null }, chart };
}
