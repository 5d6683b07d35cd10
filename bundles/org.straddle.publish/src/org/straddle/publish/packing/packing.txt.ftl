<#ftl output_format="plainText">
${page.title()}
${page.event()}
<#if page.isEmpty()>

${text("noKit")}
</#if>
<#list page.attention() as line>
<#if line?is_first>

</#if>
! ${line}
</#list>
<#list page.bags() as bag>

${text("bag", "kind", bag.name()?has_content?then("named", (page.bags()?size gt 1)?then("none", "all")), "bag", bag.name(), "weight", bag.weight())}
<#list bag.rows() as row>
<#if row.packed().set()>[x] ${row.count()} × ${row.name()}  ${row.packed().by()} ${row.packed().at()}<#else>[ ] ${row.count()} × ${row.name()}  ${text("pen")}</#if>
<#if row.details()?has_content>
    ${row.details()}
</#if>
<#if row.checked().set()>
    ${text("ticked", "what", text("tick.checked"), "by", row.checked().by(), "at", row.checked().at())}
</#if>
<#if row.tested().set()>
    ${text("ticked", "what", text("tick.tested"), "by", row.tested().by(), "at", row.tested().at())}
</#if>
<#if row.returned().set()>
    ${text("ticked", "what", text("tick.returned"), "by", row.returned().by(), "at", row.returned().at())}
</#if>
</#list>
</#list>
<#list page.asks()>

${text("asks")}
<#items as ask>
[ ] ${ask.sentence()}
<#list ask.because() as reason>
    ${text("because", "reason", reason)}
</#list>
</#items>
</#list>
<#list page.marking()>

${text("sites")}
<#items as line>
- ${line}
</#items>
</#list>
<#list page.stops()>

${text("leaving")}
<#items as stop>
[ ] ${stop.name()}  ${text("pen")}
</#items>
</#list>
<#list page.back()>

${text("back")}
<#items as line>
[ ] ${line}
</#items>
</#list>
<#list page.notes()>

${text("notes")}
<#items as line>
- ${line}
</#items>
</#list>

${page.summary()}
