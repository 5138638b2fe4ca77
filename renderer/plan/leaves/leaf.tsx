/** A leaf that lies in the chart's place: what it is about, what it rests on, and its parts. */
import { type ReactNode, useEffect, useRef } from 'react';
import './leaf.css';

interface LeafProps {
  readonly title: string;
  /** What it is good for, in a sentence or two. */
  readonly about: ReactNode;
  readonly children: ReactNode;
}

export function LeafPage({ title, about, children }: LeafProps) {
  const page = useRef<HTMLElement>(null);
  // Whoever turned to it by keys goes on reading here.
  useEffect(() => page.current?.focus({ preventScroll: true }), []);
  return (
    <section ref={page} className="plan-leaf" aria-label={title} tabIndex={-1}>
      <div className="leaf-sheet">
        <header>
          <h2>{title}</h2>
          <p className="quiet">{about}</p>
        </header>
        {children}
      </div>
    </section>
  );
}
