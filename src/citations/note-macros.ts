/** The parts of the note style: what is printed of a citation, piece by piece. `note-style.ts` puts them together. */

/** Parts the item from its holding in a full note, and the sentences of an entry. */
export const divider = '\uE003';

/** Types named as an archive would, without italics or quotation marks. */
export const archival =
  'article bill collection dataset document event figure graphic hearing legal_case legislation manuscript map personal_communication interview post regulation standard treaty';

/**
 * Most citations have few variables: what can print nothing is passed over at one look, and formatting takes less
 * than half the time.
 */
const when = (variables: string) => `<choose><if variable="${variables}" match="any">`;
const end = '</if></choose>';

export const macros = `  <macro name="author">${when('author editor compiler composer director recipient')}
    <group delimiter=" ">
      <names variable="author">
        <name and="text" delimiter-precedes-last="never"/>
        <substitute>
          <names variable="editor"><name and="text"/><label form="short" prefix=", "/></names>
          <names variable="compiler"><name and="text"/><label form="short" prefix=", "/></names>
          <names variable="composer"/>
          <names variable="director"/>
        </substitute>
      </names>
      <names variable="recipient"><label form="verb" suffix=" "/><name and="text" delimiter-precedes-last="never"/></names>
    </group>
  ${end}</macro>
  <macro name="author-inverted">${when('author editor compiler composer director recipient')}
    <group delimiter=", ">
      <names variable="author">
        <name and="text" name-as-sort-order="first" delimiter-precedes-last="after-inverted-name"/>
        <substitute>
          <names variable="editor"><name and="text" name-as-sort-order="first" delimiter-precedes-last="after-inverted-name"/><label form="short" prefix=", "/></names>
          <names variable="compiler"><name and="text" name-as-sort-order="first" delimiter-precedes-last="after-inverted-name"/><label form="short" prefix=", "/></names>
          <names variable="composer"><name name-as-sort-order="first"/></names>
          <names variable="director"><name name-as-sort-order="first"/></names>
        </substitute>
      </names>
      <names variable="recipient"><label form="verb" suffix=" "/><name and="text" delimiter-precedes-last="never"/></names>
    </group>
  ${end}</macro>
  <macro name="author-short">${when('author editor compiler recipient')}
    <group delimiter=" ">
      <names variable="author">
        <name form="short" and="text" delimiter-precedes-last="never"/>
        <substitute><names variable="editor"/><names variable="compiler"/></substitute>
      </names>
      <names variable="recipient"><label form="verb" suffix=" "/><name form="short" and="text" delimiter-precedes-last="never"/></names>
    </group>
  ${end}</macro>

  <macro name="other-names">${when('interviewer editor compiler translator contributor')}
    <group delimiter=", ">
      <names variable="interviewer"><label form="verb" suffix=" "/><name and="text"/></names>
      <choose><if variable="author">
        <group delimiter=", ">
          <names variable="editor"><label form="verb" suffix=" "/><name and="text"/></names>
          <names variable="compiler"><label form="verb" suffix=" "/><name and="text"/></names>
        </group>
      </if></choose>
      <names variable="translator"><label form="verb" suffix=" "/><name and="text"/></names>
      <names variable="contributor"><label form="verb" suffix=" "/><name and="text"/></names>
    </group>
  ${end}</macro>

  <macro name="authority">${when('jurisdiction authority division')}
    <group delimiter=", ">
      <text variable="jurisdiction"/>
      <text variable="authority"/>
      <text variable="division"/>
    </group>
  ${end}</macro>

  <macro name="title">
    <choose>
      <if type="article-newspaper article-magazine article-journal review review-book chapter entry entry-dictionary entry-encyclopedia paper-conference webpage post-weblog post speech" match="any">
        <text variable="title" quotes="true"/>
      </if>
      <else-if type="${archival}" match="any"><text variable="title"/></else-if>
      <else><text variable="title" font-style="italic"/></else>
    </choose>
  </macro>
  <macro name="title-short">
    <choose>
      <if type="article-newspaper article-magazine article-journal review review-book chapter entry entry-dictionary entry-encyclopedia paper-conference webpage post-weblog post speech" match="any">
        <text variable="title" form="short" quotes="true"/>
      </if>
      <else-if type="${archival}" match="any"><text variable="title" form="short"/></else-if>
      <else><text variable="title" form="short" font-style="italic"/></else>
    </choose>
  </macro>

  <macro name="container">${when('container-title publisher-place container-author collection-title collection-number volume-title part-title')}
    <group delimiter=", ">
      <group delimiter=" ">
        <choose><if type="chapter entry entry-dictionary entry-encyclopedia paper-conference" match="any"><text value="in"/></if></choose>
        <text variable="container-title" font-style="italic"/>
        <choose><if type="article-newspaper article-magazine periodical" match="any"><text variable="publisher-place" prefix="(" suffix=")"/></if></choose>
      </group>
      <names variable="container-author"><label form="verb" suffix=" "/><name and="text"/></names>
      <text variable="collection-title"/>
      <text variable="collection-number"/>
      <text variable="volume-title"/>
      <text variable="part-title"/>
    </group>
  ${end}</macro>

  <macro name="kind">
    <choose>
      <if variable="genre"><text variable="genre"/></if>
      <else-if variable="medium"><text variable="medium"/></else-if>
      <else-if type="interview"><text value="interview"/></else-if>
    </choose>
  </macro>

  <macro name="number">
    <choose>
      <if is-numeric="number"><group delimiter=" "><text value="no."/><text variable="number"/></group></if>
      <else><text variable="number"/></else>
    </choose>
  </macro>
  <macro name="numbers">${when('edition version volume issue number part-number')}
    <group delimiter=", ">
      <choose>
        <if is-numeric="edition"><group delimiter=" "><number variable="edition" form="ordinal"/><text term="edition" form="short"/></group></if>
        <else><text variable="edition"/></else>
      </choose>
      <text variable="version"/>
      <choose>
        <if is-numeric="volume"><group delimiter=" "><text value="vol."/><text variable="volume"/></group></if>
        <else><text variable="volume"/></else>
      </choose>
      <choose>
        <if is-numeric="issue"><group delimiter=" "><text value="no."/><text variable="issue"/></group></if>
        <else><text variable="issue"/></else>
      </choose>
      <text macro="number"/>
      <choose>
        <if is-numeric="part-number"><group delimiter=" "><text value="part"/><text variable="part-number"/></group></if>
        <else><text variable="part-number"/></else>
      </choose>
    </group>
  ${end}</macro>

  <macro name="publisher">${when('publisher publisher-place')}
    <group delimiter=": ">
      <choose><if type="article-newspaper article-magazine periodical" match="none"><text variable="publisher-place"/></if></choose>
      <text variable="publisher"/>
    </group>
  ${end}</macro>

  <macro name="dates">
    <group delimiter=", ">
      <group delimiter=", ">
        <text variable="event-title"/>
        <text variable="event-place"/>
        <date variable="event-date" form="text"/>
      </group>
      <date variable="issued" form="text"/>
      <group delimiter=" "><text value="first made"/><date variable="original-date" form="text"/></group>
      <group delimiter=" "><text value="submitted"/><date variable="submitted" form="text"/></group>
    </group>
  </macro>

  <macro name="place-in-volume">${when('section page')}
    <group delimiter=", ">
      <choose>
        <if is-numeric="section"><group delimiter=" "><text value="section"/><text variable="section"/></group></if>
        <else><text variable="section"/></else>
      </choose>
      <choose>
        <if is-numeric="page"><group delimiter=" "><label variable="page" form="short"/><text variable="page"/></group></if>
        <else><text variable="page"/></else>
      </choose>
    </group>
  ${end}</macro>

  <macro name="item">
    <group delimiter=", ">
      <text macro="author"/>
      <text macro="authority"/>
      <text macro="title"/>
      <group delimiter=", ">
        <text variable="genre"/>
        <text variable="medium"/>
        <text variable="scale"/>
      </group>
      <text macro="container"/>
      <text macro="other-names"/>
      <text macro="numbers"/>
      <text macro="publisher"/>
      <text macro="dates"/>
      <text macro="place-in-volume"/>
      <text variable="status"/>
    </group>
  </macro>

  <macro name="repository">
    <group delimiter=", ">
      <text variable="archive_collection"/>
      <text variable="archive_location"/>
      <text variable="call-number"/>
      <text variable="archive"/>
      <text variable="archive-place"/>
    </group>
  </macro>
  <macro name="repository-inward">
    <group delimiter="${divider}">
      <group delimiter=", "><text variable="archive"/><text variable="archive-place"/></group>
      <text variable="archive_collection"/>
      <group delimiter=", "><text variable="archive_location"/><text variable="call-number"/></group>
    </group>
  </macro>

  <macro name="access">${when('source URL DOI ISBN accessed references note')}
    <group delimiter="; ">
      <text variable="source"/>
      <group delimiter=", ">
        <text variable="URL"/>
        <text variable="DOI" prefix="doi:"/>
        <text variable="ISBN" prefix="ISBN "/>
        <group delimiter=" "><text term="accessed"/><date variable="accessed" form="text"/></group>
      </group>
      <text variable="references"/>
      <text variable="note"/>
    </group>
  ${end}</macro>`;
