/** The part of the CSL processor that is used here. */
declare module 'citeproc' {
  namespace CSL {
    /** Told of what a style has that the engine does not know; prints it, unless it is replaced. */
    let debug: (message: string) => void;
    interface SetCitation {
      sortedItems: unknown[];
    }
    class Engine {
      /** A style or locale is XML, or its elements as plain objects, which the engine changes. */
      constructor(
        system: { retrieveLocale(language: string): string | object; retrieveItem(id: string): object },
        style: string | object,
        language: string,
        forceLanguage: boolean,
      );
      registry: { ambigcites: object; citationreg: { citationByIndex: SetCitation[] } };
      /** What reads quotation marks and tags in values. */
      fun: { flipflopper: { processTags(value: { blobs: string }): void } };
      opt: { development_extensions: Record<string, boolean> };
      setOutputFormat(format: 'html' | 'text'): void;
      updateItems(ids: string[], keepOrder?: boolean): string[];
      /** Position 0 is a first citation, 1 a subsequent one. */
      makeCitationCluster(items: { id: string | number; position?: 0 | 1; [key: string]: unknown }[]): string;
      /** Answers with the citations that changed: their place in the text, what they read now, their name. */
      processCitationCluster(
        citation: object,
        before: [string, number][],
        after: [string, number][],
      ): [object, [number, string, string?][]];
      process_CitationCluster(items: unknown[], citation: SetCitation): string;
      makeBibliography(): [{ entry_ids: string[][]; bibstart: string; bibend: string }, string[]] | false;
    }
  }
  export default CSL;
}
