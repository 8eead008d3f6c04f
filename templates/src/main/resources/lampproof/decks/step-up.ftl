<#-- Step-up: the inductor lifts the bus to a string that stands above the line crest. -->
<#macro converter held=false more=[] saved="">
<@block.stage source="bus" sink="out"/>
<@block.output positive="out" negative="0"/>
<#if held>
<@block.balance positive="out" negative="0"/>
</#if>
<@block.control/>
<@block.run/>
<@block.probes coilSource="bus" diodeSink="out" output="v(out)" outputNode="out" more=more saved=saved/>
</#macro>
