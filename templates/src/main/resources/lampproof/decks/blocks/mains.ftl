<#-- The mains, from neutral to line: a sine from its zero crossing or from a line angle, or its crest held still. -->
<#macro mains held=false from=0 line="line">
* Mains
<#if held>
Vline ${line} neutral DC ${circuit.lineCrest}
<#elseif from == 0>
Vline ${line} neutral SIN(0 ${circuit.lineCrest} ${driver.line.frequency})
<#else>
Vline ${line} neutral SIN(0 ${circuit.lineCrest} ${driver.line.frequency} 0 0 ${from})
</#if>
Rstray neutral 0 100e6
</#macro>
