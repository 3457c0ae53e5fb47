import type { search as English } from '../en/search.ts';

const kinds = {
  case: ['sak', 'Saker'],
  person: ['person', 'Personer'],
  place: ['sted', 'Steder'],
  record: ['kilde', 'Kilder'],
  search: ['søk', 'Søk'],
} as const;

const forms: Record<string, (form: string, name: string) => string> = {
  a: (form, name) => `${form} er en forkortelse for ${name}`,
  l: (form, name) => `${form} er latin for ${name}`,
  s: (form, name) => `${form} er en skrivemåte av ${name}`,
  t: (form, name) => `${form} er ${name} på et annet språk`,
  d: (form, name) => `${form} er en kjæleform av ${name}`,
  i: (form, name) => `${form} ble brukt for ${name}`,
};

export const search: typeof English = {
  title: 'Finn',
  description: 'Slå opp personer, steder, kilder og saker, uansett hvordan navnene er skrevet.',
  lede: 'Skriv et navn på hvilken måte du vil; de andre skrivemåtene kommer med.',
  field: 'Et navn, et sted, et årstall, ord fra en kilde',
  hint: 'Svarene kommer mens du skriver.',
  keys: 'Piltastene går gjennom dem, Enter åpner, Escape tømmer feltet.',
  results: 'Funnet',
  narrow: 'Vis',
  all: 'Alle',
  kind: (kind) => kinds[kind][0],
  kindMany: (kind) => kinds[kind][1],
  looking: 'Leter …',
  found: (n, figures) => (n === 1 ? 'Ett treff.' : `${figures} treff.`),
  nothing: (question) => `Ingen treff på «${question}». Prøv en annen skrivemåte eller færre ord.`,
  someWords: (figures) => `Ingenting har alle disse ordene. ${figures} har noen av dem, de nærmeste først.`,
  failed: 'Registeret kunne ikke leses. Listene nedenfor fører overalt.',
  more: (figures) => `Vis ${figures} til`,
  foundFor: (found, typed, why) => `${found}, funnet for ${typed}: ${why}`,
  why: {
    same: 'ett slektsnavn skrevet på to måter',
    used: 'de to slektsnavnene ble brukt om hverandre',
    prefix: 'forstavelsen er utelatt',
    near: 'skrevet nesten likt',
    sound: 'de lyder likt',
    father: (name) => `begge sier at faren het ${name}`,
    like: (name) => `skrevet som ${name}, en annen form av navnet`,
    form: (kind, form, name) => forms[kind]?.(form, name) ?? `begge står for ${name}`,
    forms: (name) => `begge står for ${name}`,
  },
  writtenAs: 'også skrevet',
  naming: 'nevner',
  lists: 'Listene',
  listsLede: 'Alt her kan også nås ved å bla.',
  withoutScript:
    'Oppslag mens du skriver krever JavaScript, som er slått av i denne nettleseren. Listene fører overalt.',
  list: {
    people: 'Personer, etter slektsnavn',
    surnames: 'Slektsnavn, med skrivemåtene',
    places: 'Steder, fra land til gård',
    records: 'Kilder, etter slag og år',
    searches: 'Søk, også de uten funn',
    associates: 'Omkretsen',
    cases: 'Saker',
    sources: 'Kildeliste',
  },
};
