<#ftl output_format="plainText">
${page.title()}
${page.event()}
<#if page.isEmpty()>

This team takes no kit along.
</#if>
<#list page.attention() as line>
<#if line?is_first>

</#if>
! ${line}
</#list>
<#list page.bags() as bag>

<#if bag.name()?has_content>BAG: ${bag.name()}<#elseif page.bags()?size gt 1>NOT IN A BAG<#else>EVERYTHING</#if>. ${bag.weight()}
<#list bag.rows() as row>
<#if row.packed().set()>[x] ${row.count()} × ${row.name()}  ${row.packed().by()} ${row.packed().at()}<#else>[ ] ${row.count()} × ${row.name()}  name ____________ time ______</#if>
<#if row.details()?has_content>
    ${row.details()}
</#if>
<#if row.checked().set()>
    checked: ${row.checked().by()} ${row.checked().at()}
</#if>
<#if row.tested().set()>
    tested on the air: ${row.tested().by()} ${row.tested().at()}
</#if>
<#if row.returned().set()>
    returned: ${row.returned().by()} ${row.returned().at()}
</#if>
</#list>
</#list>
<#list page.asks()>

WHAT THE PLAN ASKS FOR BESIDES
<#items as ask>
[ ] ${ask.sentence()}
<#list ask.because() as reason>
    because: ${reason}.
</#list>
</#items>
</#list>
<#list page.marking()>

AT THE SITES
<#items as line>
- ${line}
</#items>
</#list>
<#list page.stops()>

BEFORE YOU LEAVE A SITE: IS EVERYTHING BACK IN THE CAR?
<#items as stop>
[ ] ${stop.name()}  name ____________ time ______
</#items>
</#list>
<#list page.back()>

AFTER THE EVENT
<#items as line>
[ ] ${line}
</#items>
</#list>
<#list page.notes()>

ENERGY, BAGS, FLIGHTS
<#items as line>
- ${line}
</#items>
</#list>

${page.summary()}
