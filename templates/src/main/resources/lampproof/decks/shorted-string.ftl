<#-- The string is shorted at the crest of the line; the current limit ends each on-time after the blanking time. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading shows="The lamp runs at the crest of the line until its string is shorted; the current limit then ends each on-time."/>
<@block.mains from=event.lineDegrees/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter fault="shorted" protected=true/>
.end
