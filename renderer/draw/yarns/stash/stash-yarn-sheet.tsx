/** A yarn of the stash, to be written down or changed. */
import { useState } from 'react';
import { limits } from '../../../../shared/design/limits.ts';
import type { YarnLook } from '../../../../shared/design/yarn-edits.ts';
import { ask } from '../../../shell/dialogs.tsx';
import { Ball } from '../ball.tsx';
import { isWhole, YarnFields } from '../yarn-fields.tsx';

export interface StashLabel {
  readonly look: YarnLook;
  readonly notes: string;
}

/** The label as the person wants it; null where they changed their mind. */
export function askForStashYarn(title: string, label: StashLabel): Promise<StashLabel | null> {
  return ask<StashLabel>({
    label: title,
    body: (answer) => <StashYarnSheet {...{ title, label, answer }} />,
  });
}

interface StashYarnSheetProps {
  readonly title: string;
  readonly label: StashLabel;
  readonly answer: (label: StashLabel) => void;
}

function StashYarnSheet({ title, label, answer }: StashYarnSheetProps) {
  const [look, setLook] = useState(label.look);
  const [notes, setNotes] = useState(label.notes);
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (isWhole(look)) answer({ look: { ...look, name: look.name.trim() }, notes });
      }}
    >
      <h2 className="with-ball">
        <Ball color={look.color} symbol={null} />
        {title}
      </h2>
      <YarnFields
        look={look}
        want={(change) => setLook((before) => ({ ...before, ...change }))}
        ownedHint="Whole or begun: 1.5 is one and a half."
      />
      <label className="field">
        Notes
        <textarea
          rows={2}
          maxLength={limits.stashNoteChars}
          value={notes}
          onChange={(event) => setNotes(event.target.value)}
        />
        <span className="hint">Dye lot, fibre, where it was bought.</span>
      </label>
      <div className="answers">
        <button type="submit" className="main" disabled={!isWhole(look)}>
          Done
        </button>
      </div>
    </form>
  );
}
