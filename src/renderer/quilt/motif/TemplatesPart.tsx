import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { inksFor } from '../../../shared/diagrams/hatches.ts';
import { takeMotif } from '../../../shared/pattern/edits/index.ts';
import type { MotifTemplate } from '../../../shared/pattern/motifTemplate.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Figure } from '../../parts/figure/Figure.tsx';
import { useAct, useCurrentSize, usePattern, useWorked } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';
import { blocksFor, darkHalf, templateFigure } from './preview.ts';
import { MOTIF_TEMPLATES } from './templates.ts';

/** The classic settings, each drawn with the pattern's own block; a press takes one. */
export function TemplatesPart() {
  const { blocks, borders } = usePattern();
  const worked = useWorked();
  const size = useCurrentSize();
  const [chosen, choose] = useState<string | null>(null);
  const own = blocks.filter(({ id }) => !borders.some(({ pieced }) => pieced?.units.split(/\W/).includes(id)));
  const some = own.length === 0 ? blocks : own;
  const first = some.find(({ id }) => id === chosen) ?? some[0];
  if (worked === null || size === null || first === undefined) return null;
  return (
    <PanelPart title="Classic settings">
      {some.length < 2 ? null : (
        <Choice
          label="Beginning with block"
          lie={some.length > 6 ? 'list' : 'row'}
          value={first.id}
          options={some.map(({ id, name }) => ({ id, says: some.length > 6 ? `${id} ${name}` : id }))}
          onChange={choose}
        />
      )}
      <Templates worked={worked} size={size} first={first.id} />
    </PanelPart>
  );
}

interface TemplatesProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  /** Letter of the block they begin with. */
  readonly first: string;
}

function Templates({ worked, size, first }: TemplatesProps) {
  const block = worked.blocks.find(({ id }) => id === first);
  const dark = block === undefined ? null : darkHalf(block, worked.pattern.fabrics);
  const [plain, split] = [
    MOTIF_TEMPLATES.filter((one) => !one.split),
    MOTIF_TEMPLATES.filter((template) => template.split),
  ];
  const grid = (templates: readonly MotifTemplate[]) => (
    <ul className={styles.templates}>
      {templates.map((template) => (
        <li key={template.id}>
          <Template worked={worked} size={size} first={first} template={template} dark={dark ?? 'bottom-left'} />
        </li>
      ))}
    </ul>
  );
  if (dark !== null)
    return (
      <>
        {grid(split)}
        {grid(plain)}
      </>
    );
  return (
    <>
      {grid(plain)}
      <p className="quiet small">
        These are for a block that is dark on one side of its diagonal, which block {first} is not.
      </p>
      {grid(split)}
    </>
  );
}

type TemplateProps = TemplatesProps & {
  readonly template: MotifTemplate;
  readonly dark: NonNullable<ReturnType<typeof darkHalf>>;
};

function Template({ worked, size, first, template, dark }: TemplateProps) {
  const act = useAct();
  const { pattern, blocks } = worked;
  const letters = blocksFor(template, pattern, first);
  const figure = useMemo(
    () => (letters === null ? null : templateFigure(pattern, blocks, size.size, template, letters, dark)),
    [pattern, blocks, size.size, template, letters, dark],
  );
  const inks = useMemo(() => inksFor(pattern.fabrics), [pattern.fabrics]);
  if (letters === null || figure === null) return null;
  return (
    <Button
      className={styles.template ?? ''}
      aria-label={`${template.name}: ${template.summary}`}
      onPress={() => act(takeMotif, { template, blocks: letters, dark })}
    >
      <span aria-hidden="true" className={styles.templatePicture}>
        <Figure figure={figure} inks={inks} fit="box" />
      </span>
      <span>{template.name}</span>
    </Button>
  );
}
