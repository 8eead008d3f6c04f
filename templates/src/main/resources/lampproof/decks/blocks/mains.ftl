<#-- The mains, from neutral to line: a sine, or its crest held still. -->
<#macro mains held=false>
* Mains
<#if held>
Vline line neutral DC ${driver.line.crest}
<#else>
Vline line neutral SIN(0 ${driver.line.crest} ${driver.line.frequency})
</#if>
Rstray neutral 0 100e6
</#macro>
