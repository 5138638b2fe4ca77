/** Where the studio keeps things on this machine. LARKROW_HOME puts all of it into one folder, for a try or a test. */
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';

export interface Home {
  /** The shelf's folder until the person chooses another. */
  readonly shelf: string;
  /** Settings and the list of recent designs. */
  readonly config: string;
  /** Home of the bin, as the freedesktop Trash specification has it; a Mac's is `~/.Trash`. */
  readonly bin: string;
  /** The person's own folders that exist: Documents, Desktop, Downloads, Pictures. */
  readonly folders: readonly string[];
}

type Env = Readonly<Record<string, string | undefined>>;

export function homeHere(env: Env = process.env, platform: NodeJS.Platform = process.platform): Home {
  const own = env.LARKROW_HOME;
  if (own) {
    return { shelf: join(own, 'Larkrow'), config: join(own, 'config'), bin: join(own, 'bin'), folders: [] };
  }
  const person = homedir();
  const documents = join(person, 'Documents');
  return {
    shelf: join(existsSync(documents) ? documents : person, 'Larkrow'),
    config: configFolder(env, platform, person),
    bin:
      platform === 'darwin'
        ? join(person, '.Trash')
        : join(env.XDG_DATA_HOME || join(person, '.local', 'share'), 'Trash'),
    folders: ['Documents', 'Desktop', 'Downloads', 'Pictures']
      .map((name) => join(person, name))
      .filter((path) => existsSync(path)),
  };
}

function configFolder(env: Env, platform: NodeJS.Platform, person: string): string {
  if (platform === 'win32') return join(env.APPDATA || join(person, 'AppData', 'Roaming'), 'Larkrow');
  if (platform === 'darwin') return join(person, 'Library', 'Application Support', 'Larkrow');
  return join(env.XDG_CONFIG_HOME || join(person, '.config'), 'larkrow');
}
