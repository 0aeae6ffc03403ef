// The committed WebAssembly package gives the same digits as the native build: every vector that the
// native tests keep is replayed here, and signs of life of the other bindings are checked on the way.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { provide } from '../../web/core/lookup.js';
import * as rules from '../../web/core/pkg/gagwright_core.js';
import * as techniques from '../../web/techniques/pkg/gagwright_techniques.js';

const at = (path) => new URL(`../../${path}`, import.meta.url);
for (const [one, name] of [[rules, 'core'], [techniques, 'techniques']]) {
  one.initSync({ module: readFileSync(at(`web/${name}/pkg/gagwright_${name}_bg.wasm`)) });
}
provide(techniques);
const core = { ...rules, ...techniques };
const vectors = JSON.parse(readFileSync(at('server/mechanics/tests/vectors.json'), 'utf8'));

// -0 and 0 are different bytes, so numbers are compared as they print, which in JavaScript as in Rust is
// the shortest text that reads back to the same double.
const printed = (value) =>
  JSON.stringify(value, (_, x) => (Object.is(x, -0) ? '-0' : x));

function answer(technique, inputs) {
  let assessment;
  try {
    assessment = JSON.parse(core.assess(technique, JSON.stringify(inputs)));
  } catch (error) {
    return { error: error.message };
  }
  return {
    figures: assessment.figures.map((f) => [f.name, f.value, f.low, f.high]),
    checks: assessment.checks.map((c) => [c.name, c.status]),
  };
}

test('every vector gives the same digits in WebAssembly', () => {
  assert.ok(vectors.length >= 160, `only ${vectors.length} vectors`);
  const names = new Set(vectors.map((vector) => vector.technique));
  const described = JSON.parse(core.techniques()).map((technique) => technique.name);
  assert.deepEqual([...names].sort(), [...described].sort());
  for (const vector of vectors) {
    assert.equal(
      printed(answer(vector.technique, vector.inputs)),
      printed(vector.answer),
      `${vector.technique} ${JSON.stringify(vector.inputs)}`,
    );
  }
});

// Made just before by `cargo run -p gagwright-mechanics --example answers >tests/out/answers.ndjson`.
test('a thousand sets of inputs for each technique give the same bytes as natively', () => {
  const lines = readFileSync(at('tests/out/answers.ndjson'), 'utf8').trimEnd().split('\n');
  const described = JSON.parse(core.techniques()).length;
  assert.equal(lines.length, 1000 * described);
  let answered = 0;
  for (const line of lines) {
    const { technique, sha256 } = JSON.parse(line);
    // The inputs as they were written: reading and writing them again would be another document.
    const inputs = line.slice(line.indexOf('"inputs":') + 9, line.lastIndexOf(',"sha256"'));
    let answer;
    try {
      answer = core.assess(technique, inputs);
      answered += 1;
    } catch (error) {
      answer = error.message;
    }
    assert.equal(createHash('sha256').update(answer).digest('hex'), sha256, line);
  }
  assert.ok(answered > 0.9 * lines.length, `only ${answered} of ${lines.length} were answered`);
});

test('errors are thrown with a sentence that names the field', () => {
  assert.throws(
    () => core.assess('high-fall', JSON.stringify({ drop_height: { value: -3 } })),
    /drop_height/,
  );
  assert.throws(() => core.assess('levitation', '{}'), /no technique "levitation"/);
  assert.throws(() => core.parse_quantity('length', '3 kg'), /length/);
});

test('quantities are read and shown as people write them', () => {
  assert.equal(core.parse_quantity('length', '100 ft'), 30.48);
  assert.equal(core.format_quantity('length', 30.48, 'imperial'), '100 ft');
});

test('canonical form is RFC 8785 (its section 3.2.2 sample)', () => {
  const sample = String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`;
  assert.equal(
    core.canonical(sample),
    String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
  );
});

test('a leaf is found under its root and nowhere else (RFC 6962, two leaves)', () => {
  const proof = {
    leaf: 0,
    size: 2,
    hash: '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
    root: 'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
    path: ['96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7'],
  };
  core.verify_inclusion(JSON.stringify(proof));
  assert.throws(() => core.verify_inclusion(JSON.stringify({ ...proof, leaf: 1 })));
});
