<#ftl output_format="plainText">
${announcement.event()?upper_case}
<#if announcement.club()?has_content>${announcement.club()}. </#if>${announcement.dates()}
${text("revisionChanges", "revision", announcement.revision())}
<#if announcement.draft()>

! ${text("draft")}
</#if>
<#list announcement.text() as paragraph>

${paragraph}
</#list>
<#assign changes = announcement.changes()>
<#if changes.since() gt 0>

${text("text.changes.since", "revision", changes.since()?c)}
<#list changes.dropped() as line>
${text("text.changes.dropped", "turn", line)}
</#list>
<#list changes.added() as line>
${text("text.changes.added", "turn", line)}
</#list>
<#list changes.retuned() as line>
${text("text.changes.retuned", "turn", line)}
</#list>
<#if changes.isNothing()>
${text("changes.none")}
</#if>
</#if>

${text("text.teams")}
<#list announcement.teams() as team>
${team.mark().number()}  ${team.name()}<#if team.callSigns()?has_content>: ${team.callSigns()?join(", ")}</#if>
</#list>
<#if announcement.isEmpty()>

${text("empty")}
<#else>

${text("text.byTime")}
<#list announcement.days() as day>

${day.title()}
<#list day.entries() as entry>
${text("text.utc", "start", entry.start().utc(), "end", entry.end().utc())} | ${text("text.local", "start", entry.start().local(), "end", entry.end().local())} | ${entry.squares()}<#if entry.kind() != "inside"> (${entry.kind()})</#if> | ${entry.bird()}, ${entry.mode()} | ${entry.downlink()} | ${text("text.team", "number", entry.team().number())}
</#list>
</#list>

${text("text.bySquare")}
<#list announcement.squares() as square>
${square.square()}
<#list square.entries() as entry>
  ${entry.date().toString()} ${text("text.span", "start", entry.start().utc(), "end", entry.end().utc())} | ${entry.bird()} | ${text("text.team", "number", entry.team().number())}
</#list>
</#list>
</#if>

${text("zone", "zone", announcement.zone())}
${text("road")}
