import { globSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { schemaFiles, schemaFolder } from '../../scripts/schemas.ts';

const project = resolve(import.meta.dirname, '../..');

describe('the JSON Schemas of the file formats', () => {
  it.each([...schemaFiles()])('%s is what the program reads today (npm run schemas)', (name, text) => {
    expect(readFileSync(join(schemaFolder, name), 'utf8')).toBe(text);
  });

  it('say of every entry what it is for', () => {
    for (const text of schemaFiles().values()) {
      const { $id, title, properties } = JSON.parse(text);
      expect({ $id, title }).toEqual({ $id: expect.stringMatching(/^urn:piecewright:/), title: expect.any(String) });
      const silent = Object.entries<{ description?: string }>(properties).filter(([, entry]) => !entry.description);
      expect(silent.map(([name]) => name)).toEqual([]);
    }
  });
});

describe('every file that comes with the program, and every one the tests keep, is sound by its schema', () => {
  // The dates are checked by the pattern beside their format.
  const compiled = (kind: string) =>
    new Ajv2020({ allErrors: true, formats: { date: true } }).compile(
      JSON.parse(readFileSync(join(schemaFolder, `${kind}.schema.json`), 'utf8')),
    );
  const folders = '{resources/{demo,recipes,mattresses,motifs},tests/fixtures/{patterns,formats}}';
  it.each(['pattern', 'recipe', 'mattresses', 'motif'])('%s files', (kind) => {
    const validate = compiled(kind);
    const files = globSync(`${folders}/*.${kind}.json`, { cwd: project });
    expect(files.length).toBeGreaterThan(0);
    for (const file of files) {
      validate(JSON.parse(readFileSync(join(project, file), 'utf8')));
      expect(validate.errors ?? [], file).toEqual([]);
    }
  });

  it('and what is wrong is seen', () => {
    const validate = compiled('recipe');
    expect(validate({ format: 'piecewright-recipe', version: 1 })).toBe(false);
  });
});
