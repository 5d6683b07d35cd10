<#ftl output_format="plainText">
${text("text.sources", "event", sources.event())}
${sources.revision()}
${text("sources.private")}

${sources.summary()}
<#list sources.days() as day>

${day.title()}
<#list day.entries() as entry>
${text("text.utc", "start", entry.start().utc(), "end", entry.end().utc())} | ${entry.squares()} | ${entry.site()} | ${entry.bird()} | ${text("text.team", "number", entry.team())} | <#if entry.chance()?has_content>${text("text.kept", "chance", entry.chance())}<#else>${text("text.kept.unknown")}</#if><#if entry.weak()> (!)</#if> | ${entry.brings()}
</#list>
<#else>

${text("sources.empty")}
</#list>

${text("sources.kept")}
${text("text.sources.weak")}
