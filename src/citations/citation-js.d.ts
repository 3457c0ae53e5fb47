/** The part of citation-js that is used here. */
declare module '@citation-js/core' {
  export interface BibtexEntry {
    type: string;
    label: string;
    properties: Record<string, string>;
  }
  export const plugins: {
    output: {
      format(name: 'bibtex', items: readonly object[], options: { format: 'object' }): BibtexEntry[];
    };
    config: {
      get(name: '@bibtex'): {
        format: { useIdAsLabel: boolean; checkLabel: boolean; asciiOnly: boolean };
      };
    };
  };
}
declare module '@citation-js/plugin-bibtex' {}
