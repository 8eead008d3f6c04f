<#-- Step-up: the inductor lifts the bus to a string whose voltage is above the line crest. -->
<#macro converter held=false fault="" protected=false lineProbe="Vline" supplied=false more=[] saved="">
<@block.stage source="bus" sink="out"/>
<@block.output positive="out" negative="0" fault=fault/>
<#if held>
<@block.balance positive="out" negative="0"/>
</#if>
<@block.control output=protected?then("V(out)", "") supplied=supplied/>
<@block.run/>
<@block.probes coilSource="bus" diodeSink="out" output="v(out)" outputNode="out" lineCurrent=lineProbe more=more saved=saved/>
</#macro>
