import { type Answer, CALLS, type Contract } from '../../shared/contract.ts';
import { knownRefusal, plainRefusal, Refused, refusalOf } from '../refusal.ts';

/** Whether the contract has a call of this name. */
export function isCall(name: unknown): name is keyof Contract {
  return typeof name === 'string' && Object.hasOwn(CALLS, name);
}

/**
 * Makes the named call and puts its answer or refusal into the envelope that crosses to the window. Never rejects; what
 * only a bug explains goes to `report`.
 */
export async function answer(
  service: Contract,
  name: unknown,
  args: unknown,
  report: (error: unknown) => void,
): Promise<Answer> {
  if (!isCall(name)) return refused(new Refused('not-found', 'Piecewright has no such call.'));
  if (!Array.isArray(args)) return refused(new Refused('bad-input', 'A call carries its arguments as a list.'));
  // The service checks the arguments; their types are a promise only inside one program.
  const call = service[name] as (input: unknown) => Promise<unknown>;
  try {
    return { value: (await call(args[0])) ?? null };
  } catch (error) {
    if (knownRefusal(error) === null) report(error);
    return { refusal: refusalOf(error) };
  }
}

function refused(error: Refused): Answer {
  return { refusal: plainRefusal(error) };
}
