/** The studio's frame: screens as wooden tags on two cords, the design's name above, one screen at a time. */
import { useEffect, useRef } from 'react';
import type { CommandId } from '../../shared/commands.ts';
import { DrawScreen } from '../draw/draw-screen.tsx';
import { listenToDrops } from '../flows/dropping.ts';
import { saveChartPng, savePattern } from '../flows/exporting.ts';
import { leaveDesign, mayLeave, openByHandle, openFromPlace } from '../flows/opening.ts';
import { save, saveAs } from '../flows/saving.ts';
import { host } from '../host.ts';
import { startNewDesign } from '../new-design/new-design.tsx';
import { pictureToChart } from '../picture/picture-to-chart.tsx';
import { showLeaf } from '../plan/leaves/leaves.ts';
import { PlanScreen } from '../plan/plan-screen.tsx';
import { editImprint } from '../publish/imprint/imprint-dialog.tsx';
import { PublishScreen } from '../publish/publish-screen.tsx';
import { savePapers } from '../publish/sale/papers-dialog.tsx';
import { saveForSale } from '../publish/sale/sale-dialog.tsx';
import { changeSettings } from '../settings/settings.tsx';
import { ShelfScreen } from '../shelf/shelf-screen.tsx';
import { redoStep, undoStep } from '../store/changing.ts';
import type { Screen } from '../store/state.ts';
import { isUnsaved, studio } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';
import { handleCommands, runCommand } from './command-bus.ts';
import { findCommand } from './command-list.tsx';
import { Dialogs } from './dialogs.tsx';
import { commandById, isInText, keyLabel, listenToKeys } from './keys.ts';
import { Notices, tell } from './notices.tsx';
import { goToPart } from './parts.ts';
import { followTheme } from './theme.ts';

const screens: readonly { screen: Screen; command: CommandId; label: string }[] = [
  { screen: 'shelf', command: 'go-shelf', label: 'Shelf' },
  { screen: 'draw', command: 'go-draw', label: 'Draw' },
  { screen: 'plan', command: 'go-plan', label: 'Plan' },
  { screen: 'publish', command: 'go-publish', label: 'Publish' },
];

export function Studio() {
  const screen = useStudio((state) => state.screen);
  const hasDesign = useStudio((state) => state.open !== null);
  const main = useRef<HTMLElement>(null);
  // What had the focus may have gone with the screen before: Tab then goes on from the new screen, not from nowhere.
  useEffect(() => {
    if (screen && document.activeElement === document.body) main.current?.focus({ preventScroll: true });
  }, [screen]);
  useEffect(listenToKeys, []);
  useEffect(followTheme, []);
  useEffect(listenToHost, []);
  useEffect(listenToDrops, []);
  useEffect(describeWindow, []);
  useEffect(
    () =>
      handleCommands({
        'new-design': startNewDesign,
        open: openFromPlace,
        picture: pictureToChart,
        settings: changeSettings,
        imprint: editImprint,
        'go-shelf': () => studio.setState({ screen: 'shelf' }),
        'find-command': findCommand,
        'next-part': () => goToPart(1),
        'previous-part': () => goToPart(-1),
      }),
    [],
  );
  useEffect(() => (hasDesign ? handleCommands(designCommands) : undefined), [hasDesign]);

  return (
    <div className="studio">
      <nav className="tags" aria-label="Screens">
        {screens.map((each) => (
          <button
            type="button"
            key={each.screen}
            aria-current={screen === each.screen ? 'page' : undefined}
            disabled={each.screen !== 'shelf' && !hasDesign}
            title={keyLabel(commandById(each.command))}
            onClick={() => runCommand(each.command)}
          >
            {each.label}
          </button>
        ))}
      </nav>
      <TopBar />
      <main ref={main} className="screen" tabIndex={-1}>
        {screen === 'shelf' && <ShelfScreen />}
        {screen === 'draw' && <DrawScreen />}
        {screen === 'plan' && <PlanScreen />}
        {screen === 'publish' && <PublishScreen />}
      </main>
      <Notices />
      <Dialogs />
    </div>
  );
}

const designCommands = {
  save,
  'save-as': saveAs,
  'save-pattern': savePattern,
  'save-for-sale': saveForSale,
  'save-papers': savePapers,
  'save-png': saveChartPng,
  close: leaveDesign,
  undo: () => sayStep('Undone', undoStep()?.label),
  redo: () => sayStep('Redone', redoStep()?.label),
  'go-draw': goToDraw,
  'go-plan': () => studio.setState({ screen: 'plan' }),
  'go-swatches': goToSwatches,
  'go-publish': () => studio.setState({ screen: 'publish' }),
} satisfies Partial<Record<CommandId, () => void>>;

function goToSwatches(): void {
  showLeaf('swatches');
  studio.setState({ screen: 'plan' });
}

/** On the Draw screen already, whoever asks for it wants to draw: the chart gets the focus. */
function goToDraw(): void {
  if (studio.getState().screen === 'draw') runCommand('go-chart');
  else studio.setState({ screen: 'draw' });
}

function sayStep(what: string, label: string | undefined): void {
  if (label) tell(`${what}: ${label}.`);
}

function TopBar() {
  const title = useStudio((state) => state.open?.design.title);
  const unsaved = useStudio((state) => isUnsaved(state.open));
  // The shelf has a heading of its own; every other screen is about the design.
  const Title = useStudio((state) => (state.screen === 'shelf' ? 'p' : 'h1'));
  return (
    <header className="topbar">
      <Title className="title one-line" title={title}>
        {title ?? 'Larkrow'}
      </Title>
      {title !== undefined && <p className="quiet">· {unsaved ? 'not saved' : 'saved'}</p>}
      <span className="spring" />
      {title !== undefined && (
        <>
          <button type="button" disabled={!unsaved} onClick={save}>
            Save
          </button>
          <button type="button" className="plain" onClick={leaveDesign}>
            Close
          </button>
        </>
      )}
      <button type="button" className="plain" onClick={findCommand}>
        <span className="quiet">Find a command</span> <kbd>F1</kbd>
      </button>
    </header>
  );
}

function listenToHost(): () => void {
  return host().listen((event) => {
    switch (event.kind) {
      case 'command':
        // In a text field the system's Undo and Redo belong to the text.
        if (isInText(document.activeElement) && (event.id === 'undo' || event.id === 'redo'))
          document.execCommand(event.id);
        else runCommand(event.id as CommandId);
        break;
      case 'open':
        openByHandle(event.design);
        break;
      case 'close-asked':
        mayLeave().then((sure) => {
          if (sure) host().call('window.close', {});
        });
        break;
    }
  });
}

/** The window's title, and the question before it closes with unsaved work. */
function describeWindow(): () => void {
  let told = '';
  const describe = () => {
    const { open } = studio.getState();
    const unsaved = isUnsaved(open);
    const title = open ? `${unsaved ? '• ' : ''}${open.design.title} – Larkrow` : 'Larkrow';
    if (title === told) return;
    told = title;
    document.title = title;
    host().call('window.describe', { title: open?.design.title ?? '', unsaved });
  };
  const beforeUnload = (event: BeforeUnloadEvent) => {
    if (isUnsaved(studio.getState().open)) event.preventDefault();
  };
  describe();
  const unsubscribe = studio.subscribe(describe);
  window.addEventListener('beforeunload', beforeUnload);
  return () => {
    unsubscribe();
    window.removeEventListener('beforeunload', beforeUnload);
  };
}
