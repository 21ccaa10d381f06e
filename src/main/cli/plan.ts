import {
  type BareFile,
  type BareQuestion,
  bareFileSchema,
  bareQuestions,
  tooWideFor,
} from '../../shared/cloth/bare/bareProblem.ts';
import { planStrips, type StripPlan } from '../../shared/cloth/strips/planStrips.ts';
import { schemaFindings } from '../../shared/pattern/issues.ts';
import { parse } from '../../shared/pattern/reading.ts';
import { type Prover, workerProver } from '../plan/workerProver.ts';
import { Refused } from '../refusal.ts';
import { EXIT } from './exit.ts';
import { jsonText } from './json.ts';
import { taken } from './open.ts';
import { readSource, type Source } from './source.ts';
import { tableText } from './table.ts';
import type { Terminal } from './terminal.ts';

/** What a bare cutting problem came to. */
interface Answer {
  readonly name: string;
  readonly way: BareQuestion['way'];
  /** Length, or number of stocks, of the plan there is at once. */
  readonly live: number;
  /** The same of the plan after the proof. */
  readonly proven: number;
  /** No plan is shorter. */
  readonly bound: number;
  /** Whether fewer cannot do. */
  readonly optimal: boolean;
  /** Seconds that the proof took. */
  readonly seconds: number;
  readonly plan: readonly PlannedStrip[];
}

interface PlannedStrip {
  readonly height: number;
  readonly times: number;
  readonly pieces: readonly {
    readonly item: number;
    readonly width: number;
    readonly height: number;
    readonly count: number;
  }[];
}

/**
 * `piecewright plan FILE`: bare cutting problems, each with its live and its proven plan.
 * @param seconds what the proof of one problem may take
 */
export async function runPlan(file: string, seconds: number, json: boolean, terminal: Terminal): Promise<number> {
  const source = readSource(file);
  const questions = bareQuestions(readProblems(source));
  const lost = questions.map(tooWideFor).find((words) => words !== null);
  if (lost != null) throw new Refused('bad-input', `${source.path}: ${lost}`);
  const prover = workerProver();
  const answers: Answer[] = [];
  try {
    for (const question of questions) answers.push(await answered(question, prover, seconds));
  } finally {
    await prover.close();
  }
  terminal.say(json ? jsonText(answers) : answersText(answers));
  return EXIT.fine;
}

function readProblems(source: Source): BareFile {
  const parsed = parse(source.text);
  const data = taken(source, parsed.ok ? parsed : { ...parsed, newer: false });
  const checked = bareFileSchema.safeParse(data, { reportInput: true });
  if (checked.success) return checked.data;
  return taken(source, { ok: false, findings: schemaFindings(checked.error.issues), newer: false });
}

async function answered({ name, way, width, kinds }: BareQuestion, prover: Prover, seconds: number): Promise<Answer> {
  const live = planStrips(kinds, width);
  const start = performance.now();
  const best = live.proven ? live : await prover.prove({ kinds, width, seconds }, () => undefined, NEVER);
  const took = Math.round(performance.now() - start) / 1000;
  return {
    name,
    way,
    live: live.length,
    proven: best.length,
    bound: best.bound,
    optimal: best.proven,
    seconds: took,
    plan: stripsOf(best),
  };
}

const NEVER = new AbortController().signal;

function stripsOf({ strips }: StripPlan): readonly PlannedStrip[] {
  return strips.map(({ height, times, laid }) => ({
    height,
    times,
    pieces: laid.map(({ lie, count }) => ({ item: lie.kind, width: lie.width, height: lie.height, count })),
  }));
}

const WAYS: Readonly<Record<BareQuestion['way'], string>> = { fixed: 'as they lie', turned: 'turned', stock: 'stock' };

function answersText(answers: readonly Answer[]): string {
  const number = (value: number) => String(Math.round(value * 1e4) / 1e4);
  const rows = answers.map(({ name, way, live, proven, bound, optimal, seconds }) => [
    name,
    WAYS[way],
    number(live),
    number(proven),
    number(bound),
    optimal ? 'less cannot do' : `may be ${number(proven - bound)} too long`,
    `${seconds.toFixed(2)} s`,
  ]);
  const right = { align: 'right' } as const;
  const columns = [
    { title: 'Problem' },
    { title: 'Pieces' },
    { title: 'Live', ...right },
    { title: 'Plan', ...right },
    { title: 'Bound', ...right },
    { title: 'Proof' },
    { title: 'Took', ...right },
  ];
  return tableText(columns, rows);
}
