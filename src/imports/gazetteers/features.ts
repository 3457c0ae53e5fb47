/**
 * Feature codes of GeoNames-format gazetteers → kinds of places.
 *
 * Source: the published list of feature codes of that format, from memory; what the divisions of a country are called is
 * *common practice*. Codes that name no place anybody comes from (hotels, peaks, streams) are left out.
 */
const kinds: Record<string, string> = {
  PCL: 'country',
  PCLI: 'country',
  PCLD: 'territory',
  PCLS: 'country',
  ADM1: 'region',
  ADM2: 'district',
  ADM3: 'municipality',
  ADM4: 'local district',
  ADM5: 'local district',
  ADMD: 'district',
  ADM1H: 'historical region',
  ADM2H: 'historical district',
  ADM3H: 'historical municipality',
  ADMDH: 'historical district',
  PRSH: 'parish',
  TERR: 'territory',
  PPL: 'populated place',
  PPLA: 'town',
  PPLA2: 'town',
  PPLA3: 'town',
  PPLA4: 'town',
  PPLC: 'city',
  PPLCH: 'city',
  PPLF: 'farm village',
  PPLG: 'town',
  PPLH: 'historical place',
  PPLL: 'locality',
  PPLQ: 'abandoned place',
  PPLR: 'religious community',
  PPLS: 'populated places',
  PPLW: 'destroyed place',
  PPLX: 'section of a town',
  STLMT: 'settlement',
  LCTY: 'locality',
  AREA: 'area',
  RGN: 'region',
  RGNH: 'historical region',
  RESV: 'reservation',
  COLF: 'coalfield',
  MNA: 'mining area',
  CMN: 'common',
  FRM: 'farm',
  FRMS: 'farms',
  FRMT: 'farmstead',
  FRMQ: 'abandoned farm',
  EST: 'estate',
  ESTO: 'estate',
  RNCH: 'ranch',
  CH: 'church',
  CMTY: 'cemetery',
  MSTY: 'monastery',
  MN: 'mine',
  MNC: 'mine',
  MNCU: 'copper mine',
  CTRR: 'mission',
  MSSN: 'mission',
  PRT: 'port',
  HBR: 'harbour',
  ISL: 'island',
  ISLS: 'islands',
  VAL: 'valley',
  PEN: 'peninsula',
};

/** Divisions as a country calls them, first order first. */
const divisions: Record<string, readonly string[]> = {
  US: ['state', 'county', 'township'],
  CA: ['province', 'county', 'municipality'],
  AU: ['state', 'local government area'],
  IE: ['province', 'county', 'electoral division'],
  GB: ['country', 'county', 'district', 'parish'],
  NO: ['county', 'municipality'],
  SE: ['county', 'municipality'],
  DK: ['region', 'municipality'],
  FI: ['region', 'district', 'municipality'],
  DE: ['state', 'region', 'district', 'municipality'],
  PL: ['province', 'county', 'municipality'],
};

/** Places that people come from, taken where no kind is asked for. */
const usual =
  /^(?:ADM[1-5D]H?|PRSH|TERR|PPL[A-Z]?\d?H?|STLMT|LCTY|RGNH?|RESV|FRM[SQT]?|ESTO?|RNCH|ISLS?|MSSN)$/;

/** The kind of a feature, or `undefined` for one that is no place to come from. */
export function kindOfFeature(code: string, country: string): string | undefined {
  const order = /^ADM([1-5])$/.exec(code)?.[1];
  return (
    (order && divisions[country]?.[Number(order) - 1]) ??
    (Object.hasOwn(kinds, code) ? kinds[code] : undefined)
  );
}

/** Whether a feature is taken without being asked for. */
export function isUsual(code: string): boolean {
  return usual.test(code);
}
