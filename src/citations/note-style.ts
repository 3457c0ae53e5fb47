/**
 * A note style for the records of family history, in CSL 1.0.2.
 *
 * The order is common practice in the trade: in a note from the entry outward (what it is, where in the volume,
 * which office holds it), in the source list from the holding office inward, published works by author. Dates
 * come as finished words (`literal`), names as the author gives them.
 *
 * The private-use character U+E003 parts what the source is from where it is kept in a note, and the sentences of an
 * entry of the source list; `format.ts` finishes both.
 */
import { archival, divider, macros } from './note-macros.ts';

/** Begins every entry of the source list: the processor loses count of its entries when one of them is empty. */
export const entryMark = '\uE004';

export const noteStyle = `<?xml version="1.0" encoding="utf-8"?>
<style xmlns="http://purl.org/net/xbiblio/csl" class="note" version="1.0" demote-non-dropping-particle="never" page-range-format="expanded">
  <info>
    <title>Notes for records of families</title>
    <id>whence-notes</id>
    <updated>2025-01-01T00:00:00+00:00</updated>
    <rights>MIT</rights>
  </info>

${macros}

  <citation>
    <layout delimiter="; ">
      <choose>
        <if position="near-note"><text variable="citation-key"/></if>
        <else-if position="subsequent">
          <group delimiter=", ">
            <choose>
              <if type="personal_communication"><text macro="author"/></if>
              <else><text macro="author-short"/></else>
            </choose>
            <text macro="title-short"/>
            <choose>
              <if type="article-newspaper article-magazine periodical" match="any">
                <text variable="container-title" form="short" font-style="italic"/>
                <date variable="issued" form="text"/>
              </if>
              <else-if type="personal_communication interview" match="any">
                <choose><if variable="title" match="none"><text macro="kind"/></if></choose>
                <date variable="issued" form="text"/>
              </else-if>
              <else-if type="${archival}" match="any">
                <text macro="kind"/>
                <text macro="number"/>
              </else-if>
            </choose>
          </group>
        </else-if>
        <else>
          <text macro="item"/>
          <text value="${divider}"/>
          <group delimiter="; ">
            <text macro="repository"/>
            <text macro="access"/>
          </group>
        </else>
      </choose>
    </layout>
  </citation>

  <bibliography>
    <layout>
      <text value="${entryMark}"/>
      <group delimiter="${divider}">
        <choose>
          <if type="${archival}" match="any"><text macro="repository-inward"/></if>
        </choose>
        <text macro="author-inverted"/>
        <text macro="authority"/>
        <text macro="title"/>
        <group delimiter=", ">
          <text variable="genre"/>
          <text variable="medium"/>
          <text variable="scale"/>
        </group>
        <group delimiter=", ">
          <text macro="container"/>
          <text macro="other-names"/>
          <text macro="numbers"/>
          <text macro="publisher"/>
          <text macro="dates"/>
          <text macro="place-in-volume"/>
          <text variable="status"/>
        </group>
        <choose>
          <if type="${archival}" match="none"><text macro="repository-inward"/></if>
        </choose>
        <text macro="access"/>
      </group>
    </layout>
  </bibliography>
</style>
`;
