import { readdirSync, readFileSync } from 'node:fs';
import { type MotifTemplate, motifTemplateSchema } from '../../src/shared/pattern/motifTemplate.ts';

const folder = new URL('../../resources/motifs/', import.meta.url);

/** Every classic setting that comes with the studio. */
export function motifTemplates(): readonly MotifTemplate[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.motif.json'));
  return files.map((name) => motifTemplateSchema.parse(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))));
}
