/** The shelf: the designs of one folder, shown as the hangings they will be. */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { Answer, ShelfEntry } from '../../shared/bridge.ts';
import { limits } from '../../shared/design/limits.ts';
import { counted } from '../../shared/units/counted.ts';
import { openByHandle, openFromPlace } from '../flows/opening.ts';
import { folderToUse } from '../flows/places.ts';
import { host } from '../host.ts';
import { startNewDesign } from '../new-design/new-design.tsx';
import { pictureToChart } from '../picture/picture-to-chart.tsx';
import { ask, choose } from '../shell/dialogs.tsx';
import { TextField } from '../shell/fields.tsx';
import { tell, tellProblem } from '../shell/notices.tsx';
import { studio } from '../store/studio.ts';
import { drawSmallHanging } from './small-hanging.ts';
import './shelf.css';

type Shelf = Answer<'shelf.list'>;

export function ShelfScreen() {
  const [shelf, setShelf] = useState<Shelf | null>(null);
  const [fault, setFault] = useState('');
  const look = useCallback(async () => {
    const listed = await host().call('shelf.list', {});
    if (listed.ok) setShelf(listed.value);
    setFault(listed.ok ? '' : listed.problem.sentence);
  }, []);
  useEffect(() => {
    look();
    // Files may come and go while another window is in front.
    window.addEventListener('focus', look);
    return () => window.removeEventListener('focus', look);
  }, [look]);

  return (
    <div className="shelf">
      <header>
        <h1>Shelf</h1>
        <span className="spring" />
        <button type="button" onClick={openFromPlace}>
          Open…
        </button>
        <button type="button" onClick={pictureToChart}>
          Picture to chart…
        </button>
        <button type="button" className="main" onClick={startNewDesign}>
          New design…
        </button>
      </header>
      {fault && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      {shelf?.entries.length === 0 && <EmptyShelf look={look} />}
      <ul className="hangings" aria-label="Designs">
        {shelf?.entries.map((entry) => (
          <Hanging key={entry.design} entry={entry} look={look} />
        ))}
      </ul>
      <footer>
        <p className="quiet one-line">
          {shelf
            ? `${shelf.entries.length === 1 ? 'One design' : `${shelf.entries.length} designs`} in the folder “${shelf.folder.name}”`
            : 'Looking…'}
        </p>
        <button type="button" className="plain" onClick={() => takeAnotherFolder(look)}>
          Another folder…
        </button>
        {(shelf?.entries.length ?? 0) > 0 && (
          <button type="button" className="plain" onClick={() => addExamples(look)}>
            Put the examples here
          </button>
        )}
        <RecentDesigns />
      </footer>
    </div>
  );
}

async function addExamples(look: () => void): Promise<void> {
  const added = await host().call('shelf.addDemos', {});
  if (!added.ok) tellProblem(added.problem.sentence);
  look();
}

function EmptyShelf({ look }: { look: () => void }) {
  return (
    <div className="empty">
      <h2>Nothing hangs here yet</h2>
      <p>
        Start a design with as many cords as you like, turn a picture into a chart, or look at the examples.
      </p>
      <button type="button" onClick={() => addExamples(look)}>
        Put the examples here
      </button>
    </div>
  );
}

function Hanging({ entry, look }: { entry: ShelfEntry; look: () => void }) {
  const title = entry.title ?? entry.fileName;
  return (
    <li>
      <button
        type="button"
        className="picture"
        aria-label={`Open ${title}`}
        disabled={entry.problem !== undefined}
        onClick={() => openByHandle(entry.design)}
      >
        {entry.thumbnail ? (
          <SmallHanging thumbnail={entry.thumbnail} />
        ) : (
          <span>This file can’t be opened</span>
        )}
      </button>
      <p className="name one-line" title={title}>
        {title}
      </p>
      <p className="quiet small">
        {entry.problem ??
          `${counted(entry.columns ?? 0, 'cord')}, ${counted(entry.rows ?? 0, 'row')} · ${new Date(entry.modifiedMs).toLocaleDateString()}`}
      </p>
      <p className="deeds">
        {!entry.problem && (
          <>
            <button type="button" className="plain" onClick={() => duplicate(entry, look)}>
              Duplicate
            </button>
            <button type="button" className="plain" onClick={() => rename(entry, look)}>
              Rename…
            </button>
          </>
        )}
        <button type="button" className="plain" onClick={() => moveToBin(entry, look)}>
          Move to bin
        </button>
      </p>
    </li>
  );
}

function SmallHanging({ thumbnail }: { thumbnail: NonNullable<ShelfEntry['thumbnail']> }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (canvas.current) drawSmallHanging(canvas.current, thumbnail);
  }, [thumbnail]);
  return <canvas ref={canvas} />;
}

