/**
 * What `make` gives, made when it is first asked for and kept. For tables that are built from lists: a program starts without
 * them, and one that reads no text never builds them.
 */
export function whenAsked<Made>(make: () => Made): () => Made {
  let made: { readonly it: Made } | undefined;
  return () => {
    made ??= { it: make() };
    return made.it;
  };
}
