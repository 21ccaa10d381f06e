import type { IncomingMessage } from 'node:http';
import type { Answer, Contract, Refusal } from '../../shared/contract.ts';
import { answer } from '../service/answer.ts';
import { bodyOf } from './body.ts';

/** The answer to a call, with the HTTP status that says the same. */
export interface CallAnswer {
  readonly status: number;
  readonly answer: Answer;
}

const STATUS: Readonly<Record<Refusal['kind'], number>> = {
  'not-found': 404,
  'changed-elsewhere': 409,
  'bad-input': 400,
  'newer-file': 422,
  'no-room': 507,
  stopped: 409,
  broken: 500,
};

/** Makes the call that a POST asks for: its name from the path, its arguments as a JSON list in the body. */
export async function answerCall(
  service: Contract,
  name: string,
  request: IncomingMessage,
  report: (error: unknown) => void,
): Promise<CallAnswer> {
  if (!/^application\/json\b/i.test(request.headers['content-type'] ?? '')) {
    request.resume();
    return refused(415, 'A call carries JSON.');
  }
  const text = await bodyOf(request);
  if (text === null) return refused(413, 'This is more than Piecewright takes at once. Nothing was changed.');
  const args = parsed(text);
  if (args === undefined) return refused(400, 'The call is not JSON.');
  const made = await answer(service, name, args, report);
  return { status: 'refusal' in made ? STATUS[made.refusal.kind] : 200, answer: made };
}

function refused(status: number, words: string): CallAnswer {
  return { status, answer: { refusal: { kind: 'bad-input', words } } };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
