// Waiting by asking again, with an end: nothing of a test hangs on how quick a machine is.

/** Asks until it is enough; `before` is awaited before each question. Throws after `limit` ms with the last answer. */
export async function until<T>(
  read: () => T | Thenable<T>,
  enough: (value: T) => boolean,
  before?: () => Promise<void>,
  limit = 20_000,
): Promise<T> {
  for (let waited = 0; ; waited += 50) {
    await before?.();
    const value = await read();
    if (enough(value)) return value;
    if (waited > limit) throw new Error(`still not so after ${limit} ms: ${JSON.stringify(value)?.slice(0, 2000)}`);
    await new Promise((resolve) => {
      setTimeout(resolve, 50);
    });
  }
}
