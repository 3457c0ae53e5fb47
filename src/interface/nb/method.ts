import type { method as English } from '../en/method.ts';

export const method: typeof English = {
  title: 'Slik blir status regnet ut',
  short: 'Metode',
  description:
    'Hva som gjør at en konklusjon holder her, hva som ikke teller, og hva ingen konklusjon her kan bevise.',
  lede: 'Teksten på disse sidene er en forfatters. Tellingen er det ikke: Den gjøres på samme måte for hver sak, ut fra hva hver kilde sier og hvem som sa det.',
  onThisPage: 'På denne siden',
  top: 'Til toppen',
  inShort: 'Kort sagt',
  brief: [
    'Et opphavssted er konkludert først når to uavhengige belegg når fram til det og hver motsigelse er besvart.',
    'Avskrifter av én kilde teller én gang, og det samme gjør alt som én person har fortalt.',
    'Vekter, sjanser og rekkefølger på disse sidene er til hjelp for skjønnet. Alene beviser de ingenting.',
    'En konklusjon er en mening som kan endres, og ikke noe juridisk bevis.',
  ],
  essay: ({ who, rules, examples, guide, guides }) => [
    {
      title: 'Når en konklusjon holder',
      sections: [
        {
          id: 'lines',
          title: 'Siktelinjer',
          blocks: [
            {
              says: [
                'En landmåler bestemmer ikke et punkt ved å se på det én gang. Punktet siktes inn fra én stasjon og så fra en annen et godt stykke unna, og det ligger der linjene krysser hverandre. Et opphavssted bestemmes på samme måte. En kilde som nevner det, er én linje. En kilde til som bare gjentar den første, er den samme linjen trukket to ganger. En kilde til som har fått opplysningen en annen vei, er en ny linje, og der de to møtes, er det noe å konkludere med.',
              ],
            },
          ],
        },
        {
          id: 'marks',
          title: 'Merkene',
          blocks: [
            { says: ['Hver sak bærer sin status som et ord og som et stasjonsmerke.'] },
            { show: 'standings' },
            {
              says: [
                'Om en konklusjon som oppfyller regelen, kalles fastslått eller sannsynlig, er forfatterens eget skjønn. En arbeidshypotese telles og vises på samme måte, så leserne kan se hvor langt den er kommet, men den konkluderer ikke med noe.',
              ],
            },
          ],
        },
        {
          id: 'independent',
          title: 'Hva som er uavhengig',
          blocks: [
            {
              says: [
                'Hver opplysning i en kilde kom fra noen. Forfatteren skriver ned hvem som ga den, og hvordan de visste det: fra første hånd, fra andre, eller uvisst. Avskrifter, registre og transkripsjoner følges tilbake til det de er laget etter. Så blir beleggene sammenlignet to og to.',
              ],
            },
            {
              items: [
                {
                  term: 'Avhengige',
                  says: [
                    ', og talt som ett, når de står i samme kilde, når det ene er laget etter det andre eller begge etter et tredje, eller når samme person eller kirkebok har gitt begge.',
                  ],
                },
                {
                  term: 'Uvisst',
                  says: [
                    ', og ikke talt som to, når det ikke er kjent hvem som ga det ene, når de kan ha samme opphav (en datter gjentar kanskje bare det faren fortalte henne), når det ene kan være skrevet av etter det andre, eller når én skrivers bok har begge. Forfatteren kan likevel begrunne at et slikt par er uavhengig; begrunnelsen vises, så du kan dømme selv.',
                  ],
                },
                { term: 'Uavhengige', says: [' når ikke noe av dette gjelder.'] },
              ],
            },
            {
              says: [
                'Tallet som oppgis for et sted, er størrelsen på den største gruppen der hvert belegg er uavhengig av alle de andre. Å si mindre om en kilde gjør aldri tallet større.',
              ],
            },
          ],
        },
        {
          id: 'depth',
          title: 'Hvor dypt det når',
          blocks: [
            {
              says: [
                'Et belegg teller for stedet det nevner, og for hvert sted det ligger i. En gravstein der det står ',
                { quote: 'Ireland' },
                ', er en linje som stanser ved landet; en erklæring som nevner en kjøpstad, når grevskapet og lenger; en kirkebok når sognet eller gården. En konklusjon er ikke snevrere enn to uavhengige linjer når. Der bare én linje går helt fram, sier saken ved hvilket videre sted to av dem ennå møtes.',
              ],
            },
          ],
        },
        {
          id: 'joined',
          title: 'Er det denne familien?',
          blocks: [
            {
              says: [
                'En kirkebok der hjemme nevner et barn med riktig navn. Alene sier det ingenting om den som reiste over havet. Derfor må belegg som handler om en annen, og belegg fra gamlelandet selv, knyttes til personen av andre belegg: navnet på en kone, et vitne som kommer igjen, en søster som er nevnt i et brev. Uten en slik tilknytning blir funnet vist, men ikke talt.',
              ],
            },
          ],
        },
        {
          id: 'against',
          title: 'Hva som taler imot',
          blocks: [
            {
              says: [
                'Et belegg om personen som nevner et annet sted, er en motsigelse, enten forfatteren viser til det eller ikke. En konklusjon står bare når hver motsigelse er besvart med ord: Registeret leste siden feil; stesønnen visste det ikke; stedet er vurdert og lagt til side, og hvorfor. Et søk som skulle ha funnet familien på det konkluderte stedet, og ikke gjorde det, er også en motsigelse.',
              ],
            },
          ],
        },
        {
          id: 'firm',
          title: 'Hvor fast den står',
          blocks: [
            {
              says: [
                'Tenk at en kilde viste seg å være feillest eller falsk. For hver sak regnes det ut hvor få kilder som måtte falle før det var færre enn to uavhengige belegg igjen. Er det nok å miste én, kalles den kilden kritisk, og den nevnes ved navn.',
              ],
            },
          ],
        },
        {
          id: 'rule',
          title: 'Regelen',
          blocks: [
            {
              says: [
                'Et opphavssted utgis som konkludert bare når minst to uavhengige belegg når fram til stedet og hver motsigelse er besvart. En konklusjon som ikke holder dette mål, stanser hele utgivelsen. En som kalles fastslått, må dessuten bygge på loggførte søk, også dem som ikke fant noe. Alt som blir kontrollert når nettstedet lages, står under ',
                { text: 'reglene for innholdet', href: rules },
                ', og hver setning i utregningen på denne siden er vist i små ',
                { text: 'eksempler', href: examples },
                '. For den som vil etterprøve, finnes det en veiledning i ',
                { text: 'å lese en bevisside', href: guide },
                ', og for forfattere ',
                { text: 'veiledninger i å lage en sak', href: guides },
                '. Reglene og eksemplene er på engelsk.',
              ],
            },
            {
              says: [
                'Ved siden av regelen viser hver bevisside punkter som en etterprøver ville spørre om: om en original er sett, om noen talte fra første hånd, om begge sider av havet er hørt, om det er lett etter andre som kunne passe. De opplyser. De stanser ingenting.',
              ],
            },
          ],
        },
      ],
    },
    {
      title: 'Hvem det er snakk om',
      sections: [
        {
          id: 'who',
          title: 'Hvem er hvem',
          blocks: [
            {
              says: [
                'At en brudgom i Michigan og et barn ved døpefonten i Waterford er én person, er selv en konklusjon. For hver slik kobling en sak avhenger av, stiller bevissiden det én kilde sier, ved siden av det personens andre kilder sier, og gir hver linje en vekt i bit. Én bit betyr at en slik overensstemmelse forekommer dobbelt så ofte mellom to kilder om én person som mellom kilder om to; tre bit, åtte ganger så ofte. Vektene legges sammen (en metode fra I. P. Fellegi og A. B. Sunter, 1969). En linje som bare den ene kilden har, veier ingenting, verken for eller imot.',
              ],
            },
            {
              items: [
                {
                  term: 'Navn',
                  says: [
                    ' veier etter hvor sjeldne de er der personen levde: sognet før amtet eller grevskapet, det igjen før landet. Forkortelser, latinske former og navn som ble brukt om hverandre, er kjent som det; en kvinnes etternavn kan skifte, og et patronym er ikke en gård.',
                  ],
                },
                {
                  term: 'Aldrer',
                  says: [
                    ' svinger. I ett stort materiale av håndkoblede kilder om menn født i Irland stemmer 53 av 100 innen to år, 67 innen tre, 81 innen fem og 95 innen ti. Et sprik på under seks år kalles derfor aldri en motsigelse, bare en svakere overensstemmelse.',
                  ],
                },
                {
                  term: 'Slekt',
                  says: [
                    ' som er nevnt ved siden av personen, er de beste vitnene. En mors pikenavn gjør et vanlig navn nesten enestående.',
                  ],
                },
                {
                  term: 'Avskrifter',
                  says: [
                    ' av én kilde er én iakttakelse og blir ikke sammenlignet med hverandre. Av flere kilder som sier noe, tas den som stemmer best, med fradrag for muligheten til å velge.',
                  ],
                },
              ],
            },
            {
              says: [
                'Før noe sammenlignes, står mengden: I et sogn med tre tusen har hvem som helst én sjanse av tre tusen til å være den det gjelder. Summen gir en sannsynlighet, som er en hjelp og ingen dom: Linjer som støtter seg på hverandre, gjør den for stor, og det en forfatter ellers vet, er ikke med.',
              ],
            },
          ],
        },
        {
          id: 'candidates',
          title: 'Mulige familier',
          blocks: [
            {
              says: [
                'En familie funnet i opphavsstedets egne kilder sammenlignes med familien slik bare kildene i det nye landet kjenner den: barnets navn og fødsel, foreldrene, morens pikenavn, søsknene én for én, stedene som nevnes, farens arbeid. Det forfatteren har knyttet til hovedpersonen på grunnlag av den mulige familiens egne kilder, holdes utenfor målestokken; ellers ville familien stemme med seg selv. Linjene veies som under ',
                { text: 'hvem er hvem', href: who },
                '; et navn teller etter hvor sjeldent det er der hjemme, og hvem som helst av sju barn kan bære det. Den som ennå er hjemme etter at utvandreren var gått i land, er en annen; ikke å finnes der siden støtter bare litt.',
              ],
            },
            {
              says: [
                'Så: Hvor mange familier i sognet ville stemme slik ved et tilfelle? Husstandene ganges med andelen familier som har hver av de tingene som stemmer, etternavnet én gang. Der kildene her ikke nevner noe snevrere enn et grevskap, regnes det med hele grevskapets husstander. Husstander og andeler av navn er bare omtrent kjent, så tallet har et intervall som skulle romme det ni ganger av ti; en opptelling av sognets egne navn gjør det snevrere.',
              ],
            },
            {
              says: [
                'Familiene konkurrerer med hverandre og med «ingen av dem». To som ligger innenfor tre bit, åtte mot én, sies ikke å være til å skille, og det står hva som ville skille dem. En familie der kirkeboken er tapt, kan ikke finnes i det hele tatt, så den beste av dem er ikke dermed den rette.',
              ],
            },
          ],
        },
        {
          id: 'kin',
          title: 'Slektskap og grader',
          blocks: [
            {
              says: [
                'Hvem som er hvems mor, far, kone eller mann, er det forfatteren som sier, i personfilene. Derfra regnes slektskapet mellom to ut langs hver linje som binder dem sammen. Graden er den borgerlige: Tell slektsleddene opp fra den ene til felles stamfar eller stammor, og ned igjen til den andre. Søsken er i andre grad, onkel og niese i tredje, søskenbarn i fjerde. Kirkeretten i Den katolske kirke telte annerledes fram til 26. november 1983: bare den lengste siden, så en dispensasjon fra 1800-tallet «i andre grad» gjelder søskenbarn. Siden da teller den som borgerlig rett.',
              ],
            },
            {
              items: [
                {
                  term: 'Halv',
                  says: [
                    ' sies bare der de andre foreldrene er kjent og er forskjellige. Der det bare er kjent at én av foreldrene er felles, står det i stedet.',
                  ],
                },
                {
                  term: 'Svigerslekt',
                  says: [
                    ' er mannens eller konens slekt, og de som er gift med slekt. Deres er en svogerskapsgrad, talt som slektskapet bak den. Ut over ett ekteskap telles ingen grad, og bare veien fortelles.',
                  ],
                },
                {
                  term: 'Steslekt',
                  says: [
                    ' kommer av at en forelder eller ektefelle også har vært gift med en annen. En mors mann kalles ikke stefar der ingen far er ført opp: Han kan være faren.',
                  ],
                },
                {
                  term: 'Flere linjer',
                  says: [' gis alle, den nærmeste først; ekteskap mellom søskenbarn gjør dem vanlige.'],
                },
              ],
            },
            {
              says: [
                'Det et dokument om en søster sier, er direkte belegg for søsteren og indirekte belegg for broren. For hver i slekten spør en arbeidsplan hva som ennå ikke er sporet: en kilde som nevner dem uten hovedpersonen, et oppgitt fødested, et ekteskap, et dødsfall, foreldrene, om de reiste eller ble, og et søk.',
              ],
            },
          ],
        },
      ],
    },
    {
      title: 'Selskapet de holdt',
      sections: [
        {
          id: 'associates',
          title: 'Hvem som stadig dukker opp',
          blocks: [
            {
              says: [
                'Vitner, faddere, naboer og reisefølge som ikke er kjent som slekt, samles fra hver kilde som nevner familien; på en side eller liste de som står innen ti linjer eller tre husstander. Omtaler som ennå ikke er knyttet til noen, settes sammen etter navnet bare der ingenting taler imot det, og det sies at ingenting annet gjør det. Avskrifter av én kilde teller én gang.',
              ],
            },
            {
              says: [
                'Navn kommer også igjen ved et tilfelle. Sett at et navn er møtt én gang; hver ny plass for et navn ved siden av familien fylles da av en med det navnet så ofte som fornavn og etternavn er vanlige der (eller der familien kom fra, om de er vanligere der), og aldri sjeldnere enn én av folketallet på stedet. Av det følger hvor mange av familiens andre kilder som ville ha navnet, og sjansen for at så mange eller flere har det. Ved siden av tallet på dem som går igjen, står det hvor mange av alle navnene som ville gå igjen ved et tilfelle, for blant hundrevis vil noen gjøre det.',
              ],
            },
            {
              says: [
                'De som går igjen, bodde nær familien, gikk i samme kirke eller kom med samme skip; hvor de kom fra, er et spor, og aldri et belegg for hvor familien kom fra.',
              ],
            },
          ],
        },
        {
          id: 'journeys',
          title: 'Hvem som reiste sammen, og hvem som fulgte etter',
          blocks: [
            {
              says: [
                'På en liste over reisende blir innførslene sammenlignet to og to i det de oppgir: billett, familienummer, etternavn, siste bosted, reisemål, hvem de skal til, havn og klasse, og hvor nær hverandre de står på listen. Hver overensstemmelse teller etter hvor sjelden verdien er blant de andre følgene på listen, hver forskjell imot. En liste ordnet etter navn blir gjenkjent; da sier det ingenting å stå ved siden av hverandre. Hvor mye det ellers sier, læres av hvor mye oftere naboer stemmer enn innførsler en side fra hverandre. Innførsler blir et reisefølge der de reisende i det hele taler for det, ikke der en kjede av svake likheter fører fra den ene til den neste.',
              ],
            },
            {
              says: [
                'Hvor lett fremmede ville se slik ut: Av n fremmede finnes det så mange mulige grupper av den størrelsen som det er måter å velge den på, hver bundet sammen på en av kᵏ⁻² måter; ganger sjansene for overensstemmelsene langs den sterkeste veien. Det er en grense, og den tar overensstemmelsene som uavhengige. At folk sto ved siden av hverandre, er ikke noe belegg for hvor de kom fra: Et sted nevnes bare der de oppgir det selv.',
              ],
            },
            {
              says: [
                'De som kommer fra ett sted til et annet innen 60 dager, eller med ett skip, er en bølge. Hvor lett så mange kommer fra ett lite sted: Hver familie eller enslig reisende fra landet teller som ett trekk, med en sjanse som er stedets andel av landets folk (binomisk), ganger antallet slike steder, siden dette ble valgt ut for sitt tall. Innholdet er ikke noe rettferdig utvalg av alle som reiste, der en forfatter har fulgt én familie; les tallet med det i tankene.',
              ],
            },
          ],
        },
      ],
    },
    {
      title: 'Hva kildene rommer',
      sections: [
        {
          id: 'readings',
          title: 'Steder slik kildene skriver dem',
          blocks: [
            {
              says: [
                'Skrivere skrev stedsnavn slik de hørte dem. En lesning sammenlignes med hvert kjent sted etter skrivemåte, lyd og de leddene navnet er laget av (',
                { quote: 'baile' },
                ' og ',
                { quote: 'bally' },
                ', ',
                { quote: 'cill' },
                ' og ',
                { quote: 'kil' },
                '), og framfor alt etter hele kjeden: Sogn, baroni og grevskap må også stemme. Der flere steder passer like godt, blir det sagt. Der ingen gjør det, blir ingen foreslått; et nesten likt navn i et annet grevskap er ikke stedet.',
              ],
            },
          ],
        },
        {
          id: 'coverage',
          title: 'Hva som burde finnes',
          blocks: [
            {
              says: [
                'Av stedene og årene i et liv følger hvilke kilder som burde nevne det: hver folketelling mellom to ganger noen er sett i samme land, et registrert dødsfall der staten registrerte dødsfall, en liste for en ankomst. Hver vises som funnet, søkt, uleselig, ikke tilgjengelig, tapt eller gjenstående. Et søk uten funn avgjør en innførsel bare der årene dekker dagene den gjelder; en avis der årgangene ikke dekker årene, foreslås aldri.',
              ],
            },
            {
              says: [
                'De som gjenstår, ordnes etter fire forhold: at kilden finnes og blir funnet, at slike kilder nevner et sted, hvor mye nærmere det stedet er enn det saken har, og hvor langt det gjelder for personen i saken. Alle fire er runde anslag fra vanlig praksis. De ordner søk og beviser ingenting.',
              ],
            },
          ],
        },
        {
          id: 'clues',
          title: 'Spor i navn',
          blocks: [
            {
              says: [
                'Navn gikk i arv. Et etternavn brukt som mellomnavn kan være morens eller en bestemors; et fornavn som kommer igjen blant søskenbarn, kan være en forfars; i Irland, Skottland og Norge ble de eldste barna ofte oppkalt etter besteforeldrene, i en bestemt rekkefølge; en fadder med morens etternavn kan være broren hennes. Alt dette er det vanlig å se etter, og ikke noe av det beviser noe. Et spor telles aldri før forfatteren gjør det til et belegg.',
              ],
            },
            {
              says: [
                'Der det lar seg regne ut, sier et spor hvor ofte like mye ville komme ved et tilfelle: ut fra hvor vanlig navnet er der familien er fra, og hvor mange barn eller vitner det var. Søsken deler sjelden navn, så hver søskenflokk blant søskenbarna teller som én sjanse til å ha det; og der et navn ikke var søkt på forhånd, men lagt merke til, regnes hvert navn med som en kunne ha lagt merke til. Det tilfellet bringer oftere enn én gang av fire, kalles svakt, og det det nesten alltid bringer, er utelatt.',
              ],
            },
          ],
        },
      ],
    },
    {
      title: 'Med omtanke',
      sections: [
        {
          id: 'living',
          title: 'De nålevende',
          blocks: [
            {
              says: [
                'En person regnes som nålevende hvis ikke en kilde viser noe annet, eller er for gammel til at det kan være slik. På et åpent nettsted står det ingenting om nålevende, verken i tekst eller bilde, og der de står i en kilde, er de utelatt eller kalt en nålevende person.',
              ],
            },
          ],
        },
        {
          id: 'cautions',
          title: 'Forbehold',
          blocks: [
            {
              items: [
                {
                  says: [
                    'En konklusjon her er en begrunnet mening ut fra de beleggene som er sett. Den kan endres, og nye belegg kan velte den.',
                  ],
                },
                {
                  says: [
                    'Den er ikke noe juridisk bevis for avstamning, arv eller statsborgerskap. Til det trengs bekreftede avskrifter og den myndigheten som har rett til å avgjøre saken.',
                  ],
                },
                {
                  says: [
                    'Et uventet farskap eller foreldreskap, en adopsjon eller en dødsårsak kan såre slektninger som lever. Spør dem før du forteller det til andre.',
                  ],
                },
                {
                  says: [
                    'Følg personvernloven der du utgir, og vilkårene hvert arkiv har for at bildene skal kunne brukes på nytt.',
                  ],
                },
              ],
            },
          ],
        },
      ],
    },
  ],
  englishOnly: 'Disse sidene med dokumentasjon er på engelsk.',
};
