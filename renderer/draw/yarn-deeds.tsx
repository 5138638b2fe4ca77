/** What can be done with the design's yarns: add, change, replace everywhere, merge, remove. Each can be undone. */
import { useState } from 'react';
import { BARE, codeOf, yarnIdOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Edit } from '../../shared/design/edits.ts';
import type { Yarn } from '../../shared/design/schema.ts';
import {
  addYarn,
  changeYarn,
  mergeYarns,
  removeYarn,
  replaceYarnEverywhere,
} from '../../shared/design/yarn-edits.ts';
import type { Result } from '../../shared/result.ts';
import { alphabet } from '../../shared/yarn/symbols.ts';
import { ask } from '../shell/dialogs.tsx';
import { tellProblem } from '../shell/notices.tsx';
import { change } from '../store/changing.ts';
import { chooseCode, studio } from '../store/studio.ts';
import { YarnSheet } from './yarn-sheet.tsx';

/** The next or previous entry of the list, bare cord included. */
export function stepYarn(by: 1 | -1): void {
  const { open } = studio.getState();
  if (!open) return;
  const codes = [...open.design.yarns.map(({ id }) => codeOf(id)), BARE];
  const at = codes.indexOf(open.code);
  chooseCode(codes[(at + by + codes.length) % codes.length]!);
}

export async function addAYarn(): Promise<void> {
  const design = studio.getState().open?.design;
  if (!design) return;
  const like = design.yarns.find(({ id }) => id === design.ground) ?? design.yarns[0]!;
  const { id: _id, symbol: _symbol, ...look } = { ...like, name: 'New yarn', color: '#8a6f9e' };
  const added = addYarn(design, symbolTexts, look);
  if (!added.ok) return tellProblem(added.problem.sentence);
  const yarn = yarnsOf(added.value)?.at(-1);
  if (!yarn) return;
  const wanted = await askForYarn('Add a yarn', yarn, design);
  if (!wanted) return;
  // Nothing else changes the design while the dialog is open.
  change('Add a yarn', { kind: 'set', field: 'yarns', value: [...design.yarns, wanted] });
  chooseCode(codeOf(wanted.id));
}

export async function changeChosenYarn(): Promise<void> {
  const chosen = chosenYarn();
  if (!chosen) return;
  const wanted = await askForYarn('Change this yarn', chosen.yarn, chosen.design);
  if (!wanted) return;
  make('Change a yarn', changeYarn(chosen.design, chosen.yarn.id, wanted));
}

export async function replaceChosenYarn(): Promise<void> {
  const chosen = chosenYarn();
  const into =
    chosen && (await askForOther(chosen, 'Replace everywhere', 'Every knot of this yarn is tied with'));
  if (!chosen || !into) return;
  change('Replace a yarn', replaceYarnEverywhere(chosen.design, chosen.yarn.id, into));
  chooseCode(codeOf(into));
}

export async function mergeChosenYarn(): Promise<void> {
  const chosen = chosenYarn();
  const into = chosen && (await askForOther(chosen, 'Merge', 'Its knots join those of'));
  if (!chosen || !into) return;
  if (make('Merge yarns', mergeYarns(chosen.design, chosen.yarn.id, into))) chooseCode(codeOf(into));
}

export function removeChosenYarn(): void {
  const chosen = chosenYarn();
  if (!chosen) return;
  if (make('Remove a yarn', removeYarn(chosen.design, chosen.yarn.id)))
    chooseCode(codeOf(chosen.design.ground));
}

/** The ground fills the background, and its thickness sets the gauge where no swatch does. */
export function makeChosenYarnGround(): void {
  const chosen = chosenYarn();
  if (!chosen) return;
  if (chosen.yarn.id === chosen.design.ground) tellProblem(`“${chosen.yarn.name}” is the ground already.`);
  else change('Change the ground', { kind: 'set', field: 'ground', value: chosen.yarn.id });
}

const symbolTexts = alphabet.map(({ text }) => text);

function make(label: string, edit: Result<Edit>): boolean {
  if (edit.ok) change(label, edit.value);
  else tellProblem(edit.problem.sentence);
  return edit.ok;
}

function yarnsOf(edit: Edit): readonly Yarn[] | null {
  return edit.kind === 'set' && edit.field === 'yarns' ? edit.value : null;
}

interface Chosen {
  readonly design: Design;
  readonly yarn: Yarn;
}

function chosenYarn(): Chosen | null {
  const { open } = studio.getState();
  if (!open) return null;
  const yarn = open.design.yarns.find(({ id }) => codeOf(id) === open.code);
  if (yarn) return { design: open.design, yarn };
  tellProblem('Bare cord is no yarn. Choose a yarn first.');
  return null;
}

function askForYarn(title: string, yarn: Yarn, design: Design): Promise<Yarn | null> {
  const taken = design.yarns.filter(({ id }) => id !== yarn.id).map(({ symbol }) => symbol);
  return ask<Yarn>({
    label: title,
    body: (answer) => <YarnSheet title={title} yarn={yarn} taken={taken} answer={answer} />,
  });
}

function askForOther({ design, yarn }: Chosen, title: string, text: string): Promise<Yarn['id'] | null> {
  const others = design.yarns.filter(({ id }) => id !== yarn.id);
  if (others.length === 0) {
    tellProblem('This is the only yarn. Add another one first.');
    return Promise.resolve(null);
  }
  return ask<Yarn['id']>({
    label: title,
    body: (answer) => <OtherYarnSheet {...{ title, text, yarn, others, answer }} />,
  });
}

interface OtherYarnProps {
  title: string;
  text: string;
  yarn: Yarn;
  others: readonly Yarn[];
  answer: (id: Yarn['id']) => void;
}

function OtherYarnSheet({ title, text, yarn, others, answer }: OtherYarnProps) {
  const [code, setCode] = useState(codeOf(others[0]!.id));
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        answer(yarnIdOf(code));
      }}
    >
      <h2 className="one-line">
        {title}: {yarn.name}
      </h2>
      <label className="field">
        {text}
        <select data-first value={code} onChange={(event) => setCode(Number(event.target.value))}>
          {others.map(({ id, name }) => (
            <option key={id} value={codeOf(id)}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <div className="answers">
        <button type="submit" className="main">
          {title}
        </button>
      </div>
    </form>
  );
}
