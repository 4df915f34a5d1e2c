// Names of a browser's types that the client's browser half refers to. Node's own types leave them out, and the whole of the web's
// types would let the rest of the program use a window that is not there.

interface MessagePort {
  postMessage(message: unknown): void;
}
interface Worker {
  postMessage(message: unknown): void;
  terminate(): void;
}
interface DedicatedWorkerGlobalScope {
  postMessage(message: unknown): void;
}
