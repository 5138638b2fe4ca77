/**
 * What no page may do, ours included: go elsewhere, open windows, hold other pages, ask for camera, place or files. The
 * studio has no links out of itself, so there is no list of allowed ones.
 */

interface Preventable {
  preventDefault(): void;
}

/** What is used of Electron, so that tests can drive this without it. */
export interface ContentsPart {
  on(
    event: 'will-navigate' | 'will-frame-navigate' | 'will-redirect' | 'will-attach-webview',
    listener: (event: Preventable) => void,
  ): unknown;
  setWindowOpenHandler(handler: () => { action: 'deny' }): void;
}

export interface SessionPart {
  setPermissionRequestHandler(
    handler: (contents: unknown, permission: unknown, answer: (granted: boolean) => void) => void,
  ): void;
  setPermissionCheckHandler(handler: () => boolean): void;
  setDevicePermissionHandler(handler: () => boolean): void;
}

export function lockContents(contents: ContentsPart): void {
  const events = ['will-navigate', 'will-frame-navigate', 'will-redirect', 'will-attach-webview'] as const;
  for (const name of events) contents.on(name, (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}

export function lockSession(session: SessionPart): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
}
