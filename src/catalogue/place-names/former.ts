import type { FormerNames } from './types.ts';

const memory = 'from memory; the changes of name in Ireland after 1920 are common knowledge of the trade';

/** Towns that records of one time name otherwise than those of another. */
export const formerNames: readonly FormerNames[] = [
  { names: ['Cobh', 'Queenstown', 'Cove', 'Cove of Cork'], within: 'co-cork', source: memory },
  {
    names: ['Dún Laoghaire', 'Dunleary', 'Kingstown', 'Dunlaoghaire'],
    within: 'co-dublin',
    source: memory,
  },
  { names: ['Portlaoise', 'Maryborough', 'Port Laoighise'], within: 'co-laois', source: memory },
  { names: ['Daingean', 'Philipstown'], within: 'co-offaly', source: memory },
  { names: ['Birr', 'Parsonstown'], within: 'co-offaly', source: memory },
  { names: ['Kells', 'Ceannanus', 'Ceanannus Mor'], within: 'co-meath', source: memory },
  { names: ['Navan', 'An Uaimh'], within: 'co-meath', source: memory },
  { names: ['Rathluirc', 'Charleville', 'Rath Luirc'], within: 'co-cork', source: memory },
  { names: ['Droichead Nua', 'Newbridge'], within: 'co-kildare', source: memory },
  { names: ['Muine Bheag', 'Bagenalstown'], within: 'co-carlow', source: memory },
  { names: ['Ramelton', 'Rathmelton'], within: 'co-donegal', source: memory },
  { names: ['Derry', 'Londonderry', 'Derry City'], within: 'co-londonderry', source: memory },
  { names: ['Edgeworthstown', 'Mostrim', 'Meathas Truim'], within: 'co-longford', source: memory },
  { names: ['Oslo', 'Christiania', 'Kristiania'], within: 'norway', source: memory },
  { names: ['Trondheim', 'Trondhjem', 'Throndhjem', 'Drontheim'], within: 'norway', source: memory },
  { names: ['Kitchener', 'Berlin'], within: 'ontario', source: memory },
  { names: ['Ottawa', 'Bytown'], within: 'ontario', source: memory },
  { names: ['Toronto', 'York', 'Muddy York'], within: 'ontario', source: memory },
];
