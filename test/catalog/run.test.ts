/** Running calculations by id, and what servers and assistants are told of them. */
import Ajv from 'ajv/dist/2020';
import { describe, expect, it } from 'vitest';
import { catalog, openApi, runCalculation, toolDescriptions } from '../../src/catalog/index';

describe('running by id', () => {
  it('takes data and JSON text alike, a whole job too', async () => {
    const job = {
      version: 1,
      elements: [
        {
          name: 'pad',
          outline: { shape: 'rectangle', length: '27 ft', width: '12 ft' },
          thickness: '4 in',
          slab: true,
        },
      ],
    };
    for (const input of [job, JSON.stringify(job)]) {
      const outcome = await runCalculation('job-takeoff', input);
      expect(outcome.ok && JSON.parse(JSON.stringify(outcome.result.figures['concrete']))).toMatchObject({
        dimension: 'volume',
      });
    }
  });

  it('refuses as plain data, and never throws', async () => {
    for (const input of [undefined, null, 'no JSON', '[]', 7, { slope: '2' }]) {
      const outcome = await runCalculation('slope', input);
      expect(outcome.ok).toBe(false);
      expect(structuredClone(outcome)).toEqual(outcome);
    }
    const outcome = await runCalculation('__proto__', {});
    expect(outcome.ok ? [] : outcome.error.issues.map(({ code }) => code)).toEqual(['unknown-name']);
  });
});

describe('what is told of calculations', () => {
  it('is a tool for each', async () => {
    const tools = await toolDescriptions();
    expect(tools.map(({ name }) => name)).toEqual(catalog.map(({ id }) => id));
    for (const { description, inputSchema } of tools) {
      expect(description).not.toBe('');
      expect(inputSchema['type']).toBe('object');
    }
    expect(await toolDescriptions(['none of these'])).toEqual([]);
  });

  it('is an OpenAPI document with a path for each, whose schemas compile', async () => {
    const document = await openApi();
    const paths = document['paths'] as Record<
      string,
      { post: { requestBody: { content: Record<string, { schema: object }> } } }
    >;
    expect(Object.keys(paths)).toEqual(catalog.map(({ id }) => `/calculations/${id}`));
    const ajv = new Ajv({ strict: false });
    for (const { post } of Object.values(paths)) {
      expect(ajv.compile(post.requestBody.content['application/json']?.schema ?? {})).toBeTypeOf('function');
    }
  });
});
