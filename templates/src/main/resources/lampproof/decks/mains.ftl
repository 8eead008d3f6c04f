<#-- Half a line cycle, switched: the other half is the same, with opposite sign before the bridge. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading shows="Half a line cycle from the predicted steady state. It must end as it started, for the other half mirrors it."/>
<@block.mains/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter/>
.end
