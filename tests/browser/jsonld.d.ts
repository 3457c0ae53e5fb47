/** The part of the JSON-LD processor that is used: it comes without types. */
declare module 'jsonld' {
  interface Options {
    base: string;
    documentLoader(url: string): Promise<never>;
  }
  const processor: { toRDF(document: object, options: Options): Promise<object[]> };
  export default processor;
}
