<#ftl output_format="plainText">
TEAM ${brief.team().mark().words()}: ${brief.team().name()}
Brief for ${brief.event()}<#if brief.club()?has_content>, ${brief.club()}</#if>
${brief.revision()}
Names people and whom to call: for this team only, not to be passed on.
<#if brief.isHeld()>

************************************************************
NOT CLEARED TO LEAVE
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

WHO GOES
<#list brief.people() as person>
- ${person.name()}, ${person.callSign()}<#if person.skills()?has_content>; ${person.skills()}</#if>
  in an emergency call: ${person.emergencyContact()}
<#else>
! No operator is named for this team.
</#list>

<#if brief.vehicle()?has_content>
Vehicle: ${brief.vehicle()}
</#if>
Packing list: ${brief.packingFile()}.txt
Local times are those of ${brief.zone()}.
<#if brief.findings()?has_content>

OPEN FINDINGS
<#list brief.findings() as finding>
- ${finding.severity()}: ${finding.sentence()}
</#list>
</#if>
<#if brief.isEmpty()>

! No stop is planned for this team.
</#if>
<#list brief.days() as day>

${day.title()?upper_case}
${day.start()}
<#list day.stops() as stop>
<#if stop.drive().isPresent()>

<@drive stop.drive().get()/>
</#if>

STOP ${stop.site()}: ${stop.kind()}<#if stop.squares()?has_content>, ${stop.squares()}</#if>
  Mark at ${stop.coordinates()}
<#if stop.access()?has_content>
  ${stop.access()}
</#if>
  UTC    arrive ${stop.arrival().utc()}, ready at ${stop.readyAt().utc()}, pack up from ${stop.packUpBy().utc()}, leave ${stop.departure().utc()}
  local  arrive ${stop.arrival().local()}, ready at ${stop.readyAt().local()}, pack up from ${stop.packUpBy().local()}, leave ${stop.departure().local()}
<#if stop.reviewHolds()>
  ${stop.review()}
<#else>
  ! No valid review of hazards for this day. ${stop.review()}
</#if>
<#if stop.boundary().isPresent()>

  PROOF OF THE SQUARES
  ${stop.boundary().get().where()}
<#list stop.boundary().get().evidence() as proof>
  - ${proof}
</#list>
  Error on the display: ______  Time UTC: ______
</#if>
<#list stop.turns() as turn>

  TURN ${turn.bird()}, ${turn.mode()}
    UTC    ${turn.start().utc()} to ${turn.end().utc()}
    local  ${turn.start().local()} to ${turn.end().local()}
<#if turn.sky().isPresent()>
<#assign sky = turn.sky().get()>
    pass UTC    AOS ${sky.aos().utc()} az ${sky.aosAzimuth()}, TCA ${sky.tca().utc()} az ${sky.tcaAzimuth()} el ${sky.peak()}, LOS ${sky.los().utc()} az ${sky.losAzimuth()}; ${turn.error()}
    pass local  AOS ${sky.aos().local()}, TCA ${sky.tca().local()}, LOS ${sky.los().local()}
<#else>
    ! No pass above this site's horizon at this time.
</#if>
<#if turn.chance()?has_content>
    ${turn.chance()}
</#if>
    up ${turn.uplink()}<#if turn.tone()?has_content>, tone ${turn.tone()}</#if>; down ${turn.downlink()}
<#if turn.note()?has_content>
    note: ${turn.note()}
</#if>
<#else>

  No turn is planned at this stop.
</#list>

  ${stop.planB()}
<#if stop.hazards()?has_content || stop.remarks()?has_content>

  HAZARDS AND WHAT TO DO
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
No stop is planned on this day.
</#list>
<#if day.wayBack().isPresent()>

<@drive day.wayBack().get()/>
</#if>
<#if day.end()?has_content>
${day.end()}
</#if>
</#list>
<#if brief.split()?has_content>

WHO HOLDS WHICH SQUARE
<#list brief.split() as row>
- ${row}
</#list>
</#if>

${brief.deference()}
The time of a drive is an estimate from the distance, except where its source stands beside it. Roads, weather and closures of the day decide: ask the road authority before you start, rest before you are tired, and drop a stop rather than hurry.
Passes are computed from element sets that age; the ± figure estimates how early or late a bird may be. Azimuths count from true north.
<#macro drive leg>
DRIVE ${leg.text()}.<#if leg.leaveBy().isPresent()> Leave by ${leg.leaveBy().get().utc()} UTC, ${leg.leaveBy().get().local()} local.</#if>
<#if leg.trouble()?has_content>
! ${leg.trouble()}
</#if>
</#macro>
