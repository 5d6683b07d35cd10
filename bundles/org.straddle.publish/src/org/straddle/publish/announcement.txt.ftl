<#ftl output_format="plainText">
${announcement.event()?upper_case}
<#if announcement.club()?has_content>${announcement.club()}. </#if>${announcement.dates()}
${announcement.revision()}. Subject to change: look for a later revision before each pass.
<#if announcement.draft()>

! Draft. The plan still has open problems, and times below may not hold.
</#if>
<#list announcement.text() as paragraph>

${paragraph}
</#list>
<#assign changes = announcement.changes()>
<#if changes.since() gt 0>

CHANGES SINCE REVISION ${changes.since()?c}
<#list changes.dropped() as line>
no longer: ${line}
</#list>
<#list changes.added() as line>
new: ${line}
</#list>
<#list changes.retuned() as line>
frequency: ${line}
</#list>
<#if changes.isNothing()>
The schedule is the same.
</#if>
</#if>

TEAMS
<#list announcement.teams() as team>
${team.mark().number()}  ${team.name()}<#if team.callSigns()?has_content>: ${team.callSigns()?join(", ")}</#if>
</#list>
<#if announcement.isEmpty()>

Nothing is scheduled yet. Look for a later revision.
<#else>

IN ORDER OF TIME
<#list announcement.days() as day>

${day.title()}
<#list day.entries() as entry>
${entry.start().utc()} to ${entry.end().utc()} UTC | ${entry.start().local()} to ${entry.end().local()} local | ${entry.squares()}<#if entry.kind() != "inside"> (${entry.kind()})</#if> | ${entry.bird()}, ${entry.mode()} | ${entry.downlink()} | team ${entry.team().number()}
</#list>
</#list>

SQUARE BY SQUARE, times in UTC
<#list announcement.squares() as square>
${square.square()}
<#list square.entries() as entry>
  ${entry.date().toString()} ${entry.start().utc()} to ${entry.end().utc()} | ${entry.bird()} | team ${entry.team().number()}
</#list>
</#list>
</#if>

Local times and dates are those of ${announcement.zone()}. A time with a date in front falls on that date. Downlinks are nominal, before Doppler.
Teams on the road skip or cut passes when roads, weather or rest ask for it.
