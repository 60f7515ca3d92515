/** Fills a form that was made of a JSON Schema with an input, field by field, as a user would. */
import Ajv2020 from 'ajv/dist/2020';
import type { Page } from 'playwright-core';

type Path = readonly (string | number)[];

interface Schema {
  readonly type?: string | readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly title?: string;
  readonly $ref?: string;
}

/** The id that the form library gives to the field of a path. */
export const fieldId = (path: Path): string => ['root', ...path].join('_');

/** The paths of all texts of an input. */
export function textFields(value: unknown, path: Path = []): Path[] {
  if (typeof value === 'string') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => textFields(inner, [...path, key]));
}

/** What stands at a local reference. */
function resolved(schema: Schema, root: object): Schema {
  if (schema.$ref === undefined) return schema;
  const parts = schema.$ref.replace(/^#\//, '').split('/');
  const found = parts.reduce<unknown>((at, part) => (at as Record<string, unknown>)[part], root);
  return found as Schema;
}

class Filler {
  readonly #ajv = new Ajv2020({ strict: false });

  constructor(
    private readonly page: Page,
    private readonly root: object,
  ) {}

  /** The branch that takes a value. */
  #branchOf(branches: readonly Schema[], value: unknown, path: Path): number {
    const defs = '$defs' in this.root ? { $defs: this.root.$defs } : {};
    const index = branches.findIndex((branch) => this.#ajv.validate({ ...defs, ...branch }, value));
    if (index < 0) throw new Error(`${fieldId(path)}: no branch takes ${JSON.stringify(value)}`);
    return index;
  }

  async #fillBranch(
    way: 'anyOf' | 'oneOf',
    schema: Schema,
    value: unknown,
    path: Path,
    depth: number,
  ): Promise<void> {
    const branches = (schema[way] ?? []).map((branch) => resolved(branch, this.root));
    const index = this.#branchOf(branches, value, path);
    if (branches.every((branch) => branch.const !== undefined)) {
      await this.page.locator(`#${fieldId(path)}`).selectOption({ index: index + 1 });
      return;
    }
    // A choice within a choice has the same id.
    const select = this.page.locator(`[id="${fieldId(path)}__${way.toLowerCase()}_select"]`).nth(depth);
    await select.selectOption(String(index));
    await this.fill(branches[index] ?? {}, value, path, depth + 1);
    if (schema.properties && typeof value === 'object')
      await this.#fillMembers(schema, value as object, path);
  }

  async #fillMembers({ properties = {} }: Schema, value: object, path: Path): Promise<void> {
    for (const [key, inner] of Object.entries(value)) {
      const schema = properties[key];
      if (schema) await this.fill(schema, inner, [...path, key]);
    }
  }

  async #fillList(schema: Schema, list: readonly unknown[], path: Path): Promise<void> {
    const add = this.page
      .locator(`[id="${fieldId(path)}__add"], [id="${fieldId(path)}"] ~ * .rjsf-array-item-add button`)
      .last();
    for (const [i, item] of list.entries()) {
      const there = this.page.locator(`[id="${fieldId([...path, i])}"], [id^="${fieldId([...path, i])}_"]`);
      if ((await there.count()) === 0) await add.click();
      await this.fill(schema.items ?? {}, item, [...path, i]);
    }
  }

  /** The word of a choice comes with the choice, but where the choice was there before anything was chosen. */
  async #fillWord(word: unknown, path: Path): Promise<void> {
    const field = this.page.locator(`[id="${fieldId(path)}"]`);
    if ((await field.count()) === 1 && (await field.inputValue()) === '') await field.fill(String(word));
  }

  async #fillLeaf(schema: Schema, value: unknown, path: Path): Promise<void> {
    const field = this.page.locator(`[id="${fieldId(path)}"]`);
    if (typeof value === 'boolean' && (await field.getAttribute('type')) === 'checkbox')
      await field.setChecked(value);
    else if (schema.enum) await field.selectOption({ label: String(value) });
    else await field.fill(String(value));
  }

  async fill(given: Schema, value: unknown, path: Path, depth = 0): Promise<void> {
    const schema = resolved(given, this.root);
    if (schema.const !== undefined) return this.#fillWord(schema.const, path);
    if (schema.oneOf) await this.#fillBranch('oneOf', schema, value, path, depth);
    else if (schema.anyOf) await this.#fillBranch('anyOf', schema, value, path, depth);
    else if (Array.isArray(value)) await this.#fillList(schema, value, path);
    else if (typeof value === 'object' && value !== null) await this.#fillMembers(schema, value, path);
    else await this.#fillLeaf(schema, value, path);
  }
}

/** Fill the form of a schema with an input. */
export const fillForm = (page: Page, schema: object, input: unknown): Promise<void> =>
  new Filler(page, schema).fill(schema as Schema, input, []);
