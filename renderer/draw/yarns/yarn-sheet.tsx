/** A yarn of the design, to be named, coloured, measured and given its symbol. */
import { useState } from 'react';
import type { Yarn } from '../../../shared/design/schema.ts';
import { ask } from '../../shell/dialogs.tsx';
import { Ball } from './ball.tsx';
import { SymbolChoice } from './symbol-choice.tsx';
import { isWhole, YarnFields } from './yarn-fields.tsx';

/** The yarn as the person wants it; null where they changed their mind. `others` are the design's other yarns. */
export function askForYarn(title: string, yarn: Yarn, others: readonly Yarn[]): Promise<Yarn | null> {
  return ask<Yarn>({
    label: title,
    wide: true,
    body: (answer) => <YarnSheet {...{ title, yarn, others, answer }} />,
  });
}

interface YarnSheetProps {
  readonly title: string;
  readonly yarn: Yarn;
  readonly others: readonly Yarn[];
  readonly answer: (yarn: Yarn) => void;
}

function YarnSheet({ title, yarn, others, answer }: YarnSheetProps) {
  const [wanted, setWanted] = useState(yarn);
  const want = (change: Partial<Yarn>) => setWanted((before) => ({ ...before, ...change }));
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (isWhole(wanted)) answer({ ...wanted, name: wanted.name.trim() });
      }}
    >
      <h2 className="with-ball">
        <Ball color={wanted.color} symbol={wanted.symbol} />
        {title}
      </h2>
      <div className="yarn-halves">
        <YarnFields look={wanted} want={want} ownedHint="Empty where you don’t count them." />
        <SymbolChoice
          chosen={wanted.symbol}
          color={wanted.color}
          taken={new Map(others.map(({ symbol, name }) => [symbol, name]))}
          choose={(symbol) => want({ symbol })}
        />
      </div>
      <div className="answers">
        <button type="submit" className="main" disabled={!isWhole(wanted)}>
          Done
        </button>
      </div>
    </form>
  );
}
