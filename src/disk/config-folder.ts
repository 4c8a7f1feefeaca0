/** The user's configuration folder of lineword: keys and the inspector's own words. Never an inspection folder. */
import { homedir } from 'node:os';
import { join } from 'node:path';

/** LINEWORD_CONFIG when set; else the place the system gives to programs. The folder may not exist yet. */
export function configFolder(environment: NodeJS.ProcessEnv = process.env, platform = process.platform): string {
  if (environment.LINEWORD_CONFIG) return environment.LINEWORD_CONFIG;
  if (platform === 'win32') {
    return join(environment.APPDATA ?? join(homedir(), 'AppData', 'Roaming'), 'lineword');
  }
  if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'lineword');
  return join(environment.XDG_CONFIG_HOME || join(homedir(), '.config'), 'lineword');
}
