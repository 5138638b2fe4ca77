/** The shelf of motifs: patches kept for every design. */
import { useState } from 'react';
import { liftBlock, liftSeen } from '../../../shared/chart/patch/lift-block.ts';
import { motifOf } from '../../../shared/chart/patch/motif.ts';
import { EMPTY } from '../../../shared/design/codes.ts';
import { layerOf } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { host } from '../../host.ts';
import { ask, choose } from '../../shell/dialogs.tsx';
import { TextField } from '../../shell/fields.tsx';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { endStroke } from '../../store/changing.ts';
import { changeDrawing, studio } from '../../store/studio.ts';
import { chosenPatch } from './chosen-patch.ts';

/** Asks the host for the motifs that are kept; called when the Draw screen opens. */
export async function readMotifs(): Promise<void> {
  const answer = await host().call('motifs.list', {});
  if (!answer.ok) return tellProblem(answer.problem.sentence);
  studio.setState({ motifs: answer.value.motifs });
  if (answer.value.notice) tellProblem(answer.value.notice);
}

/** Keeps the chosen patch under a name: its cells on the layer drawn on, or, where that has none, what is seen. */
export async function keepMotif(): Promise<void> {
  endStroke();
  const chosen = chosenPatch();
  if (!chosen) return;
  const { open, mask } = chosen;
  const ofLayer = liftBlock(layerOf(open.design, open.layer).rows, mask);
  const block = ofLayer.cells.some((code) => code !== EMPTY) ? ofLayer : liftSeen(open.chart, mask);
  const name = await askForName('Keep as a motif', '');
  if (!name) return;
  const motif = motifOf(crypto.randomUUID(), name, block, open.design.yarns);
  if (!motif.ok) return tellProblem(motif.problem.sentence);
  const answer = await host().call('motifs.keep', {
    motif: { ...motif.value, yarns: [...motif.value.yarns], rows: [...motif.value.rows] },
  });
  if (!answer.ok) return tellProblem(answer.problem.sentence);
  await readMotifs();
  changeDrawing({ motif: motif.value.id });
  tell(`Kept “${motif.value.name}”. Motif sets it down in any design.`);
}

export async function renameMotif(): Promise<void> {
  const motif = chosenMotif();
  const name = motif && (await askForName('Rename the motif', motif.name));
  if (!motif || !name) return;
  const answer = await host().call('motifs.rename', { id: motif.id, name });
  if (answer.ok) await readMotifs();
  else tellProblem(answer.problem.sentence);
}

export async function removeMotif(): Promise<void> {
  const motif = chosenMotif();
  if (!motif) return;
  const sure = await choose(
    'Remove this motif?',
    `“${motif.name}” is taken off the list for every design. What was drawn with it stays.`,
    [
      { value: 'remove', label: 'Remove' },
      { value: 'keep', label: 'Keep' },
    ],
  );
  if (sure !== 'remove') return;
  const answer = await host().call('motifs.remove', { id: motif.id });
  if (!answer.ok) return tellProblem(answer.problem.sentence);
  changeDrawing({ motif: null });
  await readMotifs();
}

function chosenMotif() {
  const { motifs, drawing } = studio.getState();
  const motif = motifs?.find(({ id }) => id === drawing.motif) ?? null;
  if (!motif) tellProblem('No motif is chosen. Choose one from the list first.');
  return motif;
}

function askForName(title: string, name: string): Promise<string | null> {
  return ask<string>({
    label: title,
    body: (answer) => <NameSheet title={title} name={name} answer={answer} />,
  });
}

function NameSheet(props: { title: string; name: string; answer: (name: string) => void }) {
  const [name, setName] = useState(props.name);
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim()) props.answer(name.trim());
      }}
    >
      <h2>{props.title}</h2>
      <div className="fields">
        <TextField label="Name" value={name} max={limits.nameChars} first onChange={setName} />
      </div>
      <div className="answers">
        <button type="submit" className="main" disabled={!name.trim()}>
          {props.title.startsWith('Keep') ? 'Keep' : 'Rename'}
        </button>
      </div>
    </form>
  );
}