function RecentDesigns() {
  const [entries, setEntries] = useState<Answer<'recent.list'>['entries']>([]);
  useEffect(() => {
    host()
      .call('recent.list', {})
      .then((listed) => listed.ok && setEntries(listed.value.entries));
  }, []);
  if (entries.length === 0) return null;
  return (
    <label className="recent">
      <span className="quiet">Recent</span>
      <select value="" onChange={(event) => openByHandle(event.target.value)}>
        <option value="" disabled>
          Open again…
        </option>
        {entries.map((each) => (
          <option key={each.handle} value={each.handle}>
            {each.name}
          </option>
        ))}
      </select>
    </label>
  );
}

async function takeAnotherFolder(look: () => void): Promise<void> {
  const folder = await folderToUse();
  if (!folder) return;
  const used = await host().call('shelf.useFolder', { folder: folder.handle });
  if (!used.ok) tellProblem(used.problem.sentence);
  look();
}

async function duplicate(entry: ShelfEntry, look: () => void): Promise<void> {
  const made = await host().call('shelf.duplicate', { design: entry.design });
  if (made.ok) tell(`Duplicated as ${made.value.fileName}.`);
  else tellProblem(made.problem.sentence);
  look();
}

async function rename(entry: ShelfEntry, look: () => void): Promise<void> {
  if (isOpen(entry))
    return tellProblem('This design is open. Change its title on the Draw screen, or close it first.');
  const title = await ask<string>({
    label: 'Rename',
    body: (answer) => <RenameSheet title={entry.title ?? ''} answer={answer} />,
  });
  if (!title || title === entry.title) return;
  const renamed = await host().call('shelf.rename', { design: entry.design, title });
  if (!renamed.ok) tellProblem(renamed.problem.sentence);
  look();
}

function RenameSheet({ title, answer }: { title: string; answer: (title: string) => void }) {
  const [text, setText] = useState(title);
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim()) answer(text.trim());
      }}
    >
      <h2>Rename</h2>
      <TextField label="Title" value={text} onChange={setText} max={limits.nameChars} first />
      <div className="answers">
        <button type="submit" className="main" disabled={!text.trim()}>
          Rename
        </button>
      </div>
    </form>
  );
}

async function moveToBin(entry: ShelfEntry, look: () => void): Promise<void> {
  if (isOpen(entry)) return tellProblem('This design is open. Close it first, then move it to the bin.');
  const name = entry.title ?? entry.fileName;
  const sure = await choose(
    'Move to the bin?',
    `“${name}” goes to the bin, where you can still get it back.`,
    [
      { value: 'bin', label: 'Move to bin' },
      { value: 'keep', label: 'Keep it' },
    ],
  );
  if (sure !== 'bin') return;
  const binned = await host().call('shelf.bin', { design: entry.design });
  if (!binned.ok) tellProblem(binned.problem.sentence);
  look();
}

function isOpen(entry: ShelfEntry): boolean {
  return studio.getState().open?.home?.design === entry.design;
}
