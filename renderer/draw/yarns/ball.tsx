import { useEffect, useRef } from 'react';
import { drawBall } from './yarn-ball.ts';

/** A ball of yarn. It says nothing by itself: its name stands beside it. */
export function Ball({ color, symbol }: { color: string; symbol: string | null }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (canvas.current) drawBall(canvas.current, color, symbol);
  }, [color, symbol]);
  return <canvas ref={canvas} className="ball" />;
}
