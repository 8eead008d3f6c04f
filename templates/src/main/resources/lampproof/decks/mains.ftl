<#-- Half a line cycle, switched: the other half is the same, with opposite sign before the bridge. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading/>
<@block.mains/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter/>
.end
