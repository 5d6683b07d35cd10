<#ftl output_format="plainText">
${text("text.brief.team", "number", brief.team().mark().words(), "name", brief.team().name())}
${text("brief.event", "event", brief.event())}<#if brief.club()?has_content>, ${brief.club()}</#if>
${brief.revision()}
${text("text.brief.private")}
<#if brief.isHeld()>

************************************************************
${text("brief.held")}
</#if>
<#list brief.gates() as gate>
${gate.sentence()}
<#list gate.lines() as line>
- ${line}
</#list>
</#list>
<#if brief.isHeld()>
************************************************************
</#if>

${text("text.brief.people")}
<#list brief.people() as person>
- ${person.name()}, ${person.callSign()}<#if person.skills()?has_content>; ${person.skills()}</#if>
  ${text("text.emergency", "contact", person.emergencyContact())}
<#else>
! ${text("brief.nobody")}
</#list>

<#if brief.vehicle()?has_content>
${text("text.brief.vehicle", "vehicle", brief.vehicle())}
</#if>
${text("text.brief.packing", "file", brief.packingFile())}
${text("brief.zone", "zone", brief.zone())}
<#if brief.findings()?has_content>

${text("text.brief.findings")}
<#list brief.findings() as finding>
- ${finding.severity()}: ${finding.sentence()}
</#list>
</#if>
<#if brief.isEmpty()>

! ${text("brief.empty")}
</#if>
<#list brief.days() as day>

${day.title()?upper_case}
${day.start()}
<#list day.stops() as stop>
<#if stop.drive().isPresent()>

<@drive stop.drive().get()/>
</#if>

${text("text.stop", "site", stop.site(), "kind", stop.kind())}<#if stop.squares()?has_content>, ${stop.squares()}</#if>
  ${text("text.stop.mark", "coordinates", stop.coordinates())}
<#if stop.access()?has_content>
  ${stop.access()}
</#if>
  ${text("text.stop.utc", "arrive", stop.arrival().utc(), "ready", stop.readyAt().utc(), "pack", stop.packUpBy().utc(), "leave", stop.departure().utc())}
  ${text("text.stop.local", "arrive", stop.arrival().local(), "ready", stop.readyAt().local(), "pack", stop.packUpBy().local(), "leave", stop.departure().local())}
<#if stop.reviewHolds()>
  ${stop.review()}
<#else>
  ! ${text("stop.noReview", "review", stop.review())}
</#if>
<#if stop.boundary().isPresent()>

  ${text("text.stop.proof")}
  ${stop.boundary().get().where()}
<#list stop.boundary().get().evidence() as proof>
  - ${proof}
</#list>
  ${text("text.stop.display")}
</#if>
<#list stop.turns() as turn>

  ${text("text.turn", "bird", turn.bird(), "mode", turn.mode())}
    ${text("text.turn.utc", "start", turn.start().utc(), "end", turn.end().utc())}
    ${text("text.turn.local", "start", turn.start().local(), "end", turn.end().local())}
<#if turn.sky().isPresent()>
<#assign sky = turn.sky().get()>
    ${text("text.pass.utc", "aos", sky.aos().utc(), "aosAzimuth", sky.aosAzimuth(), "tca", sky.tca().utc(), "tcaAzimuth", sky.tcaAzimuth(), "elevation", sky.peak(), "los", sky.los().utc(), "losAzimuth", sky.losAzimuth(), "error", turn.error())}
    ${text("text.pass.local", "aos", sky.aos().local(), "tca", sky.tca().local(), "los", sky.los().local())}
<#else>
    ! ${text("turn.noPass")}
</#if>
<#if turn.chance()?has_content>
    ${turn.chance()}
</#if>
    ${text("text.turn.up", "uplink", turn.uplink())}<#if turn.tone()?has_content>, ${text("turn.tone", "tone", turn.tone())}</#if>; ${text("turn.down", "downlink", turn.downlink())}
<#if turn.note()?has_content>
    ${text("text.turn.note", "note", turn.note())}
</#if>
<#else>

  ${text("stop.noTurn")}
</#list>

  ${stop.planB()}
<#if stop.hazards()?has_content || stop.remarks()?has_content>

  ${text("text.stop.hazards")}
<#list stop.hazards() as hazard>
  - ${hazard.title()}. ${hazard.measure()}
<#list hazard.cautions() as caution>
      ${caution}
</#list>
</#list>
<#list stop.remarks() as remark>
  ! ${remark}
</#list>
</#if>
<#else>
${text("day.empty")}
</#list>
<#if day.wayBack().isPresent()>

<@drive day.wayBack().get()/>
</#if>
<#if day.end()?has_content>
${day.end()}
</#if>
</#list>
<#if brief.split()?has_content>

${text("text.brief.split")}
<#list brief.split() as row>
- ${row}
</#list>
</#if>

${brief.deference()}
${text("brief.drives")}
${text("brief.elements")}
<#macro drive drive>
${text("text.drive", "drive", drive.text())}<#if drive.leaveBy().isPresent()> ${text("text.drive.leaveBy", "utc", drive.leaveBy().get().utc(), "local", drive.leaveBy().get().local())}</#if>
<#if drive.trouble()?has_content>
! ${drive.trouble()}
</#if>
</#macro>
