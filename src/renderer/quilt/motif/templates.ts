import { type MotifTemplate, motifTemplateSchema } from '../../../shared/pattern/motifTemplate.ts';

const files = import.meta.glob<unknown>('../../../../resources/motifs/*.motif.json', {
  eager: true,
  import: 'default',
});

/** The classic settings that come with the studio; a new file in `resources/motifs` is one more. */
export const MOTIF_TEMPLATES: readonly MotifTemplate[] = Object.keys(files)
  .sort()
  .map((name) => motifTemplateSchema.parse(files[name]));
