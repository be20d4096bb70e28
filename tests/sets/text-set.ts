/** A set of texts by one kind of maker, as its writer labelled it. */
export type TextSet = {
  readonly writer: string;
  readonly questions: readonly { text: string; language: Written; job: string; expect: Expect }[];
  readonly amounts: readonly {
    text: string;
    language: string;
    kind: string;
    expect: Readonly<Record<string, unknown>>;
    /** The size is not told: right is a question back. */
    ask?: boolean;
  }[];
  readonly colours: readonly { text: string; hex: string }[];
  readonly scope: readonly { text: string; language: Written; outside: boolean }[];
};
/** Some makers write both in one line. */
export type Written = 'en' | 'es' | 'mixed';
/** What a writer labelled: names of facts with their values. */
export type Expect = Readonly<Record<string, unknown>>;
