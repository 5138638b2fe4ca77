/** A layer's thumbnail. It follows the layer some time later, so that nobody waits for it while drawing. */
import { memo, useEffect, useRef } from 'react';
import type { Layer } from '../../../shared/design/design.ts';
import { drawThumbnail, type Thumbnail } from './thumbnail.ts';

/** A thumbnail is drawn at most once in this time. */
const everyMs = 200;

interface LayerThumbnailProps {
  readonly rows: Layer['rows'];
  readonly colors: Uint32Array;
  /** CSS pixels; a chart with fewer cells has a pixel a cell. */
  readonly width: number;
  readonly height: number;
}

interface Drawn {
  readonly rows: Layer['rows'];
  readonly colors: Uint32Array;
  readonly image: ImageData;
}

export const LayerThumbnail = memo(function LayerThumbnail(props: LayerThumbnailProps) {
  const { rows, colors, width, height } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const drawn = useRef<Drawn | null>(null);
  const drawnAt = useRef(Number.NEGATIVE_INFINITY);

  useEffect(() => {
    const draw = () => {
      const element = canvas.current;
      const pen = element?.getContext('2d');
      if (!element || !pen) return;
      const ratio = Math.max(1, window.devicePixelRatio || 1);
      element.width = Math.min(rows[0]!.length, Math.round(width * ratio));
      element.height = Math.min(rows.length, Math.round(height * ratio));
      const old = drawn.current;
      const fits =
        old &&
        old.image.width === element.width &&
        old.image.height === element.height &&
        old.rows.length === rows.length &&
        old.rows[0]!.length === rows[0]!.length;
      const image = fits ? old.image : pen.createImageData(element.width, element.height);
      const thumbnail: Thumbnail = { pixels: image.data, width: image.width, height: image.height };
      drawThumbnail(thumbnail, rows, colors, fits && old.colors === colors ? old.rows : null);
      pen.putImageData(image, 0, 0);
      drawn.current = { rows, colors, image };
      drawnAt.current = performance.now();
    };
    const timer = setTimeout(draw, Math.max(0, drawnAt.current + everyMs - performance.now()));
    return () => clearTimeout(timer);
  }, [rows, colors, width, height]);

  return (
    <span className="layer-thumbnail">
      <canvas ref={canvas} width={1} height={1} style={{ width, height }} />
    </span>
  );
});
