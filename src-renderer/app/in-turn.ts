/** Runs jobs one after the other, in the order they were asked for. One that fails does not stop the next. */
export function inTurn(): <T>(job: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (job) => {
    const mine = last.then(job);
    last = mine.catch(() => {});
    return mine;
  };
}
