/**
 * The studio's own chooser, for hosts without the system's dialogs: the folders that the person granted at the
 * start, and what is in them.
 */
import { useEffect, useRef, useState } from 'react';
import type { Answer, FileKind, Handle, Place } from '../../shared/bridge.ts';
import { good, type Result } from '../../shared/result.ts';
import { host } from '../host.ts';
import { ask, choose } from './dialogs.tsx';

type Listing = Answer<'folders.list'>;

const kindNames: Record<FileKind, string> = {
  design: 'design',
  picture: 'picture',
  pattern: 'pattern',
  png: 'PNG picture',
  parcel: 'ZIP archive',
};

export function chooseFile(kind: FileKind): Promise<Place | null> {
  const title = `Open a ${kindNames[kind]}`;
  return ask<Place>({
    label: title,
    wide: true,
    body: (answer) => <Chooser {...{ title, kind, answer }} want="file" />,
  });
}

export function chooseFolder(): Promise<Place | null> {
  const title = 'Choose a folder';
  return ask<Place>({
    label: title,
    wide: true,
    body: (answer) => <Chooser {...{ title, answer }} kind="design" want="folder" />,
  });
}

export function chooseTarget(kind: FileKind, suggestedName: string): Promise<Place | null> {
  // Labels and papers are PDF files as the pattern is.
  const title = kind === 'pattern' ? 'Save as PDF' : `Save the ${kindNames[kind]}`;
  return ask<Place>({
    label: title,
    wide: true,
    body: (answer) => <Chooser {...{ title, kind, answer, suggestedName }} want="target" />,
  });
}

interface ChooserProps {
  title: string;
  kind: FileKind;
  want: 'file' | 'folder' | 'target';
  suggestedName?: string;
  answer: (place: Place) => void;
}

/** Where a design is to be opened, patterns are shown too: the design may be inside one. */
async function listed(
  folder: Handle | null,
  kind: FileKind,
  want: ChooserProps['want'],
): Promise<Result<Listing>> {
  const found = await host().call('folders.list', { folder, kind });
  if (!found.ok || kind !== 'design' || want !== 'file') return found;
  const patterns = await host().call('folders.list', { folder, kind: 'pattern' });
  if (!patterns.ok) return patterns;
  return good({ ...found.value, files: [...found.value.files, ...patterns.value.files] });
}

function Chooser({ title, kind, want, suggestedName = '', answer }: ChooserProps) {
  const [folder, setFolder] = useState<Handle | null>(null);
  const [listing, setListing] = useState<Listing | null>(null);
  const [fault, setFault] = useState('');
  const [chosen, setChosen] = useState<Place | null>(null);
  const [name, setName] = useState(suggestedName);
  const entered = useRef(false);

  useEffect(() => {
    let current = true;
    listed(folder, kind, want).then((result) => {
      if (!current) return;
      setFault(result.ok ? '' : result.problem.sentence);
      if (result.ok) setListing(result.value);
      // A person who saves or opens wants to be inside a folder at once: the first one granted is the shelf's.
      const first = result.ok && !entered.current && want !== 'folder' ? result.value.folders[0] : undefined;
      entered.current = true;
      if (first) setFolder(first.handle);
    });
    return () => {
      current = false;
    };
  }, [folder, kind, want]);

  const finish = async () => {
    if (want === 'file' && chosen) return answer(chosen);
    const here = listing?.trail.at(-1);
    if (!here) return setFault('Choose a folder first.');
    if (want === 'folder') return answer(here);
    const place = await host().call('folders.place', { folder: here.handle, name, kind });
    if (!place.ok) return setFault(place.problem.sentence);
    if (place.value.exists) {
      const sure = await choose('Replace the file?', `“${place.value.name}” is in this folder already.`, [
        { value: 'replace', label: 'Replace' },
        { value: 'no', label: 'Choose another name' },
      ]);
      if (sure !== 'replace') return;
    }
    answer({ handle: place.value.handle, name: place.value.name });
  };

  return (
    <form
      className="sheet chooser"
      onSubmit={(event) => {
        event.preventDefault();
        finish();
      }}
    >
      <h2>{title}</h2>
      <Trail places={listing?.trail ?? []} go={setFolder} />
      <div className="rows">
        {listing?.folders.map((each) => (
          <button type="button" key={each.handle} onClick={() => setFolder(each.handle)}>
            <span className="one-line">{each.name}</span>
            <span className="quiet">folder</span>
          </button>
        ))}
        {want !== 'folder' &&
          listing?.files.map((each) => (
            <button
              type="button"
              key={each.handle}
              aria-pressed={chosen?.handle === each.handle}
              onClick={() => (want === 'file' ? setChosen(each) : setName(each.name))}
              onDoubleClick={() => want === 'file' && answer(each)}
            >
              <span className="one-line">{each.name}</span>
              <span className="quiet">{new Date(each.modifiedMs).toLocaleDateString()}</span>
            </button>
          ))}
        {listing && listing.folders.length + (want === 'folder' ? 0 : listing.files.length) === 0 && (
          <p className="quiet sheet">
            {want === 'file' ? 'Nothing here that can be opened.' : 'Nothing of this kind here yet.'}
          </p>
        )}
      </div>
      {want === 'target' && (
        <label className="field">
          Name
          <input value={name} data-first maxLength={200} onChange={(event) => setName(event.target.value)} />
        </label>
      )}
      <p className="fault" role="alert">
        {fault}
      </p>
      <div className="answers">
        <button type="submit" className="main" disabled={want === 'file' && !chosen}>
          {want === 'target' ? 'Save here' : want === 'folder' ? 'Use this folder' : 'Open'}
        </button>
      </div>
    </form>
  );
}

function Trail({ places, go }: { places: readonly Place[]; go: (folder: Handle | null) => void }) {
  return (
    <nav className="trail" aria-label="Where you are">
      <button type="button" className="plain" onClick={() => go(null)}>
        Folders
      </button>
      {places.map((place) => (
        <span key={place.handle}>
          ›{' '}
          <button type="button" className="plain" onClick={() => go(place.handle)}>
            {place.name}
          </button>
        </span>
      ))}
    </nav>
  );
}
