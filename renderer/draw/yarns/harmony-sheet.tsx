/** New yarns that go with the chosen one: seen as balls first, each added as one step of the history. */
import { useState } from 'react';
import { codeOf, type YarnId } from '../../../shared/design/codes.ts';
import { addYarn } from '../../../shared/design/yarn-edits.ts';
import { lookInColour } from '../../../shared/yarn/look-in-colour.ts';
import { ask } from '../../shell/dialogs.tsx';
import { change } from '../../store/changing.ts';
import { studio } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import { Ball } from './ball.tsx';
import { ballsBetween, type HarmonyBall, harmonyBalls } from './harmony-balls.ts';
import { chosenYarn, symbolTexts } from './yarn-deeds.ts';

export async function makeYarnsThatGo(): Promise<void> {
  const chosen = chosenYarn();
  if (!chosen) return;
  await ask<true>({
    label: 'Yarns that go with it',
    body: (answer) => <HarmonySheet id={chosen.yarn.id} close={() => answer(true)} />,
  });
}

function HarmonySheet({ id, close }: { id: YarnId; close: () => void }) {
  const yarns = useStudio((state) => state.open?.design.yarns) ?? [];
  const yarn = yarns.find((each) => each.id === id);
  const [otherCode, setOtherCode] = useState<number | null>(null);
  const [told, setTold] = useState('');
  const others = yarns.filter((each) => each.id !== id);
  const other = others.find((each) => codeOf(each.id) === otherCode) ?? others[0];
  if (!yarn) return null;
  const add = (color: string) => setTold(addInColour(yarn.id, color));
  return (
    <div className="sheet">
      <h2 className="with-ball">
        <Ball color={yarn.color} symbol={yarn.symbol} />
        <span className="one-line">Yarns that go with {yarn.name}</span>
      </h2>
      <p className="quiet">
        Each is the same kind of yarn in another colour, added at the end of the list. Undo takes it back.
      </p>
      <Balls balls={harmonyBalls(yarn.color)} add={add} isFirst />
      {other && (
        <fieldset className="between">
          <legend>Between two: from {<b className="one-line">{yarn.name}</b>} to</legend>
          <select
            aria-label="The other yarn"
            value={codeOf(other.id)}
            onChange={(event) => setOtherCode(Number(event.target.value))}
          >
            {others.map((each) => (
              <option key={each.id} value={codeOf(each.id)}>
                {each.name}
              </option>
            ))}
          </select>
          <Balls balls={ballsBetween(yarn.color, other.color)} add={add} />
        </fieldset>
      )}
      <p role="status" className="told anywhere">
        {told}
      </p>
      <div className="answers">
        <button type="button" className="main" onClick={close}>
          Done
        </button>
      </div>
    </div>
  );
}

interface BallsProps {
  readonly balls: readonly HarmonyBall[];
  readonly add: (color: string) => void;
  readonly isFirst?: boolean;
}

function Balls({ balls, add, isFirst = false }: BallsProps) {
  const first = isFirst ? balls.findIndex(({ color }) => color !== null) : -1;
  return (
    <ul className="harmony-balls">
      {balls.map(({ label, color, fault }, at) => (
        <li key={label}>
          {color === null ? <span className="bare-ball" /> : <Ball color={color} symbol={null} />}
          <span>{label}</span>
          {color === null ? (
            <span className="quiet small">{fault}</span>
          ) : (
            <button
              type="button"
              data-first={at === first || undefined}
              aria-label={`Add: ${label}`}
              onClick={() => add(color)}
            >
              Add
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}

/** Adds the same kind of yarn in another colour, and gives the words for what was done or why it was not. */
function addInColour(like: YarnId, color: string): string {
  const design = studio.getState().open?.design;
  const yarn = design?.yarns.find(({ id }) => id === like);
  if (!design || !yarn) return '';
  const look = lookInColour(
    yarn,
    color,
    design.yarns.map(({ name }) => name),
  );
  const added = addYarn(design, symbolTexts, look);
  if (!added.ok) return added.problem.sentence;
  change('Add a yarn', added.value);
  return `Added “${look.name}”.`;
}
