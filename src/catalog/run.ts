/** Running a calculation by its id, and describing all of them to servers and assistants. */
import { unknownName } from '../grade/faults';
import { InputError, type InputErrorJson } from '../quantity/input-error';
import type { JsonSchema } from '../reckoning/fields';
import type { Figure, Result } from '../reckoning/result';
import type { ReckonOptions } from '../reckoning/system';
import { catalog, loadCalculation } from './list';

/** What comes of a calculation run by its id: plain data either way. */
export type RunOutcome =
  | {
      /** It went through. */
      readonly ok: true;
      /** What came out. */
      readonly result: Result<Record<string, Figure>>;
    }
  | {
      /** It was refused. */
      readonly ok: false;
      /** Why, as plain data. */
      readonly error: InputErrorJson;
    };

/** A calculation as a tool: what programs that call tools are told of it. */
export interface ToolDescription {
  /** Id of the calculation. */
  readonly name: string;
  /** What it works out. */
  readonly description: string;
  /** JSON Schema of its input, in short. */
  readonly inputSchema: JsonSchema;
}

const refused = (error: InputError): RunOutcome => ({ ok: false, error: error.toJSON() });

/** Text is JSON; what is none is left to the calculation to refuse. */
function parsed(input: unknown): unknown {
  if (typeof input !== 'string') return input;
  try {
    return JSON.parse(input);
  } catch {
    return input;
  }
}

/**
 * Run a calculation, or a whole job, by its id, on data or on JSON text. It never throws.
 *
 * @param id - an id of the catalog
 * @param input - its input, or the JSON text of it
 * @param options - the family of units to reckon and show in
 * @returns the result, or why it was refused; `unknown-name` for an id that is not in the catalog
 * @example
 * ```ts
 * import { runCalculation } from 'flatwork-reckoner/catalog';
 *
 * const outcome = await runCalculation('slope', '{ "slope": "2%", "over": "10 ft" }');
 * outcome.ok && JSON.stringify(outcome.result.figures['fall']); // '{"value":"2.4","unit":"in","dimension":"length"}'
 * const wrong = await runCalculation('slope', { slope: '2' });
 * wrong.ok ? '' : wrong.error.issues[0]?.code; // 'missing-unit'
 * ```
 */
export async function runCalculation(
  id: string,
  input: unknown,
  options?: ReckonOptions,
): Promise<RunOutcome> {
  const loaded = await loadCalculation(id);
  if (!loaded) {
    const fault = unknownName(
      String(id),
      catalog.map((entry) => entry.id),
    );
    return refused(new InputError([{ ...fault, path: '' }]));
  }
  const attempt = loaded.calculation.attempt(parsed(input), options);
  return attempt.ok ? attempt : refused(attempt.error);
}

const described = (ids: readonly string[]) =>
  Promise.all(ids.map(async (id) => ({ loaded: await loadCalculation(id) })));

const allIds = (): string[] => catalog.map(({ id }) => id);

/**
 * Calculations as tools, for assistants and other programs that call tools.
 *
 * @param ids - which; by default all
 * @returns name, description and input schema of each, plain data; ids that are not in the catalog are left out
 * @example
 * ```ts
 * import { toolDescriptions } from 'flatwork-reckoner/catalog';
 *
 * const [slope] = await toolDescriptions(['slope']);
 * slope?.name; // 'slope'
 * ```
 */
export async function toolDescriptions(ids: readonly string[] = allIds()): Promise<ToolDescription[]> {
  const all = await described(ids);
  return all.flatMap(({ loaded }) =>
    loaded ? [{ name: loaded.id, description: loaded.summary, inputSchema: loaded.toolSchema }] : [],
  );
}

/** Schemas stand in a document of their own each, so their references begin there. */
const whole = ({ $schema: _, ...schema }: { readonly [key: string]: unknown }): JsonSchema => schema;

const content = (schema: JsonSchema) => ({ 'application/json': { schema } });

const ISSUES: JsonSchema = {
  type: 'object',
  properties: {
    name: { const: 'InputError' },
    issues: {
      type: 'array',
      items: {
        type: 'object',
        properties: {
          code: { type: 'string' },
          path: { type: 'string' },
          says: { type: 'string' },
          sentence: { type: 'string' },
        },
        required: ['code', 'path', 'says', 'sentence'],
      },
    },
  },
  required: ['name', 'issues'],
};

/**
 * The calculations as an OpenAPI 3.1 document: a path for each, to which its input is posted.
 *
 * @param ids - which; by default all
 * @returns the document as plain data; ids that are not in the catalog are left out
 * @example
 * ```ts
 * import { openApi } from 'flatwork-reckoner/catalog';
 *
 * const document = await openApi(['slope']);
 * Object.keys(document['paths'] as object); // [ '/calculations/slope' ]
 * ```
 */
export async function openApi(ids: readonly string[] = allIds()): Promise<JsonSchema> {
  const all = await described(ids);
  const paths = all.flatMap(({ loaded }) => {
    if (!loaded) return [];
    const { id, title, summary, trade, formSchema, outputSchema } = loaded;
    const post = {
      operationId: id,
      summary: title,
      description: summary,
      tags: [trade],
      requestBody: { required: true, content: content(whole(formSchema)) },
      responses: {
        200: {
          description: 'The result.',
          content: content({
            type: 'object',
            properties: { id: { const: id }, figures: whole(outputSchema) },
            required: ['id', 'figures'],
          }),
        },
        422: { description: 'The input is refused.', content: content(ISSUES) },
      },
    };
    return [[`/calculations/${id}`, { post }] as const];
  });
  return {
    openapi: '3.1.0',
    info: { title: 'Calculations for concrete flatwork', version: '1' },
    jsonSchemaDialect: 'https://json-schema.org/draft/2020-12/schema',
    paths: Object.fromEntries(paths),
  };
}
