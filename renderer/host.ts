/** The host that this page talks to: set once at the start, before anything is drawn. */
import type { Answer, Bridge } from '../shared/bridge.ts';

export type About = Answer<'host.about'>;

let connected: { bridge: Bridge; about: About } | null = null;

export function setHost(bridge: Bridge, about: About): void {
  connected = { bridge, about };
}

export function host(): Bridge {
  if (!connected) throw new Error('the page asked its host before it was connected');
  return connected.bridge;
}

export function aboutHost(): About {
  if (!connected) throw new Error('the page asked its host before it was connected');
  return connected.about;
}
