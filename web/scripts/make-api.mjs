// Makes the app's types from the API's description: `src/api/schema.d.ts` (shapes and addresses) and
// `src/api/values.ts` (the lists of names that forms and tables go through). With `--check` it writes
// nothing and fails when either is not what the description says.

import { readFile, writeFile } from 'node:fs/promises';
import openapiTS, { astToString, transformSchemaObject } from 'openapi-typescript';
import ts from 'typescript';

const at = (name) => new URL(`../src/api/${name}`, import.meta.url);
const description = JSON.parse(await readFile(at('openapi.json'), 'utf8'));

// Every refusal is a `Problem`: said once in the description's components, not at each address.
for (const operations of Object.values(description.paths)) {
  for (const { responses } of Object.values(operations)) {
    for (const status of Object.keys(responses)) if (!status.startsWith('2')) delete responses[status];
  }
}

/** Names that the app lists in this order: the constant, and the schema that has them. */
const LISTS = {
  FACETS: 'Facet',
  HAZARDS: 'Hazard',
  ROLES: 'Role',
  PERMISSIONS: 'Permission',
  SEVERITIES: 'Severity',
  PROBABILITIES: 'Probability',
  CONTROL_KINDS: 'ControlKind',
};

/** A map whose keys are known names becomes a record of those, each of which may be missing. */
function namedKeys(schema, options) {
  const names = schema.propertyNames?.enum;
  if (!names || !schema.additionalProperties) return undefined;
  const keys = ts.factory.createUnionTypeNode(
    names.map((name) => ts.factory.createLiteralTypeNode(ts.factory.createStringLiteral(name))),
  );
  const value = transformSchemaObject(schema.additionalProperties, options);
  const record = ts.factory.createTypeReferenceNode('Record', [keys, value]);
  return ts.factory.createTypeReferenceNode('Partial', [record]);
}

const shapes = astToString(
  await openapiTS(description, {
    alphabetize: false,
    arrayLength: true,
    defaultNonNullable: false,
    silent: true,
    transform: namedKeys,
  }),
);
const head =
  '// Made from openapi.json by `npm run api`. Changes belong in the server, which describes itself.\n\n';
const lists = Object.entries(LISTS).map(([constant, schema]) => {
  const values = description.components.schemas[schema].enum.map((name) => `  '${name}',`).join('\n');
  return `export const ${constant} = [\n${values}\n] as const;\n`;
});

const made = { 'schema.d.ts': head + shapes, 'values.ts': head + lists.join('\n') };
const stale = [];
for (const [name, text] of Object.entries(made)) {
  if (!process.argv.includes('--check')) await writeFile(at(name), text);
  else if ((await readFile(at(name), 'utf8').catch(() => '')) !== text) stale.push(`src/api/${name}`);
}
if (stale.length > 0) {
  console.error(`${stale.join(' and ')} are not what src/api/openapi.json says. Run: npm run api`);
  process.exit(1);
}
