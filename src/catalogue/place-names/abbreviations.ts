import type { Abbreviated } from './types.ts';

/**
 * Short and careless forms of county and country names in the hands of clerks, beside the codes and variants that the
 * places carry themselves. *From memory*; abbreviations by the first letters and by the last are common practice.
 */
// prettier-ignore
export const abbreviated: readonly Abbreviated[] = [
  { place: 'ireland', forms: ['Ire', 'Irel', 'Irld', 'Irl', 'Irelend', 'Irland'] },
  { place: 'england', forms: ['Eng', 'Engl', 'Engd'] },
  { place: 'scotland', forms: ['Scot', 'Scotl', 'Scotd'] },
  { place: 'norway', forms: ['Nor', 'Norw', 'Norweg', 'Norge', 'Noreg', 'Norvay'] },
  { place: 'united-states', forms: ['US', 'USA', 'America', 'N America', 'Amer'] },
  { place: 'co-antrim', forms: ['Antm', 'Ant'] },
  { place: 'co-armagh', forms: ['Arm', 'Ardmagh'] },
  { place: 'co-carlow', forms: ['Carl', 'Catherlogh'] },
  { place: 'co-cavan', forms: ['Cav', 'Caven', 'Cavin'] },
  { place: 'co-clare', forms: ['Clair', 'Clar'] },
  { place: 'co-cork', forms: ['Corke', 'Cor', 'Corck'] },
  { place: 'co-donegal', forms: ['Doneg', 'Dongal', 'Donl', 'Dunegal', 'Donigal'] },
  { place: 'co-down', forms: ['Downe', 'Doun'] },
  { place: 'co-dublin', forms: ['Dubl', 'Dub', 'Dublen', 'Dubn'] },
  { place: 'co-fermanagh', forms: ['Ferm', 'Fermanah', 'Farmanagh', 'Fermh'] },
  { place: 'co-galway', forms: ['Gal', 'Galw', 'Gallway', 'Galaway'] },
  { place: 'co-kerry', forms: ['Ker', 'Kery', 'Cary'] },
  { place: 'co-kildare', forms: ['Kild', 'Kildair', 'Kildr'] },
  { place: 'co-kilkenny', forms: ['Kilk', 'Kilkeny', 'Kilkny', 'Killkenny'] },
  { place: 'co-laois', forms: ['Queens', 'Queens Co', 'Q', 'QC', 'Leax'] },
  { place: 'co-leitrim', forms: ['Leit', 'Letrim', 'Leitrm'] },
  { place: 'co-limerick', forms: ['Lim', 'Limk', 'Limrick', 'Limr', 'Lymerick'] },
  { place: 'co-londonderry', forms: ['Ldy', 'L Derry', 'LDerry', 'Londondery'] },
  { place: 'co-longford', forms: ['Long', 'Longf', 'Longfd'] },
  { place: 'co-louth', forms: ['Lou', 'Lowth'] },
  { place: 'co-mayo', forms: ['May', 'Maio', 'Mayoe'] },
  { place: 'co-meath', forms: ['Mea', 'Meth', 'Meathe'] },
  { place: 'co-monaghan', forms: ['Monagh', 'Mon', 'Monahan', 'Monn'] },
  { place: 'co-offaly', forms: ['Kings', 'Kings Co', 'K', 'KC', 'Offally'] },
  { place: 'co-roscommon', forms: ['Rosc', 'Roscom', 'Roscomon', 'Roscn'] },
  { place: 'co-sligo', forms: ['Sli', 'Slig', 'Sligoe'] },
  { place: 'co-tipperary', forms: ['Tipp', 'Tip', 'Tippy', 'Tipperery', 'Tiperary', 'Tipry', 'Tippry'] },
  { place: 'co-tyrone', forms: ['Tyr', 'Tyron', 'Tirone'] },
  { place: 'co-waterford', forms: ['Wat', 'Watf', 'Watfd', 'Waterfd', 'Wfd', 'Wford', 'Watford'] },
  { place: 'co-westmeath', forms: ['Westm', 'W Meath', 'WMeath', 'West Meath'] },
  { place: 'co-wexford', forms: ['Wex', 'Wexf', 'Wexfd', 'Wxfd'] },
  { place: 'co-wicklow', forms: ['Wick', 'Wickl', 'Wicklo'] },
];
