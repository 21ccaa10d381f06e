import type { PublishedFile, PublishRequest } from '../../shared/contract.ts';

/** Tells how far the work has come, 0 to 1, and what is being done, in words. */
export type Tell = (progress: number, doing: string) => void;

/**
 * Makes the printed pattern. Throws a `Refused` for what the designer must know (findings that stop publishing, text that
 * does not fit its page), and gives up soon after `signal` is raised.
 */
export interface Publisher {
  make(request: PublishRequest, tell: Tell, signal: AbortSignal): Promise<PublishedFile>;
  /** Ends whatever is still running. */
  close(): Promise<void>;
}
