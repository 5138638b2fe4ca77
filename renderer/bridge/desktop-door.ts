/** What the desktop's preload script puts into the page: plain functions, since nothing else crosses that border. */
export interface DesktopDoor {
  /** `callId` is the page's own number for the call. The answer is read before it is trusted. */
  call(callId: number, verb: string, args: unknown): Promise<unknown>;
  cancel(callId: number): void;
  onProgress(listener: (callId: number, progress: unknown) => void): void;
  onEvent(listener: (event: unknown) => void): void;
}

declare global {
  interface Window {
    readonly larkrow?: DesktopDoor;
  }
}
