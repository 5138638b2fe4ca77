/** A yarn's name, colour, symbol and measures. */
import { useEffect, useRef, useState } from 'react';
import { limits } from '../../shared/design/limits.ts';
import type { Yarn } from '../../shared/design/schema.ts';
import { alphabet } from '../../shared/yarn/symbols.ts';
import { NumberField, TextField } from '../shell/fields.tsx';
import { drawSymbol } from '../surface/knot-look.ts';

interface YarnSheetProps {
  title: string;
  yarn: Yarn;
  /** Symbols of the other yarns. */
  taken: readonly string[];
  answer: (yarn: Yarn) => void;
}

export function YarnSheet({ title, yarn, taken, answer }: YarnSheetProps) {
  const [wanted, setWanted] = useState(yarn);
  const want = (change: Partial<Yarn>) => setWanted((before) => ({ ...before, ...change }));
  const name = wanted.name.trim();
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (name) answer({ ...wanted, name });
      }}
    >
      <h2>{title}</h2>
      <div className="fields">
        <TextField
          label="Name"
          value={wanted.name}
          max={limits.nameChars}
          first
          onChange={(text) => want({ name: text })}
        />
        <label className="field">
          Colour
          <input
            type="color"
            value={wanted.color}
            onChange={(event) => want({ color: event.target.value })}
          />
        </label>
        <label className="field">
          Colour as #rrggbb
          <input
            key={wanted.color}
            defaultValue={wanted.color}
            onBlur={(event) => {
              const color = event.target.value.trim().toLowerCase();
              if (/^#[0-9a-f]{6}$/.test(color)) want({ color });
              else event.target.value = wanted.color;
            }}
          />
        </label>
        <fieldset className="field whole">
          <legend>Symbol</legend>
          <div className="symbol-choices">
            {alphabet
              .filter(({ text }) => !taken.includes(text))
              .map(({ text }) => (
                <button
                  type="button"
                  key={text}
                  aria-label={`Symbol ${text}`}
                  aria-pressed={text === wanted.symbol}
                  onClick={() => want({ symbol: text })}
                >
                  <SymbolPicture symbol={text} color={wanted.color} />
                </button>
              ))}
          </div>
        </fieldset>
        <NumberField
          label="Thickness in mm"
          value={wanted.diameterMm}
          min={0.2}
          max={20}
          onChange={(diameterMm) => want({ diameterMm })}
        />
        <NumberField
          label="Metres in 100 g"
          value={wanted.metresPer100G}
          min={1}
          max={10_000}
          onChange={(metresPer100G) => want({ metresPer100G })}
        />
        <NumberField
          label="Grams in a skein"
          value={wanted.skeinG}
          min={1}
          max={10_000}
          onChange={(skeinG) => want({ skeinG })}
        />
      </div>
      <div className="answers">
        <button type="submit" className="main" disabled={!name}>
          Done
        </button>
      </div>
    </form>
  );
}

function SymbolPicture({ symbol, color }: { symbol: string; color: string }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen) return;
    pen.fillStyle = color;
    pen.fillRect(0, 0, 48, 48);
    drawSymbol(pen, { color, symbol }, 48, 48);
  }, [symbol, color]);
  return <canvas ref={canvas} width={48} height={48} />;
}
