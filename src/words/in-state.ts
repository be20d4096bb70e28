/** Names with the state that a thing is in behind them, in brackets; a thing that has none keeps its name. */
export const inState = <Id extends string>(
  names: Readonly<Record<Id, string>>,
  states: Readonly<Partial<Record<Id, string>>>,
): Readonly<Record<Id, string>> =>
  Object.fromEntries(
    Object.entries<string>(names).map(([id, name]) => {
      const state = states[id as Id];
      return [id, state === undefined ? name : `${name} (${state})`];
    }),
  ) as Record<Id, string>;
