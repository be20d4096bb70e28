/** What a dose is asked for with: the options of the command. */
export type DoseOptions = {
  readonly colourant: string;
  readonly portion: string;
  readonly strength?: string | undefined;
  readonly carrier?: string | undefined;
  readonly premix?: string | undefined;
  readonly with: readonly string[];
  readonly recipe?: string | undefined;
};
