/** The texts that the designer can write anew. What is being written becomes one step when the field is left. */
import { useEffect, useId, useRef, useState } from 'react';
import { limits } from '../../../shared/design/limits.ts';
import { useStudio } from '../../store/use-studio.ts';
import { type TextName, writeText } from '../pattern-deeds.ts';
import { usePattern } from '../pattern-view.ts';
import { watchPresses, whenPressEnds } from '../when-press-ends.ts';
import { type PatternText, patternTexts } from './pattern-texts.ts';

export function TextsPanel() {
  useEffect(watchPresses, []);
  return (
    <details data-fold="texts">
      <summary>Texts</summary>
      {patternTexts.map((text) => (
        <WrittenText key={text.name} {...text} />
      ))}
    </details>
  );
}

function WrittenText({ name, part, label, hint }: PatternText) {
  const id = useId();
  const kept = useStudio((state) => state.open?.design.pattern?.texts?.[name]);
  const first = usePattern((view) => view.firstTexts?.[name] ?? '');
  /** What is being written; null while nothing is. */
  const [draft, setDraft] = useState<string | null>(null);
  const latest = useRef(draft);
  latest.current = draft;
  const isFirst = kept === undefined && (draft === null || draft === first);
  const keepDraft = () => {
    if (latest.current !== null && !isFirst) writeText(name, latest.current);
  };
  const onLeaving = useRef(keepDraft);
  onLeaving.current = keepDraft;
  const keep = () => {
    keepDraft();
    setDraft(null);
  };
  const goBack = () => {
    setDraft(null);
    writeText(name, undefined);
  };
  // A text that is being written when the panel goes away is kept as well.
  useEffect(() => () => onLeaving.current(), []);
  return (
    <div className="field whole" data-text={name} data-part={part}>
      <div className="text-head">
        <label htmlFor={id}>{label}</label>
        <button
          type="button"
          className="plain"
          aria-label={`${label}: as first written`}
          aria-disabled={isFirst}
          onClick={goBack}
        >
          As first written
        </button>
      </div>
      <textarea
        id={id}
        rows={4}
        value={draft ?? kept ?? first}
        placeholder="Left out"
        maxLength={limits.stringChars}
        aria-describedby={`${id}-hint`}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={() => whenPressEnds(keep)}
      />
      <span id={`${id}-hint`} className="hint">
        {hint} {stateOf(isFirst, draft ?? kept ?? first, name)}
      </span>
    </div>
  );
}

const emptyAtFirst: ReadonlySet<TextName> = new Set(['notes', 'cautions']);

function stateOf(isFirst: boolean, text: string, name: TextName): string {
  if (isFirst) return emptyAtFirst.has(name) ? 'There are none at first.' : 'This is the first version.';
  return text.trim() === '' ? 'It is left out.' : '';
}
