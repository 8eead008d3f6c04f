<#-- Step-down: the string hangs between the bus and the inductor; the low-side switch pulls the inductor down. -->
<#macro converter held=false fault="" protected=false lineProbe="Vline" supplied=false more=[] saved="">
<@block.output positive="bus" negative="low" fault=fault/>
<#if held>
<@block.balance positive="bus" negative="low"/>
</#if>
<@block.stage source="low" sink="bus"/>
<@block.control output=protected?then("V(bus) - V(low)", "") supplied=supplied/>
<@block.run/>
<@block.probes coilSource="low" diodeSink="bus" output="v(bus) - v(low)" outputNode="low" lineCurrent=lineProbe more=more saved=saved/>
</#macro>
