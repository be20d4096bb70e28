/** How long a call to a store may take where that is not what is tested, ms: a busy machine is no broken store. */
export const PATIENT = 60_000;
