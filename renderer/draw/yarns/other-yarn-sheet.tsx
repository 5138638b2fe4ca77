/** Which other yarn a yarn gives way to: for Replace and Merge, each of which says what becomes of the yarn itself. */
import { useState } from 'react';
import { codeOf, yarnIdOf } from '../../../shared/design/codes.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import { ask } from '../../shell/dialogs.tsx';
import { Ball } from './ball.tsx';

interface OtherYarn {
  readonly title: string;
  /** What will be done, for the button. */
  readonly deed: string;
  readonly yarn: Yarn;
  readonly others: readonly Yarn[];
  /** What will happen, in a sentence or two. */
  readonly tell: (yarn: string, other: string) => string;
}

/** `others` hold at least one yarn. Null: the person changed their mind. */
export function askForOther(question: OtherYarn): Promise<Yarn['id'] | null> {
  return ask<Yarn['id']>({
    label: question.title,
    body: (answer) => <OtherYarnSheet {...question} answer={answer} />,
  });
}

function OtherYarnSheet(props: OtherYarn & { answer: (id: Yarn['id']) => void }) {
  const { title, deed, yarn, others, tell, answer } = props;
  const [code, setCode] = useState(codeOf(others[0]!.id));
  const other = others.find(({ id }) => codeOf(id) === code)!;
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        answer(yarnIdOf(code));
      }}
    >
      <h2>{title}</h2>
      <div className="yarn-to-yarn">
        <Ball color={yarn.color} symbol={yarn.symbol} />
        <span className="one-line name">{yarn.name}</span>
        <span aria-hidden="true">→</span>
        <Ball color={other.color} symbol={other.symbol} />
        <select
          data-first
          aria-label="The other yarn"
          value={code}
          onChange={(event) => setCode(Number(event.target.value))}
        >
          {others.map(({ id, name }) => (
            <option key={id} value={codeOf(id)}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <p className="anywhere">{tell(yarn.name, other.name)}</p>
      <div className="answers">
        <button type="submit" className="main">
          {deed}
        </button>
      </div>
    </form>
  );
}
