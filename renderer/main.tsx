import { createRoot } from 'react-dom/client';
import { connectBridge } from './bridge/connect-bridge.ts';
import { setHost } from './host.ts';
import './shell/theme.css';
import './shell/shell.css';
import { Studio } from './shell/studio.tsx';
import { studio } from './store/studio.ts';

const root = createRoot(document.getElementById('studio')!);

async function start(): Promise<void> {
  const bridge = connectBridge();
  const about = await bridge.call('host.about', {});
  if (!about.ok) throw new Error(about.problem.sentence);
  setHost(bridge, about.value);
  const settings = await bridge.call('settings.read', {});
  if (settings.ok) studio.setState({ settings: settings.value });
  root.render(<Studio />);
}

start().catch((fault: unknown) => {
  root.render(
    <main className="sheet" role="alert">
      <h1>Larkrow could not start</h1>
      <p>Close this window and start Larkrow again. If it happens again, this is what went wrong:</p>
      <p>{fault instanceof Error ? fault.message : String(fault)}</p>
    </main>,
  );
});
