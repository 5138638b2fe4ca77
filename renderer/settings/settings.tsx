/** What the maker sets once for all designs. Changes count at once; there is nothing to confirm. */
import type { Settings } from '../../shared/bridge.ts';
import { limits } from '../../shared/design/limits.ts';
import { host } from '../host.ts';
import { ask } from '../shell/dialogs.tsx';
import { Choices, TextField } from '../shell/fields.tsx';
import { tellProblem } from '../shell/notices.tsx';
import { studio } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';

export async function changeSettings(): Promise<void> {
  await ask<true>({ label: 'Settings', body: (answer) => <SettingsSheet close={() => answer(true)} /> });
}

/** Shows the change at once, and keeps it. */
export async function set(change: Partial<Settings>): Promise<void> {
  studio.setState(({ settings }) => ({ settings: { ...settings, ...change } }));
  const kept = await host().call('settings.write', change);
  if (!kept.ok) tellProblem(kept.problem.sentence);
}

function SettingsSheet({ close }: { close: () => void }) {
  const settings = useStudio((state) => state.settings);
  return (
    <div className="sheet">
      <h2>Settings</h2>
      <div className="fields">
        <TextField
          label="Designer, as printed on patterns"
          value={settings.designer}
          max={limits.nameChars}
          onChange={(designer) => set({ designer })}
        />
        <Choices
          label="Units"
          value={settings.units}
          options={[
            { value: 'metric', label: 'Metric' },
            { value: 'us', label: 'US' },
            { value: 'both', label: 'Both' },
          ]}
          onChange={(units) => set({ units })}
        />
        <TextField
          label="Currency, beside prices"
          value={settings.currency}
          max={8}
          onChange={(currency) => set({ currency })}
        />
        <Choices
          label="New designs start at the"
          value={settings.startCorner}
          options={[
            { value: 'top-left', label: 'top left' },
            { value: 'top-right', label: 'top right (usual for left-handed makers)' },
          ]}
          onChange={(startCorner) => set({ startCorner })}
        />
        <Choices
          label="Paper"
          value={settings.paper}
          options={[
            { value: 'a4', label: 'A4' },
            { value: 'letter', label: 'Letter' },
          ]}
          onChange={(paper) => set({ paper })}
        />
        <Choices
          label="Theme"
          value={settings.theme}
          options={[
            { value: 'system', label: 'As the system' },
            { value: 'light', label: 'Light' },
            { value: 'dark', label: 'Dark' },
          ]}
          onChange={(theme) => set({ theme })}
        />
        <label className="choice whole">
          <input
            type="checkbox"
            checked={settings.letterKeys}
            onChange={(event) => set({ letterKeys: event.target.checked })}
          />
          Single letters choose tools while the chart has the focus
        </label>
      </div>
      <div className="answers">
        <button type="button" className="main" onClick={close}>
          Done
        </button>
      </div>
    </div>
  );
}
