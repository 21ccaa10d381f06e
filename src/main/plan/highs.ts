import loadHighs from 'highs';
import type { Column } from '../../shared/cloth/strips/basis.ts';
import type { Cover, CoverAnswer, CoverSolver } from '../../shared/cloth/strips/proof/cover.ts';

type Highs = Awaited<ReturnType<typeof loadHighs>>;
type Model = ReturnType<Highs['createModel']>;
type ModelData = Extract<Parameters<Highs['createModel']>[0], { numCols: number }>;

let loading: Promise<Highs> | undefined;

/**
 * HiGHS as a solver of covers (Huangfu and Hall, "Parallelizing the dual revised simplex method", 2018). It is loaded once.
 */
export async function highsSolver(): Promise<CoverSolver> {
  loading ??= loadHighs();
  const highs = await loading;
  return (cover, seconds) => {
    if (seconds <= 0 || cover.columns.length === 0) return { times: null, bound: 0 };
    return highs.withModel(modelOf(cover, highs.infinity), (model) => solved(highs, model, cover, seconds));
  };
}

function solved(highs: Highs, model: Model, cover: Cover, seconds: number): CoverAnswer {
  const { callbackType, modelStatus } = highs.constants;
  model.options.set({
    output_flag: false,
    time_limit: seconds,
    // Columns listed for a proof have nothing left that presolving could take away.
    presolve: 'off',
    mip_rel_gap: 0,
    // A plan less than a step longer than the bound is the shortest there is.
    mip_abs_gap: cover.step > 0 ? cover.step * 0.999 : 1e-6,
  });
  model.run({
    [callbackType.mipInterrupt](event) {
      if ((event.data.mip_dual_bound ?? 0) > cover.most) event.interrupt();
    },
  });
  const status = model.getModelStatus();
  if (status === modelStatus.infeasible) return { times: null, bound: Number.POSITIVE_INFINITY };
  const length = model.getObjectiveValue();
  const bound = Math.max(0, Number(model.info.get('mip_dual_bound')));
  const found = Number.isFinite(length) && model.info.get('primal_solution_status') === FEASIBLE;
  return { times: found ? Array.from(model.getSolution().colValue, (n) => Math.max(0, Math.round(n))) : null, bound };
}

/** HiGHS's name for a solution that keeps every row. */
const FEASIBLE = 2;

/** One row for each kind: cut it at least so often. */
function modelOf({ columns, demand }: Cover, infinity: number): ModelData {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { each } of columns) {
    each.forEach((n, row) => {
      if (n === 0) return;
      indices.push(row);
      values.push(n);
    });
    starts.push(indices.length);
  }
  const numRows = demand.length;
  const numCols = columns.length;
  return {
    numCols,
    numRows,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(() => 0),
    colUpper: columns.map((column) => timesAtMost(column, demand)),
    rowLower: [...demand],
    rowUpper: demand.map(() => infinity),
    matrix: { format: 'csc', numRows, numCols, starts, indices, values },
    integrality: new Int32Array(numCols).fill(1),
  };
}

/** Cut more often than this, a strip would be left over. */
function timesAtMost({ each }: Column, demand: readonly number[]): number {
  return demand.reduce((most, n, row) => {
    const many = each[row] as number;
    return many > 0 ? Math.max(most, Math.ceil(n / many)) : most;
  }, 0);
}
