/** The stash: the yarns that the maker owns, for all designs. The design that is open takes copies of them. */
import { useEffect, useState } from 'react';
import type { Yarn } from '../../../../shared/design/schema.ts';
import type { StashYarn } from '../../../../shared/yarn/stash.ts';
import { ask } from '../../../shell/dialogs.tsx';
import { endStroke } from '../../../store/changing.ts';
import { studio } from '../../../store/studio.ts';
import { useStudio } from '../../../store/use-studio.ts';
import { NearestInStash } from './nearest-in-stash.tsx';
import { addToStash, changeInStash, putIntoStash, removeFromStash, takeIntoDesign } from './stash-deeds.ts';
import { StashEntry } from './stash-entry.tsx';
import { readStash, useStash } from './stash-store.ts';

export async function openStash(): Promise<void> {
  endStroke();
  if (!studio.getState().open) return;
  await ask<true>({
    label: 'Stash of yarns',
    wide: true,
    body: (answer) => <StashSheet close={() => answer(true)} />,
  });
}

function StashSheet({ close }: { close: () => void }) {
  const stash = useStash();
  const design = useStudio((state) => state.open?.design);
  const chosen = useStudio(({ open }) => open?.design.yarns.find(({ id }) => id === `y${open.code}`));
  const [picked, setPicked] = useState<readonly StashYarn[]>([]);
  const [told, setTold] = useState('');
  const say = async (words: string | Promise<string>) => setTold(await words);
  useEffect(() => {
    readStash().then(setTold);
  }, []);
  if (!design) return null;
  const yarns = stash?.yarns ?? [];
  // A yarn that was changed or removed since is no longer picked.
  const stillPicked = yarns.filter((yarn) => picked.includes(yarn));
  const pick = (yarn: StashYarn) =>
    setPicked(picked.includes(yarn) ? picked.filter((each) => each !== yarn) : [...picked, yarn]);
  return (
    <div className="sheet">
      <h2>Stash of yarns</h2>
      <p className="quiet">
        The yarns you own, for all your designs. A design takes a copy of a yarn: what you change here leaves
        your designs as they are.
      </p>
      <div className="stash">
        <section aria-label="In the stash">
          {stash && yarns.length === 0 && <EmptyStash />}
          <ul className="stash-list" aria-label="Yarns of the stash">
            {[...yarns.entries()].map(([at, yarn]) => (
              <StashEntry
                key={at}
                yarn={yarn}
                isPicked={picked.includes(yarn)}
                pick={() => pick(yarn)}
                change={() => say(changeInStash(at))}
                remove={() => say(removeFromStash(at))}
              />
            ))}
          </ul>
          <div className="stash-deeds">
            <button type="button" data-first onClick={() => say(addToStash(chosen ?? design.yarns[0]!))}>
              Add to the stash…
            </button>
            <PutChosenIn chosen={chosen} putIn={(yarn) => say(putIntoStash(yarn))} />
          </div>
        </section>
        <NearestInStash chosen={chosen} yarns={yarns} say={setTold} />
      </div>
      <p role="status" className="told anywhere">
        {told}
      </p>
      <div className="answers">
        <button
          type="button"
          disabled={stillPicked.length === 0}
          onClick={() => {
            setTold(takeIntoDesign(stillPicked));
            setPicked([]);
          }}
        >
          {stillPicked.length > 1
            ? `Take ${stillPicked.length} yarns into this design`
            : 'Take into this design'}
        </button>
        <button type="button" className="main" onClick={close}>
          Done
        </button>
      </div>
    </div>
  );
}

function EmptyStash() {
  return (
    <p>
      Nothing is in it yet. Write down the yarns on your shelf with “Add to the stash…”, or put in the yarns
      of this design that you have at home. Every design can then take them from here, with their colour,
      thickness and skein.
    </p>
  );
}

function PutChosenIn({ chosen, putIn }: { chosen: Yarn | undefined; putIn: (yarn: Yarn) => void }) {
  if (!chosen) return null;
  return (
    <button type="button" className="one-line" title={chosen.name} onClick={() => putIn(chosen)}>
      Put in “{chosen.name}”
    </button>
  );
}
