/** The part of the CSL processor that is used here. */
declare module 'citeproc' {
  namespace CSL {
    class Engine {
      constructor(
        system: { retrieveLocale(language: string): string; retrieveItem(id: string): object },
        style: string,
        language: string,
        forceLanguage: boolean,
      );
      registry: { ambigcites: object };
      /** What reads quotation marks and tags in values. */
      fun: { flipflopper: { processTags(value: { blobs: string }): void } };
      opt: { development_extensions: Record<string, boolean> };
      setOutputFormat(format: 'html' | 'text'): void;
      updateItems(ids: string[], keepOrder: boolean): string[];
      /** Position 0 is a first citation, 1 a subsequent one. */
      makeCitationCluster(items: { id: string; position: 0 | 1 }[]): string;
      makeBibliography(): [{ entry_ids: string[][] }, string[]] | false;
    }
  }
  export default CSL;
}
