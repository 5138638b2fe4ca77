/** A window that holds unsaved work does not close before its page has asked the person. */

export interface Closing {
  describe(unsaved: boolean): void;
  /** The window is about to close: false holds it, and the page asks. */
  mayClose(): boolean;
  /** The person has answered. */
  allow(): void;
  /** While the page can't answer, nothing could be asked, and a window that can't be closed would be worse. */
  pageAnswers(answers: boolean): void;
}

export function createClosing(ask: () => void): Closing {
  let unsaved = false;
  let allowed = false;
  let answers = true;
  return {
    describe(now) {
      unsaved = now;
    },
    mayClose() {
      if (!unsaved || allowed || !answers) return true;
      ask();
      return false;
    },
    allow() {
      allowed = true;
    },
    pageAnswers(now) {
      answers = now;
    },
  };
}
