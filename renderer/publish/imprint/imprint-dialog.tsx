/** The imprint: who publishes, written once for all patterns. */
import { useEffect, useMemo, useState } from 'react';
import { limits } from '../../../shared/design/limits.ts';
import { type Imprint, imprintLimits } from '../../../shared/pattern/imprint.ts';
import { fromBase64, toBase64 } from '../../bridge/base64.ts';
import { fileToOpen } from '../../flows/places.ts';
import { host } from '../../host.ts';
import { ask } from '../../shell/dialogs.tsx';
import { TextArea, TextField } from '../../shell/fields.tsx';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { imprintNow, readImprint, writeImprint } from './imprint-state.ts';

export async function editImprint(): Promise<void> {
  await readImprint();
  const next = await ask<Imprint>({
    label: 'Imprint',
    body: (answer) => <ImprintSheet done={answer} />,
  });
  if (next && (await writeImprint(next))) written = null;
  else if (written) tell('What you wrote is not kept yet. It is still there under Imprint.');
}

/** What was written and not kept: a dialog is left by a slip of the hand, too. */
let written: Imprint | null = null;

/** Mixed into the dialog's accent field until one is chosen. */
const firstAccent = '#96301f';

function ImprintSheet({ done }: { done: (next: Imprint) => void }) {
  const [imprint, setImprint] = useState(written ?? imprintNow());
  const [isFromBefore, setFromBefore] = useState(written !== null);
  const want = (changes: Partial<Imprint>) => {
    written = { ...imprint, ...changes };
    setImprint(written);
  };
  const takeBack = () => {
    written = null;
    setImprint(imprintNow());
    setFromBefore(false);
  };
  return (
    <form
      className="sheet publish-imprint"
      onSubmit={(event) => {
        event.preventDefault();
        done({
          ...imprint,
          contact: imprint.contact.map((line) => line.trim()).filter((line) => line !== ''),
        });
      }}
    >
      <h2>Imprint</h2>
      <p className="quiet">Who publishes your patterns: written once, printed in all of them.</p>
      {isFromBefore && (
        <div className="hint">
          This was written before and is not kept yet.{' '}
          <button type="button" onClick={takeBack}>
            Back to what is kept
          </button>
        </div>
      )}
      <div className="fields">
        <TextField
          label="Name"
          value={imprint.name}
          max={limits.nameChars}
          first
          onChange={(name) => want({ name })}
        />
        <TextField
          label="Workshop or shop"
          value={imprint.workshop}
          max={limits.nameChars}
          onChange={(workshop) => want({ workshop })}
        />
        <TextArea
          label="Contact"
          value={imprint.contact.join('\n')}
          max={limits.nameChars * imprintLimits.contactLines}
          hint={`A line each, at most ${imprintLimits.contactLines}: address, mail, page of the web.`}
          onChange={(text) =>
            want({
              contact: text
                .split('\n')
                .slice(0, imprintLimits.contactLines)
                .map((line) => line.slice(0, limits.nameChars)),
            })
          }
        />
        <TextArea
          label="About you"
          value={imprint.about}
          max={limits.stringChars}
          hint="For the last page of each pattern."
          onChange={(about) => want({ about })}
        />
        <Mark mark={imprint.mark} change={(mark) => want({ mark })} />
        <div className="field whole">
          <label className="choice">
            <input
              type="checkbox"
              checked={imprint.accent !== null}
              onChange={() => want({ accent: imprint.accent === null ? firstAccent : null })}
            />
            A colour of your own for titles
          </label>
          {imprint.accent === null ? (
            <span className="hint">Each pattern takes one from its own yarns.</span>
          ) : (
            <input
              type="color"
              aria-label="Colour of titles"
              value={imprint.accent}
              onChange={(event) => want({ accent: event.target.value })}
            />
          )}
        </div>
      </div>
      <div className="answers">
        <button type="submit" className="main">
          Keep
        </button>
      </div>
    </form>
  );
}

interface MarkProps {
  readonly mark: Imprint['mark'];
  readonly change: (mark: Imprint['mark']) => void;
}

function Mark({ mark, change }: MarkProps) {
  const address = useMemo(
    () =>
      mark === null
        ? null
        : URL.createObjectURL(new Blob([fromBase64(mark.base64)], { type: mark.mediaType })),
    [mark],
  );
  useEffect(
    () => () => {
      if (address) URL.revokeObjectURL(address);
    },
    [address],
  );
  const choose = async () => {
    const place = await fileToOpen('picture');
    if (!place) return;
    const taken = await host().call('mark.take', { picture: place.handle });
    if (!taken.ok) return tellProblem(taken.problem.sentence);
    change({ mediaType: taken.value.mediaType, base64: toBase64(taken.value.bytes) });
  };
  return (
    <div className="field whole">
      <span>Mark</span>
      {address && <img src={address} alt="Your mark" />}
      <div className="choices">
        <button type="button" onClick={choose}>
          {mark ? 'Another picture…' : 'Choose a picture…'}
        </button>
        {mark && (
          <button type="button" onClick={() => change(null)}>
            Without a mark
          </button>
        )}
      </div>
    </div>
  );
}
