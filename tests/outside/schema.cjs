// SPDX-License-Identifier: MIT
// The schema for editors, tried with another program's validator: schema.cjs PLATEWRIGHT GOOD.yaml...
// It must be a valid schema of draft 2020-12, take every good file, and refuse every broken one, as `check` does.
'use strict';
const {execFileSync, spawnSync} = require('child_process');
const fs = require('fs');
const Ajv2020 = require('ajv/dist/2020').default;
const YAML = require('yaml');

const broken = {
    'no title': 'coat: {cloth: blue}',
    'an unknown group': 'plate: A\ncoats: {cloth: blue}',
    'an unknown property': 'plate: A\ncoat: {clot: blue}',
    'a word that is no cut of cuffs': 'plate: A\ncuffs: {shape: square}',
    'a count in words': 'plate: A\ncuffs: {buttons: three}',
    'a count too high': 'plate: A\ncuffs: {buttons: 700}',
    'a count below nothing': 'plate: A\ncuffs: {buttons: -1}',
    'a broken count': 'plate: A\ncuffs: {buttons: 2.5}',
    'a list for a colour': 'plate: A\ncoat: {cloth: [blue, red]}',
    'a group inside a property': 'plate: A\ncoat: {cloth: {name: blue}}',
    'a list for a plate': '- plate: A',
    'a title that is a list': 'plate: [A]',
    'notes that are a group': 'plate: A\nnotes: {first: x}',
    'a regiment with a number in words': 'regiment: A\nnumber: one',
    'a departure without what was worn': 'regiment: A\ndepartures: [{why: x}]',
    'a regulation with an unknown key': 'regulation: A\nclases: {}',
    'a regulation with a broken day': 'regulation: A\nuntil: 1 May 1788',
    'a rule that nothing is worn by': 'regulation: A\nrules: [{name: a}]',
    'a place without a number': 'regulation: A\nseries: [{colour: red, regiments: [{name: a}]}]',
    'a certainty of no kind': 'regulation: A\neveryone: {coat: {cloth: red, certainty: sure}}',
};

const [program, ...good] = process.argv.slice(2);
const schema = JSON.parse(execFileSync(program, ['schema'], {encoding: 'utf8'}));
let failures = 0;

function expect(holds, words) {
    if (holds) return;
    ++failures;
    console.error(words);
}

expect(schema.$schema === 'https://json-schema.org/draft/2020-12/schema', `the schema names the draft ${schema.$schema}`);
const ajv = new Ajv2020({strict: true, allErrors: true, allowUnionTypes: true});
const validate = ajv.compile(schema);  // throws on a schema that is not valid itself

for (const path of good) {
    const valid = validate(YAML.parse(fs.readFileSync(path, 'utf8')));
    expect(valid, `the schema refuses ${path}: ${JSON.stringify(validate.errors, null, 1)}`);
}
for (const [name, text] of Object.entries(broken)) {
    expect(!validate(YAML.parse(text)), `the schema takes ${name}`);
    const check = spawnSync(program, ['check', '-'], {input: text + '\n', encoding: 'utf8'});
    expect(check.status === 1, `check takes ${name} (exit code ${check.status})`);
}
console.log(`${good.length} good files, ${Object.keys(broken).length} broken ones, ${failures} failures`);
process.exit(failures > 0 || good.length === 0 ? 1 : 0);
