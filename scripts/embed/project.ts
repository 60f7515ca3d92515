/** Fresh projects with the packed library in them, outside the repository; what they install is kept for the next time. */
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const APPS = fileURLToPath(new URL('apps', import.meta.url));
export const KEPT = join(tmpdir(), 'flatwork-reckoner-embed');

export type Packages = Readonly<Record<string, string>>;

let tarball: string | undefined;

/** The library as it would be published. */
function packed(): string {
  if (tarball === undefined) {
    mkdirSync(KEPT, { recursive: true });
    // On a clean clone there is nothing to pack yet.
    if (!existsSync(join(ROOT, 'dist/index.js')))
      execFileSync('npm', ['run', '--silent', 'build'], { cwd: ROOT, stdio: 'ignore' });
    const name = execFileSync('npm', ['pack', '--silent', '--pack-destination', KEPT], {
      cwd: ROOT,
      encoding: 'utf8',
    });
    tarball = join(KEPT, name.trim());
  }
  return tarball;
}

function install(folder: string, packages: Packages): void {
  const done = join(folder, '.installed');
  if (existsSync(done)) return;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const description = { name: 'embed', version: '0.0.0', private: true, dependencies: packages };
  writeFileSync(join(folder, 'package.json'), JSON.stringify(description, undefined, 2));
  execFileSync('npm', ['install', '--silent', '--no-audit', '--no-fund', '--prefer-offline'], {
    cwd: folder,
    timeout: 240_000,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  writeFileSync(done, '');
}

/** Take the tarball apart where npm would put it; that it has no dependencies of its own is checked elsewhere. */
function putIn(folder: string): void {
  const place = join(folder, 'node_modules/flatwork-reckoner');
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  execFileSync('tar', ['-xzf', packed(), '--strip-components=1', '-C', place]);
}

/** A project of an app of `apps/`, with these packages beside the library. */
export class Project {
  readonly folder: string;

  constructor(app: string, packages: Packages, name: string = app) {
    const key = createHash('sha256').update(JSON.stringify(packages)).digest('hex').slice(0, 8);
    this.folder = join(KEPT, `${name}-${key}`);
    install(this.folder, packages);
    putIn(this.folder);
    cpSync(join(APPS, app), this.folder, { recursive: true });
  }

  /** Where something of the project is. */
  path(...parts: string[]): string {
    return join(this.folder, ...parts);
  }

  /** Run a program in the project; what it says is the error when it fails. */
  run(program: string, ...args: string[]): string {
    const { status, stdout, stderr, error } = spawnSync(program, args, {
      cwd: this.folder,
      encoding: 'utf8',
      timeout: 180_000,
      env: { ...process.env, NODE_OPTIONS: '', NODE_PATH: '' },
    });
    if (error) throw error;
    if (status !== 0) throw new Error(`${program} ${args.join(' ')}: ${status}\n${stdout}${stderr}`);
    return stdout;
  }

  /** Run a script with this Node. */
  node(...args: string[]): string {
    return this.run(process.execPath, ...args);
  }
}
