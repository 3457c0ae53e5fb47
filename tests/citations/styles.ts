/** A small CSL style for notes around what its citation prints. */
export function styleOf(
  citation: string,
  more: {
    attributes?: string;
    citation?: string;
    suffix?: string;
    bibliography?: string;
    sort?: string;
    locale?: string;
    macros?: string;
    styleClass?: string;
  } = {},
): string {
  return `<?xml version="1.0" encoding="utf-8"?>
<style xmlns="http://purl.org/net/xbiblio/csl" class="${more.styleClass ?? 'note'}" version="1.0" ${more.attributes ?? ''}>
  <info><title>A style</title><id>a-style</id><updated>2025-01-01T00:00:00+00:00</updated></info>
  ${more.locale ?? ''}
  ${more.macros ?? ''}
  <citation ${more.citation ?? ''}><layout delimiter="; " suffix="${more.suffix ?? ''}">${citation}</layout></citation>
  ${more.bibliography === undefined ? '' : `<bibliography>${more.sort ?? ''}<layout>${more.bibliography}</layout></bibliography>`}
</style>
`;
}
