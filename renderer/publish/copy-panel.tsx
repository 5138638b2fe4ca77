/** How a copy is printed: paper, units, ink, size of the cells, hand, language, written rows, and for whom. */
import type { CopySettings } from '../../shared/design/schema.ts';
import { type Copy, copyOf } from '../../shared/pattern/copy.ts';
import { set } from '../settings/settings.tsx';
import { Choices, TextField } from '../shell/fields.tsx';
import { useStudio } from '../store/use-studio.ts';
import { changeCopy } from './pattern-deeds.ts';
import { patternView, usePattern } from './pattern-view.ts';

export function CopyPanel() {
  const { paper, units } = useStudio((state) => state.settings);
  const design = useStudio((state) => state.open?.design);
  const preparedFor = usePattern((view) => view.preparedFor);
  if (!design) return null;
  const copy = copyOf(design);
  return (
    <details open data-fold="copy">
      <summary>How it is printed</summary>
      <Choices
        label="Paper"
        value={paper}
        options={[
          { value: 'a4', label: 'A4' },
          { value: 'letter', label: 'Letter' },
        ]}
        onChange={(next) => set({ paper: next })}
      />
      <Choices
        label="Units"
        value={units}
        options={[
          { value: 'metric', label: 'Metric' },
          { value: 'us', label: 'US' },
          { value: 'both', label: 'Both' },
        ]}
        onChange={(next) => set({ units: next })}
      />
      {choices.map((choice) => (
        <CopyChoice key={choice.key} copy={copy} choice={choice} />
      ))}
      {switches.map(({ key, label, hint }) => (
        <label key={key} className="choice" title={hint}>
          <input type="checkbox" checked={copy[key]} onChange={() => changeCopy(label, key, !copy[key])} />
          {label}
        </label>
      ))}
      <TextField
        label="Prepared for"
        value={preparedFor}
        max={200}
        onChange={(next) => patternView.setState({ preparedFor: next })}
      />
      <p className="hint">
        Stands at the foot of every page of this copy but the cover, and is not kept in the design.
      </p>
    </details>
  );
}

type ChoiceKey = 'language' | 'ink' | 'cells' | 'rowsForm';

interface CopyChoiceOf<K extends ChoiceKey> {
  readonly key: K;
  readonly label: string;
  readonly options: readonly { value: Copy[K]; label: string }[];
}

type AnyChoice = { [K in ChoiceKey]: CopyChoiceOf<K> }[ChoiceKey];

const choices: readonly AnyChoice[] = [
  {
    key: 'language',
    label: 'Language',
    options: [
      { value: 'en', label: 'English' },
      { value: 'de', label: 'Deutsch' },
    ],
  },
  {
    key: 'ink',
    label: 'Chart',
    options: [
      { value: 'colour', label: 'In colour' },
      { value: 'symbols', label: 'Symbols on white' },
      { value: 'grey', label: 'In greys' },
    ],
  },
  {
    key: 'cells',
    label: 'Cells',
    options: [
      { value: 'standard', label: 'From 4 mm' },
      { value: 'large', label: 'Large print, from 6 mm' },
    ],
  },
  {
    key: 'rowsForm',
    label: 'Written rows',
    options: [
      { value: 'long', label: 'In words' },
      { value: 'compact', label: 'Compact' },
    ],
  },
];

function CopyChoice({ copy, choice }: { copy: Copy; choice: AnyChoice }) {
  return (
    <Choices<string>
      label={choice.label}
      value={copy[choice.key]}
      options={choice.options}
      onChange={(next) => changeCopy(choice.label, choice.key, next as CopySettings[ChoiceKey])}
    />
  );
}

const switches = [
  {
    key: 'rowsBeside',
    label: 'Rows written beside the chart',
    hint: 'Where there is room for them, each row stands in words at the end of its row of the chart.',
  },
  {
    key: 'leftHanded',
    label: 'For the left hand',
    hint: 'Row 1 begins at the top right, and the knots are drawn for the left hand.',
  },
] as const;
