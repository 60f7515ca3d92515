/**
 * The modules of the project in this process: compiled once, made anew as often as wanted, with one file's
 * text changed. Only what takes in the changed file is made anew; all else is shared.
 */
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import vm from 'node:vm';
import ts from 'typescript';

type Exports = Record<string, unknown>;
type Load = (exports: Exports, require: (from: string) => unknown, url: string) => void;

interface Kept {
  readonly read: () => string | undefined;
  readonly write: (text: string) => void;
}

const isFile = (name: string): boolean => name.endsWith('.ts');
const isData = (name: string): boolean => name.endsWith('.json');

export class Modules {
  readonly #root: string;
  readonly #compiled = new Map<string, Load>();
  readonly #resolved = new Map<string, string>();
  readonly #imports = new Map<string, string[]>();
  readonly #packages = new Map<string, unknown>();
  readonly #instances = new Map<string, Exports>();
  /** Every file that a file takes in, itself and at any remove. */
  readonly #reach = new Map<string, Set<string>>();

  constructor(root: string, packages: Readonly<Record<string, unknown>>) {
    this.#root = root;
    for (const [name, made] of Object.entries(packages)) this.#packages.set(name, made);
  }

  text(file: string): string {
    return readFileSync(join(this.#root, file), 'utf8');
  }

  #resolve(file: string, from: string): string {
    if (!from.startsWith('.')) return from;
    const key = `${dirname(file)} ${from}`;
    const known = this.#resolved.get(key);
    if (known) return known;
    const base = relative(this.#root, join(this.#root, dirname(file), from));
    const found = [`${base}.ts`, `${base}/index.ts`, base].find((f) => existsSync(join(this.#root, f)));
    if (!found) throw new Error(`${file} takes in ${from}, which is not there`);
    this.#resolved.set(key, found);
    return found;
  }

  /** What is kept from one run to the next under a name made of `parts`. */
  #kept(parts: readonly string[]): Kept {
    const name = createHash('sha1').update(parts.join('\n')).digest('hex');
    const path = join(this.#root, 'node_modules/.cache/mutation', name);
    return {
      read: () => (existsSync(path) ? readFileSync(path, 'utf8') : undefined),
      write: (text) => {
        mkdirSync(dirname(path), { recursive: true });
        writeFileSync(`${path}.${process.pid}`, text);
        renameSync(`${path}.${process.pid}`, path);
      },
    };
  }

  /** Kept for as long as a file, all that it takes in and the vectors are the same. */
  keptFor(file: string, more: readonly string[]): Kept {
    const files = [...this.reach(file)].filter(isFile).sort();
    return this.#kept([file, ...more, ...files.map((f) => this.text(f)), this.#vectors()]);
  }

  /** The vectors, by their sizes and when they were written. */
  #vectors(): string {
    const folder = join(this.#root, 'vectors');
    const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
    return names
      .map((name) => {
        const { size, mtimeMs } = statSync(join(folder, name));
        return `${name} ${size} ${mtimeMs}`;
      })
      .join();
  }

  /** As plain script, kept from one run to the next. */
  #translated(file: string, text: string): string {
    const kept = this.#kept([ts.version, text]);
    const known = kept.read();
    if (known !== undefined) return known;
    const { outputText } = ts.transpileModule(text, {
      fileName: file,
      compilerOptions: {
        module: ts.ModuleKind.CommonJS,
        target: ts.ScriptTarget.ESNext,
        esModuleInterop: true,
      },
    });
    const code = outputText.replace(/\bimport\.meta\.url\b/g, '__url');
    kept.write(code);
    return code;
  }

  #compile(file: string, text: string): Load {
    const code = this.#translated(file, text);
    return vm.runInThisContext(`(function (exports, require, __url) {${code}\n})`, {
      filename: file,
    }) as Load;
  }

  /** What a file takes in when it runs. */
  #importsOf(file: string): string[] {
    const known = this.#imports.get(file);
    if (known) return known;
    const taken = [
      ...this.text(file).matchAll(
        /^(?:(?:import(?! type\b)|export(?! type\b)|\}).* from|import) '([^']+)';$/gm,
      ),
    ];
    const made = taken.map(([, from = '']) => this.#resolve(file, from));
    this.#imports.set(file, made);
    return made;
  }

  #known(file: string): Load {
    const known = this.#compiled.get(file);
    if (known) return known;
    const made = this.#compile(file, this.text(file));
    this.#compiled.set(file, made);
    return made;
  }

  /** Every file and package that `file` takes in, itself and at any remove. */
  reach(file: string): ReadonlySet<string> {
    const known = this.#reach.get(file);
    if (known) return known;
    const reached = new Set([file]);
    const open = [file];
    for (let at = open.pop(); at !== undefined; at = open.pop())
      for (const next of this.#importsOf(at)) {
        if (reached.has(next)) continue;
        reached.add(next);
        if (isFile(next)) open.push(next);
      }
    this.#reach.set(file, reached);
    return reached;
  }

  /** Brings in the packages that the files take in; these are never made anew. */
  async bringPackages(files: readonly string[]): Promise<void> {
    for (const name of new Set(files.flatMap((file) => [...this.reach(file)]))) {
      if (isFile(name) || isData(name) || this.#packages.has(name)) continue;
      const brought = (await import(name)) as Exports;
      this.#packages.set(name, { ...brought, __esModule: true });
    }
  }

  /** Puts other text in place of a file's own from now on. */
  replace(file: string, text: string): void {
    this.#compiled.set(file, this.#compile(file, text));
  }

  /** A way to load modules in which `file` reads `text`, and all else is as it is. */
  changed(file: string, text: string): (wanted: string) => Exports {
    const own = this.#compile(file, text);
    const instances = new Map<string, Exports>();
    const load = (wanted: string): Exports => {
      const anew = this.reach(wanted).has(file);
      return this.#instance(
        wanted,
        anew ? instances : this.#instances,
        load,
        wanted === file ? own : undefined,
      );
    };
    return load;
  }

  load = (wanted: string): Exports => this.#instance(wanted, this.#instances, this.load);

  #instance(
    file: string,
    instances: Map<string, Exports>,
    load: (wanted: string) => Exports,
    compiled: Load = this.#known(file),
  ): Exports {
    const known = instances.get(file);
    if (known) return known;
    const made: Exports = {};
    instances.set(file, made);
    const require = (from: string): unknown => {
      const target = this.#resolve(file, from);
      if (isData(target)) return { default: JSON.parse(this.text(target)), __esModule: true };
      return isFile(target) ? load(target) : this.#packages.get(target);
    };
    compiled(made, require, pathToFileURL(join(this.#root, file)).href);
    return made;
  }
}
