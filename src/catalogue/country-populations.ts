/**
 * How many people a country held about the middle of the nineteenth century: what a parish or county is a share of. Only
 * the order of size matters.
 */
export interface CountryPopulation {
  country: string;
  people: number;
  source: string;
}

// prettier-ignore
export const countryPopulations: readonly CountryPopulation[] = [
  { country: 'ireland', people: 8_175_124, source: 'Census of Ireland 1841 (from memory)' },
  { country: 'norway', people: 1_490_047, source: 'Census of Norway 1855 (from memory)' },
  { country: 'sweden', people: 3_482_541, source: 'Population of Sweden 1850 (from memory)' },
  { country: 'england', people: 16_921_888, source: 'Census of England and Wales 1851, England alone (from memory)' },
  { country: 'wales', people: 1_005_721, source: 'Census of England and Wales 1851, Wales alone (from memory)' },
  { country: 'scotland', people: 2_888_742, source: 'Census of Scotland 1851 (from memory)' },
];
