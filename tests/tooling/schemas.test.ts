import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { schemaFiles, schemaFolder } from '../../scripts/schemas.ts';

describe('the JSON Schemas of the file formats', () => {
  it.each([...schemaFiles()])('%s is what the program reads today (npm run schemas)', (name, text) => {
    expect(readFileSync(join(schemaFolder, name), 'utf8')).toBe(text);
  });
});
