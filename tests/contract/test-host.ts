/** What the contract tests know of a host, whichever it is. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FileLayer } from '../../app/services/files/file-layer.ts';
import { type Home, homeHere } from '../../app/services/home/home.ts';
import { type Makers, ourMakers } from '../../app/services/makers.ts';
import type { Answer, Args, Bridge, CallOptions, FileKind, Place, Verb } from '../../shared/bridge.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import type { Result } from '../../shared/result.ts';
import { temporaryFolder } from '../temporary-folder.ts';

export interface TestHostOptions {
  /** True: nothing is on the shelf, and nothing was ever started. Else two designs are there, and no demos come. */
  readonly firstStart?: boolean;
  readonly makers?: Partial<Makers>;
  readonly files?: FileLayer;
  /** The home of an earlier host of the same test, for a second start. */
  readonly home?: Home;
  readonly given?: string;
  /** What the person chooses in the system's dialogs, where the host has them. */
  readonly chosen?: string | null;
}

export interface TestHost {
  readonly bridge: Bridge;
  readonly home: Home;
  /** A folder that was granted at the start. */
  readonly given: string;
  readonly logged: string[];
  /** A call as a page could send it that does not keep to the contract. */
  raw(verb: string, args: unknown): Promise<unknown>;
}

export type StartTestHost = (options?: TestHostOptions) => Promise<TestHost>;

/** What both hosts of the tests are started with. */
export function surroundings(options: TestHostOptions) {
  const { makers, home, given = join(temporaryFolder(), 'given') } = options;
  mkdirSync(given, { recursive: true });
  const logged: string[] = [];
  return {
    given,
    logged,
    home: home ?? newHome(options.firstStart ?? false),
    makers: { ...ourMakers, ...makers },
    log: (line: string) => {
      logged.push(line);
    },
    now: () => new Date(2031, 2, 5, 14, 7, 9),
  };
}

function newHome(firstStart: boolean): Home {
  const home = homeHere({ LARKROW_HOME: temporaryFolder() });
  if (firstStart) return home;
  mkdirSync(home.config);
  writeFileSync(join(home.config, 'config.json'), '{"demosGiven": true}');
  mkdirSync(home.shelf);
  for (const title of ['Moth at the window', 'Lamp at Harrow Point']) {
    const text = writeDesign(newDesign({ title, columns: 30, rows: 36 }));
    writeFileSync(join(home.shelf, `${title}.larkrow`), text);
  }
  return home;
}

/** The value of a call that must go well. */
export async function value<V extends Verb>(
  host: TestHost,
  verb: V,
  args: Args<V>,
  options?: CallOptions,
): Promise<Answer<V>> {
  const result: Result<Answer<V>> = await host.bridge.call(verb, args, options);
  if (!result.ok) throw new Error(`${verb}: ${result.problem.code}: ${result.problem.sentence}`);
  return result.value;
}

/** The code of a call that must be refused; its sentence must be one for a person. */
export async function refusal<V extends Verb>(host: TestHost, verb: V, args: Args<V>): Promise<string> {
  const result = await host.bridge.call(verb, args);
  if (result.ok) throw new Error(`${verb} was answered, and should not have been`);
  const { code, sentence } = result.problem;
  if (!/^[“A-Z].*\.$/s.test(sentence)) throw new Error(`${verb}: “${sentence}” is no sentence`);
  return code;
}

/** The granted folder of the tests. */
export async function givenFolder(host: TestHost): Promise<Place> {
  const { folders } = await value(host, 'folders.list', { folder: null, kind: 'design' });
  const found = folders.find(({ name }) => name === 'given');
  if (!found) throw new Error('the given folder is not granted');
  return found;
}

/** A file of the granted folder. */
export async function givenFile(host: TestHost, kind: FileKind, name: string): Promise<Place> {
  const { handle } = await givenFolder(host);
  const { files } = await value(host, 'folders.list', { folder: handle, kind });
  const found = files.find((file) => file.name === name);
  if (!found) throw new Error(`${name} is not in the given folder`);
  return { handle: found.handle, name: found.name };
}

/** A place in the granted folder. */
export async function givenPlace(host: TestHost, kind: FileKind, name: string) {
  const { handle } = await givenFolder(host);
  return value(host, 'folders.place', { folder: handle, name, kind });
}
