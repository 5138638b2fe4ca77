/** A page of the pattern, drawn as it will be printed. */
import { useEffect, useRef, useState } from 'react';
import { type CanvasFaces, drawOnCanvas } from '../../../shared/pattern/page/draw-on-canvas.ts';
import type { Page } from '../../../shared/pattern/page/page.ts';
import { picturesOn } from './page-pictures.ts';

interface PagePreviewProps {
  readonly page: Page;
  readonly pxPerMm: number;
  /** What it is to whoever does not see it. Absent: what stands around it says so. */
  readonly label?: string;
}

/** Drawn while it is near what is in sight, and let go of beyond: a pattern may have hundreds of pages. */
export function PagePreview({ page, pxPerMm, label }: PagePreviewProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [isNear, setIsNear] = useState(false);
  useEffect(() => {
    const watcher = new IntersectionObserver(
      (entries) => setIsNear(entries.at(-1)?.isIntersecting ?? false),
      { rootMargin: nearMargin },
    );
    if (canvas.current) watcher.observe(canvas.current);
    return () => watcher.disconnect();
  }, []);
  useEffect(() => {
    if (!isNear) {
      letGoOf(canvas.current);
      return;
    }
    let current = true;
    Promise.all([picturesOn(page), facesLoaded()]).then(([pictures]) => {
      const context = canvas.current?.getContext('2d');
      if (!current || !canvas.current || !context) return;
      const scale = pxPerMm * Math.max(1, window.devicePixelRatio);
      canvas.current.width = page.widthMm * scale;
      canvas.current.height = page.heightMm * scale;
      drawOnCanvas(context, page, scale, faces, pictures);
    });
    return () => {
      current = false;
    };
  }, [page, isNear, pxPerMm]);
  return (
    <canvas
      ref={canvas}
      role="img"
      aria-label={label}
      aria-hidden={label === undefined}
      style={{ width: page.widthMm * pxPerMm, height: page.heightMm * pxPerMm }}
    />
  );
}

const nearMargin = '800px';

/** The memory of its pixels is free again; its place on the screen stays. */
function letGoOf(canvas: HTMLCanvasElement | null): void {
  if (!canvas) return;
  canvas.width = 0;
  canvas.height = 0;
}

/** The families that the studio's style sheet loads. */
const faces: CanvasFaces = {
  sans: { family: 'Noto Sans', weight: 400 },
  'sans-bold': { family: 'Noto Sans', weight: 600 },
  serif: { family: 'Noto Serif', weight: 400 },
  'serif-bold': { family: 'Noto Serif', weight: 600 },
  symbols: { family: 'Larkrow Symbols', weight: 400 },
};

/** A canvas does not wait for fonts as text does, so they are asked for before a page is drawn. */
function facesLoaded(): Promise<unknown> {
  return Promise.all(
    Object.values(faces).map(({ family, weight }) => document.fonts.load(`${weight} 10px "${family}"`)),
  );
}
