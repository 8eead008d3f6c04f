<#-- The mains is switched on with no charge in the lamp. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading shows="Nothing is charged when the line comes on, ${event.lineDegrees} degrees after its zero crossing."/>
<@block.mains from=event.lineDegrees/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter protected=true/>
.end
