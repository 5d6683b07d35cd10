<#ftl output_format="plainText">
WHERE THE ANNOUNCEMENT COMES FROM: ${sources.event()}
${sources.revision()}
For the coordinator. Chasers see none of this.

${sources.summary()}
<#list sources.days() as day>

${day.title()}
<#list day.entries() as entry>
${entry.start().utc()} to ${entry.end().utc()} UTC | ${entry.squares()} | ${entry.site()} | ${entry.bird()} | team ${entry.team()} | ${entry.chance()?has_content?then("kept: " + entry.chance(), "kept: not known")}<#if entry.weak()> (!)</#if> | ${entry.brings()}
</#list>
<#else>

Nothing is scheduled yet.
</#list>

Kept: the chance that the station is up when the turn begins, from drives and time in hand. It does not say whether the bird works.
A turn marked (!) is kept less surely than the event asks for.
