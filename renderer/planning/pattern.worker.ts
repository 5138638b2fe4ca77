/** A pattern's pages, made away from the screen. */
import { PatternMaker, type PatternQuestion } from './pattern-maker.ts';

const maker = new PatternMaker(
  (answer) => self.postMessage(answer),
  () => new Promise((resolve) => setTimeout(resolve)),
);

self.addEventListener('message', ({ data }: MessageEvent<PatternQuestion>) => maker.hear(data));
