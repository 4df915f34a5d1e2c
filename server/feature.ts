// The shape of a feature: what it adds to the server's abilities, and what it answers. One file a feature; a fault in one is told and
// ends nothing else.

import {
  LSPErrorCodes,
  ErrorCodes,
  ResponseError,
  type CancellationToken,
  type ServerCapabilities,
} from "vscode-languageserver";
import type { Session } from "./session.ts";

/** Wraps an answer: cancelled questions end, faults become an error of that request alone. */
export type Answer = <P, R>(
  name: string,
  answer: (params: P, token: CancellationToken) => R | Promise<R>,
) => (params: P, token: CancellationToken) => Promise<R>;

export interface Feature {
  readonly name: string;
  /** Asked once, after the client said what it can do. */
  readonly abilities?: (session: Session) => Partial<ServerCapabilities>;
  readonly start: (session: Session, answer: Answer) => void;
}

/** Identity, for the types. */
export const feature = (of: Feature): Feature => of;

export function answerer(session: Session): Answer {
  return (name, answer) => async (params, token) => {
    // What the client has sent since is read first: a question that it took back costs nothing.
    await new Promise<void>((resolve) => {
      setTimeout(resolve, 0);
    });
    if (token.isCancellationRequested) throw new ResponseError(LSPErrorCodes.RequestCancelled, "Taken back");
    try {
      const given = await answer(params, token);
      // Taken back while it was worked out: what there is of it may be half of it.
      if (token.isCancellationRequested) throw new ResponseError(LSPErrorCodes.RequestCancelled, "Taken back");
      return given;
    } catch (error) {
      if (error instanceof ResponseError) throw error;
      session.connection.console.error(
        `${name}: ${error instanceof Error ? `${error.message}\n${error.stack ?? ""}` : String(error)}`,
      );
      throw new ResponseError(
        ErrorCodes.InternalError,
        `${name} could not be answered for this text; the rest goes on`,
      );
    } finally {
      for (const tell of session.onAnswer) tell();
    }
  };
}
