/** Each phrase of `first` with each of `second`; both are phrases parted by `, `, and so is what comes out. */
export const pairs = (first: string, second: string): string =>
  first
    .split(', ')
    .flatMap(one => second.split(', ').map(other => `${one} ${other}`))
    .join(', ');
