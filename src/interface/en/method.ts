/** How standings are worked out: an essay for whoever wants to know what a conclusion here rests on. */
import type { EssayPart } from '../essay.ts';

/** Pages the essay leads to. */
interface Links {
  who: string;
  rules: string;
  examples: string;
  guide: string;
  guides: string;
}

export const method = {
  title: 'How standings are worked out',
  short: 'Method',
  description:
    'What makes a conclusion hold here, what does not count, and what no conclusion here can prove.',
  lede: 'The writing on these pages is an author’s. The counting is not: it is done the same way for every case, from what each record says and from who said it.',
  onThisPage: 'On this page',
  top: 'To the top',
  inShort: 'In short',
  brief: [
    'A place of origin is concluded only when two independent items of evidence reach it and every conflict is answered.',
    'Copies of one record count once, and so does everything one person said.',
    'Weights, chances and orders on these pages are aids to judgement. They prove nothing by themselves.',
    'A conclusion is an opinion open to revision, and no legal proof.',
  ],
  essay: ({ who, rules, examples, guide, guides }: Links): EssayPart[] => [
    {
      title: 'What makes a conclusion hold',
      sections: [
        {
          id: 'lines',
          title: 'Lines of sight',
          blocks: [
            {
              says: [
                'A surveyor does not fix a point by looking at it once. The point is sighted from one station, then from another well apart, and it lies where the lines cross. A place of origin is fixed in the same way. One record that names it is one line. A second record that only repeats the first is the same line drawn twice. A second record whose information came another way is a second line, and where the two meet, there is something to conclude.',
              ],
            },
          ],
        },
        {
          id: 'marks',
          title: 'The marks',
          blocks: [
            { says: ['Each case carries its standing as a word and as a station mark.'] },
            { show: 'standings' },
            {
              says: [
                'Whether a conclusion that meets the rule is called established or probable is the author’s own judgement. A working idea is counted and shown in the same way, so that readers can see how far it has come, but it concludes nothing.',
              ],
            },
          ],
        },
        {
          id: 'independent',
          title: 'What is independent',
          blocks: [
            {
              says: [
                'Every statement in a record came from somebody. The author writes down who supplied it and how they knew: at first hand, from others, or not determined. Copies, indexes and transcripts are traced to what they were made from. Two items of evidence are then compared.',
              ],
            },
            {
              items: [
                {
                  term: 'Dependent',
                  says: [
                    ', and counted once, when they stand in the same record, when one was made from the other or both from a third, or when the same person or register supplied both.',
                  ],
                },
                {
                  term: 'Undetermined',
                  says: [
                    ', and not counted as two, when it is not known who supplied one of them, when they may share an informant (a daughter may only be repeating what her father told her), when one may have been copied from the other, or when one clerk’s book holds both. The author may argue that such a pair is independent all the same; the argument is shown, for you to judge.',
                  ],
                },
                { term: 'Independent', says: [' when none of this is so.'] },
              ],
            },
            {
              says: [
                'The number given for a place is the size of the largest group in which every item is independent of every other. Saying less about a record never makes that number larger.',
              ],
            },
          ],
        },
        {
          id: 'depth',
          title: 'How deep it reaches',
          blocks: [
            {
              says: [
                'Evidence counts at the place it names and at every place that one lies in. A gravestone that says ',
                { quote: 'Ireland' },
                ' is a line that stops at the country; a declaration that names a market town reaches the county and beyond; a register reaches the parish or the townland. A conclusion is only as narrow as two independent lines reach. Where just one line goes all the way, the case says at which broader place two of them still meet.',
              ],
            },
          ],
        },
        {
          id: 'joined',
          title: 'Is it this family?',
          blocks: [
            {
              says: [
                'A register over there names a child of the right name. That alone says nothing of the person who crossed the ocean. So evidence that speaks of anybody else, and evidence from the old country itself, must be joined to the person by other evidence: a wife’s name, a witness who comes back, a sister named in a letter. Without that tie it is shown and does not count.',
              ],
            },
          ],
        },
        {
          id: 'against',
          title: 'What speaks against it',
          blocks: [
            {
              says: [
                'Evidence about the person that names a different place is a conflict, whether or not the author cites it. A conclusion stands only when each conflict is answered in words: the index misread the page; the stepson did not know; the place was weighed and set aside, and why. A search that ought to have found the family in the place concluded, and did not, is a conflict too.',
              ],
            },
          ],
        },
        {
          id: 'firm',
          title: 'How firmly it stands',
          blocks: [
            {
              says: [
                'Suppose a record turned out to be misread, or a forgery. For each case it is worked out how few records would have to fall before fewer than two independent items remained. If the loss of one alone would do it, that record is called critical, and is named.',
              ],
            },
          ],
        },
        {
          id: 'rule',
          title: 'The rule',
          blocks: [
            {
              says: [
                'A place of origin is published as concluded only when at least two independent items of evidence reach the place named and every conflict is answered. A conclusion that fails this stops the site from being published at all. One called established must rest on logged searches besides, those that found nothing included. All that is looked for when the site is made is listed under ',
                { text: 'rules of the content', href: rules },
                ', and each sentence of this page’s reckoning is worked through in small ',
                { text: 'examples', href: examples },
                '. For reviewers there is a guide to ',
                { text: 'reading a proof page', href: guide },
                ', and for authors there are ',
                { text: 'guides to making a case', href: guides },
                '.',
              ],
            },
            {
              says: [
                'Beside the rule, each proof page shows points a reviewer would ask about: whether an original was seen, whether anybody spoke at first hand, whether both shores are heard, whether others who would fit were looked for. They inform. They stop nothing.',
              ],
            },
          ],
        },
      ],
    },
    {
      title: 'Who is meant',
      sections: [
        {
          id: 'who',
          title: 'Who is who',
          blocks: [
            {
              says: [
                'That a bridegroom in Michigan and a child at a font in Waterford are one person is itself a conclusion. For each such link that a case depends on, its proof page sets what one record says beside what the person’s other records say, and gives every line a weight in bits. One bit means that such an agreement is met twice as often between two records of one person as between records of two people; three bits, eight times. The weights are added (a method of I. P. Fellegi and A. B. Sunter, 1969). A line that only one of the records has weighs nothing, for or against.',
              ],
            },
            {
              items: [
                {
                  term: 'Names',
                  says: [
                    ' weigh by how rare they are where the person lived: the parish before the county, the county before the country. Abbreviations, Latin forms and names used for one another are known as such; a woman’s surname may change, and a patronymic is not a farm.',
                  ],
                },
                {
                  term: 'Ages',
                  says: [
                    ' wobble. In one large set of hand-linked records of Irish-born men, 53 in 100 agree within two years, 67 within three, 81 within five and 95 within ten. A gap under six years is therefore never called a contradiction, only a weaker agreement.',
                  ],
                },
                {
                  term: 'Kin',
                  says: [
                    ' named beside the person are the best witnesses. A mother’s maiden name makes a common name nearly unique.',
                  ],
                },
                {
                  term: 'Copies',
                  says: [
                    ' of one record are one observation and are not compared with each other. Of several records that say something, the one that agrees best is taken, less the chance of having been able to choose.',
                  ],
                },
              ],
            },
            {
              says: [
                'Before anything is compared stands the crowd: in a parish of three thousand, anybody has one chance in three thousand of being the person meant. The sum gives a probability, which is an aid and not a verdict: lines that lean on one another overstate it, and what an author knows besides is not in it.',
              ],
            },
          ],
        },
        {
          id: 'candidates',
          title: 'Candidate families',
          blocks: [
            {
              says: [
                'A family found in the origin’s own records is compared with the family as the new country’s records alone know it: the child’s name and birth, the parents, the mother’s maiden name, brothers and sisters one to one, the places named, the father’s work. What the author has joined to the subject on the strength of the candidate’s own records is left out of the yardstick, or a candidate would agree with itself. The lines are weighed as in ',
                { text: 'who is who', href: who },
                '; a name counts by its rarity over there, and any of seven children may bear it. Whoever is still at home after the emigrant had landed is somebody else; not to be found there afterwards supports but little.',
              ],
            },
            {
              says: [
                'Then: how many families of that parish would agree so by accident? Its households are multiplied by the share of families that have each of the things that agree, the surname once. Where the records here name nothing narrower than a county, the county’s households are counted. Households and shares of names are known roughly, so the number has an interval that should hold it nine times in ten; a count of the parish’s own names narrows it.',
              ],
            },
            {
              says: [
                'The candidates compete with one another and with “none of them”. Two within three bits, eight to one, are said not to be told apart, with what would tell them apart. A family whose register is lost can’t be found at all, so the best of the candidates is not thereby the right one.',
              ],
            },
          ],
        },
        {
          id: 'kin',
          title: 'Kin and degrees',
          blocks: [
            {
              says: [
                'Who is whose parent, wife or husband is the author’s to say, in the files of people. From there the relation of any two is worked out along every line that joins them. The degree is the civil one: count the generations up from the one to the common ancestor, and down again to the other. Brothers and sisters stand in the second degree, an uncle and a niece in the third, first cousins in the fourth. Church law counted differently until 26 November 1983: only the longer side, so that a dispensation of the nineteenth century “in the second degree” is for first cousins. Since then it counts as the civil law does.',
              ],
            },
            {
              items: [
                {
                  term: 'Half',
                  says: [
                    ' is said only where the other parents are known and differ. Where just one parent is known to be common, that is said instead.',
                  ],
                },
                {
                  term: 'In-laws',
                  says: [
                    ' are a husband’s or wife’s kin, and the husbands and wives of kin. Theirs is a degree of affinity, counted like that of the kinship behind it. Beyond one marriage no degree is counted, and only the way is told.',
                  ],
                },
                {
                  term: 'Step',
                  says: [
                    '-relations come by a parent’s or a spouse’s other marriage. A mother’s husband is not called a stepfather where no father is entered: he may be the father.',
                  ],
                },
                {
                  term: 'Several lines',
                  says: [' are all given, the nearest first; cousins who married make them common.'],
                },
              ],
            },
            {
              says: [
                'What a sister’s paper states is direct evidence of the sister, and indirect evidence of her brother. Of each of the kin a plan asks what is still untraced: a record that names them apart from the subject, a stated birthplace, a marriage, a death, their parents, whether they left or stayed, and a search.',
              ],
            },
          ],
        },
      ],
    },
    {
      title: 'The company they kept',
      sections: [
        {
          id: 'associates',
          title: 'Who keeps turning up',
          blocks: [
            {
              says: [
                'Witnesses, sponsors, neighbours and shipmates who are not known to be kin are gathered from every record that names the family; on a page or list, those within ten lines or three households. Mentions of nobody yet are put together by name only where nothing contradicts it, and it is said that nothing else does. Copies of one record count once.',
              ],
            },
            {
              says: [
                'Names come back by accident too. Grant that a name was met once; every further place for a name beside the family is then filled by somebody so called as often as the given name and the surname are common there (or where the family came from, if they are commoner there), and never less often than one in the people of the place. From that follow how many of the family’s other records would hold the name, and the chance that so many or more do. Beside the number of people who recur stands how many of all the names met would recur by accident, since among hundreds some will.',
              ],
            },
            {
              says: [
                'Those who recur lived near the family, went to one church or came on one ship; where they came from is a lead, and never evidence of where the family did.',
              ],
            },
          ],
        },
        {
          id: 'journeys',
          title: 'Who travelled together, and who followed',
          blocks: [
            {
              says: [
                'On a list of travellers any two entries are compared in what they state: ticket, family number, surname, last residence, destination, whom they join, port and class, and how near they stand on the list. Each agreement counts by how rare the value is among the other parties of that list, each difference against. A list sorted by name is recognized; standing side by side then says nothing. How much it says elsewhere is learned from how much more neighbours agree than entries a page apart. Entries become a party where their members on the whole speak for it, not where a chain of slight likenesses leads from one to the next.',
              ],
            },
            {
              says: [
                'How easily strangers would look so: of n strangers there are as many possible groups of that size as there are ways to choose it, each joined in one of kᵏ⁻² ways; times the chances of the agreements along the strongest way. It is a bound, and it takes the agreements as independent. That people stood side by side is no evidence of where they came from: a place is only named where they state it themselves.',
              ],
            },
            {
              says: [
                'Arrivals from one place at another within 60 days, or on one ship, are a wave. How easily so many come from one small place: every family or lone traveller from that country counts as one draw, with the chance that is the place’s share of the country’s people (binomial), times the number of such places, since this one was picked for its number. The content is no fair draw of all who went where an author followed one family; read the figure with that in mind.',
              ],
            },
          ],
        },
      ],
    },
    {
      title: 'What the records hold',
      sections: [
        {
          id: 'readings',
          title: 'Places as records spell them',
          blocks: [
            {
              says: [
                'Clerks wrote the names of places as they heard them. A reading is compared with every known place by spelling, by sound and by the elements its name is made of (',
                { quote: 'baile' },
                ' and ',
                { quote: 'bally' },
                ', ',
                { quote: 'cill' },
                ' and ',
                { quote: 'kil' },
                '), and above all by the whole chain: parish, barony and county must agree as well. Where several places fit as well, that is said. Where none does, nothing is offered; a near-namesake in another county is not the place.',
              ],
            },
          ],
        },
        {
          id: 'coverage',
          title: 'What should exist',
          blocks: [
            {
              says: [
                'From the places and years of a life follow the records that should name it: each census between two sightings in one country, a registered death where the state registered deaths, a list for an arrival. Each is shown as found, searched, unreadable, not available, lost or open. A search that found nothing settles an entry only where its years take in the days of it; a newspaper whose run does not cover the years is never suggested.',
              ],
            },
            {
              says: [
                'The open ones are put in order by four factors: that the record exists and is found, that such records name a place, how much nearer that place is than what the case has, and how far it holds for the person of the case. All four are round estimates of common practice. They order searches and prove nothing.',
              ],
            },
          ],
        },
        {
          id: 'clues',
          title: 'Clues in names',
          blocks: [
            {
              says: [
                'Names were handed on. A surname as a middle name may be the mother’s or a grandmother’s; a given name that returns among cousins may be a forebear’s; in Ireland, Scotland and Norway the eldest children were often named for their grandparents, in an order; a sponsor who bears the mother’s surname may be her brother. All this is common practice to look for, and none of it proves anything. A clue is never counted until the author makes it evidence.',
              ],
            },
            {
              says: [
                'Where it can be reckoned, a clue says how often as much would come by accident: from how common the name is where the family is from, and from how many children or witnesses there were. Brothers and sisters seldom share a name, so each family of cousins counts as one chance to have it; and where a name was not looked for beforehand but noticed, every name that could have been noticed is counted in. What accident brings more often than one time in four is called weak, and what it nearly always brings is left out.',
              ],
            },
          ],
        },
      ],
    },
    {
      title: 'With care',
      sections: [
        {
          id: 'living',
          title: 'The living',
          blocks: [
            {
              says: [
                'Somebody is taken to be living unless a record shows otherwise or was made too long ago for it. On a public site nothing of a living person appears, neither in the text nor in an image, and where they stand in a record they are left out or called a living person.',
              ],
            },
          ],
        },
        {
          id: 'cautions',
          title: 'Cautions',
          blocks: [
            {
              items: [
                {
                  says: [
                    'A conclusion here is a reasoned opinion on the evidence seen. It is open to revision, and new evidence may overturn it.',
                  ],
                },
                {
                  says: [
                    'It is no legal proof of descent, of inheritance or of citizenship. Those need certified copies, and the authority that is competent to decide.',
                  ],
                },
                {
                  says: [
                    'Unexpected parentage, an adoption or a cause of death may hurt relatives who are alive. Ask them before you tell others.',
                  ],
                },
                {
                  says: [
                    'Follow the privacy law of the place where you publish, and the terms under which each archive lets its images be used again.',
                  ],
                },
              ],
            },
          ],
        },
      ],
    },
  ],
  englishOnly: 'These pages of documentation are in English.',
};
