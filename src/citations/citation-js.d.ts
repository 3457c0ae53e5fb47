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
      format(
        name: 'bibliography' | 'citation',
        items: readonly object[],
        options: { template: string; lang: string; format: 'html'; entry?: readonly string[] },
      ): string;
    };
    config: {
      get(name: '@bibtex'): {
        format: { useIdAsLabel: boolean; checkLabel: boolean; asciiOnly: boolean };
      };
      get(name: '@csl'): Record<'styles' | 'locales', { add(name: string, xml: string): void }>;
    };
  };
}
declare module '@citation-js/plugin-bibtex' {}
declare module '@citation-js/plugin-csl' {}
