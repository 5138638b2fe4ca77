/** The picture with the part that is taken: drag on it to choose another part. Figures stand beside it for keys. */
import { type PointerEvent, useRef } from 'react';

/** In pixels of the picture. */
export interface Crop {
  x: number;
  y: number;
  width: number;
  height: number;
}

interface CropBoxProps {
  look: { widthPx: number; heightPx: number };
  url: string;
  crop: Crop;
  onChange: (crop: Crop) => void;
}

export function CropBox({ look, url, crop, onChange }: CropBoxProps) {
  const box = useRef<HTMLDivElement>(null);
  const start = useRef<{ x: number; y: number } | null>(null);

  const place = (event: PointerEvent) => {
    const bounds = box.current!.getBoundingClientRect();
    const along = (value: number, size: number) => Math.min(Math.max(value, 0), 1) * size;
    return {
      x: along((event.clientX - bounds.left) / bounds.width, look.widthPx),
      y: along((event.clientY - bounds.top) / bounds.height, look.heightPx),
    };
  };
  const percent = (value: number, size: number) => `${(value / size) * 100}%`;

  return (
    <div className="crop-room">
      <div
        ref={box}
        className="crop-box"
        style={{ aspectRatio: `${look.widthPx} / ${look.heightPx}` }}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          start.current = place(event);
        }}
        onPointerMove={(event) => {
          if (start.current) onChange(between(start.current, place(event), crop));
        }}
        onPointerUp={() => {
          start.current = null;
        }}
        onPointerCancel={() => {
          start.current = null;
        }}
      >
        <img src={url} alt="What will be turned into a chart" draggable={false} />
        <div
          className="crop-part"
          style={{
            left: percent(crop.x, look.widthPx),
            top: percent(crop.y, look.heightPx),
            width: percent(crop.width, look.widthPx),
            height: percent(crop.height, look.heightPx),
          }}
        />
      </div>
      <p className="quiet">Drag on the picture to take only a part of it.</p>
    </div>
  );
}

/** The whole pixels between two corners; a mere click keeps the crop as it was. */
function between(a: { x: number; y: number }, b: { x: number; y: number }, before: Crop): Crop {
  const x = Math.floor(Math.min(a.x, b.x));
  const y = Math.floor(Math.min(a.y, b.y));
  const width = Math.ceil(Math.max(a.x, b.x)) - x;
  const height = Math.ceil(Math.max(a.y, b.y)) - y;
  return width < 4 || height < 4 ? before : { x, y, width, height };
}
