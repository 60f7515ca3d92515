/** The JSON Schema of a job document, whole. */
import type { JsonSchema } from '../reckoning/fields';

/**
 * The JSON Schema of a job document with that of every part in it, for editors, databases and whoever checks a file
 * before it is reckoned. The package has it as a file too, `flatwork-reckoner/job.schema.json`.
 *
 * It holds a part to what is wrong whatever the rest of the document says. What a part lacks may come from its element
 * or from what is shared, and a job that is known in part is sound; so nothing of a part must be there.
 *
 * @returns the schema, of draft 2020-12
 * @example
 * ```ts
 * import { jobSchema } from 'flatwork-reckoner/catalog';
 *
 * const schema = await jobSchema();
 * schema['$id']; // 'urn:flatwork-reckoner:job:1'
 * ```
 */
export const jobSchema = async (): Promise<JsonSchema> => {
  const { default: schema } = await import('./generated/job.schema.json');
  return schema;
};
