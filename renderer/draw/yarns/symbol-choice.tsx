/** All symbols of the alphabet, always in their places; those of other yarns can't be chosen. */
import { memo, useEffect, useRef } from 'react';
import { alphabet } from '../../../shared/yarn/symbols.ts';
import { drawSymbol } from '../../surface/knot-look.ts';

interface SymbolChoiceProps {
  readonly chosen: string;
  readonly color: string;
  /** The names of the yarns that have a symbol already, by it. */
  readonly taken: ReadonlyMap<string, string>;
  readonly choose: (symbol: string) => void;
}

export function SymbolChoice({ chosen, color, taken, choose }: SymbolChoiceProps) {
  return (
    <fieldset className="field">
      <legend>Symbol</legend>
      <div className="symbol-choices">
        {alphabet.map(({ text }) => {
          const owner = taken.get(text);
          return (
            <button
              type="button"
              key={text}
              aria-label={`Symbol ${text}`}
              aria-pressed={text === chosen}
              disabled={owner !== undefined}
              title={owner === undefined ? text : `${text}: ${owner} has it`}
              onClick={() => choose(text)}
            >
              <SymbolPicture symbol={text} color={color} />
            </button>
          );
        })}
      </div>
    </fieldset>
  );
}

const SymbolPicture = memo(function SymbolPicture({ symbol, color }: { symbol: string; color: string }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen) return;
    pen.fillStyle = color;
    pen.fillRect(0, 0, 48, 48);
    drawSymbol(pen, { color, symbol }, 48, 48);
  }, [symbol, color]);
  return <canvas ref={canvas} width={48} height={48} />;
});
