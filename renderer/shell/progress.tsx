/** A dialog that shows how far a long job is, with a button to stop it. */
import { useState } from 'react';
import type { CallOptions, Progress } from '../../shared/bridge.ts';
import { ask } from './dialogs.tsx';

/** Runs `job`; its dialog appears only when the job takes longer than a moment. Dismissing it stops the job. */
export async function withProgress<T>(title: string, job: (options: CallOptions) => Promise<T>): Promise<T> {
  const stop = new AbortController();
  let report: (progress: Progress) => void = () => {};
  let close: (() => void) | null = null;
  const timer = setTimeout(() => {
    ask<true>({
      label: title,
      body: (answer) => {
        close = () => answer(true);
        return <Bar title={title} listen={(listener) => (report = listener)} onStop={() => stop.abort()} />;
      },
    }).then((answer) => {
      if (answer === null) stop.abort();
    });
  }, 300);
  try {
    return await job({ signal: stop.signal, onProgress: (progress) => report(progress) });
  } finally {
    clearTimeout(timer);
    // The dialog may have been made since, so the function is read here and not before.
    (close as (() => void) | null)?.();
  }
}

interface BarProps {
  title: string;
  listen: (listener: (progress: Progress) => void) => void;
  onStop: () => void;
}

function Bar({ title, listen, onStop }: BarProps) {
  const [progress, setProgress] = useState<Progress>({ done: 0, what: '' });
  listen(setProgress);
  return (
    <div className="sheet">
      <h2>{title}</h2>
      <progress value={progress.done} max={1} aria-label={title} />
      <p className="quiet" role="status">
        {progress.what || 'One moment…'}
      </p>
      <div className="answers">
        <button type="button" onClick={onStop}>
          Stop
        </button>
      </div>
    </div>
  );
}
