/** The texts that the designer can write anew. What is being written becomes one step when the field is left. */
import { useEffect, useId, useRef, useState } from 'react';
import { limits } from '../../shared/design/limits.ts';
import { useStudio } from '../store/use-studio.ts';
import { type TextName, writeText } from './pattern-deeds.ts';

const texts: readonly { readonly name: TextName; readonly label: string; readonly hint: string }[] = [
  { name: 'welcome', label: 'Welcome', hint: 'Greets the buyer, and says what the picture is about.' },
  { name: 'skill', label: 'Skill', hint: 'What a maker should know already.' },
  {
    name: 'terms',
    label: 'Terms of use',
    hint: 'What a buyer may do with the pattern, and with what is made by it.',
  },
  { name: 'notes', label: 'Notes on the materials', hint: 'From you to the maker, on the materials page.' },
  { name: 'finishing', label: 'Finishing', hint: 'Instead of the usual steps.' },
];

export function TextsPanel() {
  return (
    <details>
      <summary>Texts</summary>
      {texts.map((text) => (
        <WrittenText key={text.name} {...text} />
      ))}
    </details>
  );
}

function WrittenText({ name, label, hint }: (typeof texts)[number]) {
  const id = useId();
  const kept = useStudio((state) => state.open?.design.pattern?.texts?.[name]);
  /** What is being written; null while nothing is. */
  const [draft, setDraft] = useState<string | null>(null);
  const latest = useRef(draft);
  latest.current = draft;
  const keep = () => {
    if (latest.current !== null) writeText(name, latest.current);
    setDraft(null);
  };
  // A text that is being written when the panel goes away is kept as well.
  useEffect(
    () => () => {
      if (latest.current !== null) writeText(name, latest.current);
    },
    [name],
  );
  return (
    <div className="field whole">
      <label htmlFor={id}>{label}</label>
      <textarea
        id={id}
        rows={3}
        value={draft ?? kept ?? ''}
        placeholder={kept === undefined ? 'As first written' : 'Left out'}
        maxLength={limits.stringChars}
        aria-describedby={`${id}-hint`}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={keep}
      />
      <span id={`${id}-hint`} className="hint">
        {hint} {stateOf(draft ?? kept)}
      </span>
      {kept !== undefined && (
        <button
          type="button"
          className="plain"
          onClick={() => {
            setDraft(null);
            writeText(name, undefined);
          }}
        >
          As first written
        </button>
      )}
    </div>
  );
}

function stateOf(text: string | undefined): string {
  if (text === undefined) return 'The first version is printed.';
  return text.trim() === '' ? 'It is left out.' : '';
}
